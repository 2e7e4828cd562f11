#include "planner/engine/hole_study.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <stdexcept>

#include "geometry/landing_width.hpp"
#include "geometry/units.hpp"
#include "planner/engine/field/next_shots.hpp"
#include "planner/engine/tee_contenders.hpp"

namespace landwidth {

namespace {

constexpr double landing_reach_m = Yards{100.0}.metres();
constexpr double least_caution_share = 0.002;

double forward_of(const Hole& hole) {
    return plane_bearing(hole.line.vertices()[1] - hole.line.tee());
}

}  // namespace

double club_length(const Golfer& golfer, const EngineAssumptions& assumptions) {
    double longest = 0.0;
    for (const Club& club : golfer.clubs)
        if (club.in_bag && club.kind != ClubKind::putter)
            longest = std::max(longest, club.length_m.value_or(0.0));
    return longest > 0.0 ? longest : assumptions.club_length_m;
}

HoleStudy::HoleStudy(const Hole& hole, const Golfer& golfer, const GolferGame& game, const BagShots& bag,
                     const PlanRequest& request, int strokes_received)
    : hole_(hole),
      golfer_(golfer),
      flights_(game.flights()),
      day_(day_over(hole, flights_.day())),
      bag_(bag),
      assumptions_(request.assumptions.engine),
      rules_{club_length(golfer, assumptions_), assumptions_.back_on_line_reach_m, request.local_rule_e5},
      aim_(request.aim_for, hole.par, strokes_received),
      lies_(std::make_shared<const LieRaster>(hole.lies, assumptions_.lie_cell_m)),
      field_(made_field(game, request)),
      fan_(made_fan()),
      marks_(hole) {
    if (personal_ != nullptr) paths_ = std::make_unique<ScorePaths>(*personal_);
}

HoleStudy::HoleStudy(const HoleStudy& base, const Hole& hole, const GolferGame& game)
    : hole_(hole),
      golfer_(base.golfer_),
      flights_(game.flights()),
      day_(day_over(hole, flights_.day())),
      bag_(base.bag_),
      assumptions_(base.assumptions_),
      rules_(base.rules_),
      aim_(base.aim_),
      lies_(base.lies_),
      personal_(base.personal_),
      field_(base.field_),
      fan_(made_fan()),
      marks_(hole) {
    if (personal_ != nullptr) paths_ = std::make_unique<ScorePaths>(*personal_);
}

HoleStudy::HoleStudy(HoleStudy& base, const Golfer& golfer, const GolferGame& game, const BagShots& bag)
    : hole_(base.hole_),
      golfer_(golfer),
      flights_(game.flights()),
      day_(base.day_),
      bag_(bag),
      assumptions_(base.assumptions_),
      rules_(base.rules_),
      aim_(base.aim_),
      lies_(base.lies_),
      marks_(base.marks_) {
    if (base.personal_ == nullptr) throw std::logic_error("another bag needs the personal field");
    auto field = std::make_unique<PersonalField>(*base.personal_, game);
    personal_ = field.get();
    field_ = std::move(field);
    fan_ = personal_->is_as_base() ? base.fan_ : made_fan();
    paths_ = std::make_unique<ScorePaths>(*personal_);
}

std::unique_ptr<StrokesField> HoleStudy::made_field(const GolferGame& game, const PlanRequest& request) {
    if (request.field == FieldKind::published)
        return std::make_unique<PublishedField>(game.table(), hole_.line, hole_.lies.extent());
    auto field = std::make_unique<PersonalField>(game, hole_, *lies_, rules_, aim_);
    personal_ = field.get();
    return field;
}

std::shared_ptr<TeeFan> HoleStudy::made_fan() const {
    const ReliefGround ground{*lies_, *field_, hole_.line.pin(), rules_.club_length_m,
                              rules_.back_on_line_reach_m};
    return std::make_shared<TeeFan>(ground, day_, hole_.line.tee(), forward_of(hole_),
                                    field_->cost(hole_.line.tee(), Lie::teeing_area, 2), rules_.local_rule_e5,
                                    assumptions_);
}

ReplayCost HoleStudy::replay_cost() const {
    if (aim_.is_strokes()) return std::nullopt;
    return field_->cost(hole_.line.tee(), Lie::teeing_area, 2);
}

int HoleStudy::coarse_rays() const {
    return std::max(
        1, static_cast<int>(std::lround(assumptions_.aim_coarse_step_rad / assumptions_.fan_angle_step_rad)));
}

HoleStudy::Options HoleStudy::options() {
    return searched(
        tee_contenders({hole_, day_, flights_}, golfer_, bag_, *fan_, forward_of(hole_), assumptions_));
}

HoleStudy::Options HoleStudy::options_of(const Golfer& golfer, std::span<const Asked> asked) {
    const std::vector<Contender> all =
        tee_contenders({hole_, day_, flights_}, golfer, bag_, *fan_, forward_of(hole_), assumptions_);
    std::vector<Contender> few;
    for (Contender contender : all) {
        const auto wanted = std::ranges::find(asked, contender.shots->club, &Asked::club);
        if (wanted == asked.end()) continue;
        const AimRange own = contender.range;
        contender.range = {std::clamp(wanted->range.first_ray, own.first_ray, own.last_ray),
                           std::clamp(wanted->range.last_ray, own.first_ray, own.last_ray)};
        few.push_back(contender);
    }
    return searched(few.empty() ? all : few);
}

bool HoleStudy::is_contender(std::span<const Asked> asked) const {
    return std::ranges::any_of(
        tee_contenders({hole_, day_, flights_}, golfer_, bag_, *fan_, forward_of(hole_), assumptions_),
        [&](const Contender& contender) {
            return std::ranges::find(asked, contender.shots->club, &Asked::club) != asked.end();
        });
}

HoleStudy::Options HoleStudy::searched(std::vector<Contender> contenders) {
    Options options{std::move(contenders), {}};
    options.search = search_aims(*fan_, options.contenders, coarse_rays(), replay_cost());
    return options;
}

TeeChoice HoleStudy::choice(const ClubShots& shots, const ShotPattern& pattern, double aim,
                            double replay_cost) {
    const int ray = fan_->ray_near(aim);
    const AimedClub aimed = aimed_club(*fan_, shots, ray, replay_cost);
    const Point along = along_bearing(fan_->bearing_of(ray));
    const double carry = pattern.usual.centre.carry_m;
    const Point tee = hole_.line.tee();
    const Point target = tee + carry * along;
    const DayFlight& flight = *flights_.full(shots.club);
    const UsualBall ball = usual_ball(tee, fan_->bearing_of(ray), pattern, flight, day_);
    const double usual_side = pattern.usual.centre.side_m;
    const Tally tally = mean_tally(shots, ray);
    const double cost = aimed.outcome.total(replay_cost);
    // What the strokes are on another aim only the distribution tells.
    ScoreDistribution score;
    if (!aim_.is_strokes()) score = this->score(shots, aim);
    return {.club = shots.club,
            .aim = fan_->bearing_of(ray),
            .aim_bearing = hole_.frame.true_bearing(tee, target),
            .aim_point = target,
            .description = marks_.describe(fan_->bearing_of(ray), carry),
            .expected_strokes = aim_.is_strokes() ? cost : score.mean(),
            .aim_value = aim_.value(cost),
            .standard_error = aimed.standard_error,
            .score = std::move(score),
            .lies = tally.lies,
            .lost_share = tally.lost,
            .leave_mean_m = tally.leave_mean_m,
            .leave_sd_m = tally.leave_sd_m,
            .landing = transect_across(hole_.lies, ball.landing - usual_side * to_the_right(along), along,
                                       landing_reach_m, hole_.other_fairways)
                           .fairway,
            .cautions = cautions(shots, ray),
            .day = {.carry_m = dot(ball.landing - tee, along),
                    .drift_m = dot(ball.landing - tee, to_the_right(along)) - usual_side,
                    .run_m = ball.run_m,
                    .peak_m = ball.peak_m,
                    .landing_angle_rad = ball.landing_angle_rad,
                    .stopped_share = tally.stopped}};
}

ScoreDistribution HoleStudy::score(const ClubShots& shots, double aim) {
    return paths_ ? paths_->from(fan_->next_places(shots.fine, fan_->ray_near(aim))) : ScoreDistribution{};
}

std::vector<PlannedShot> HoleStudy::next_shots_after(std::size_t club, const ShotPattern& pattern,
                                                     double aim) const {
    if (personal_ == nullptr) return {};
    const UsualBall ball = usual_ball(hole_.line.tee(), aim, pattern, *flights_.full(club), day_);
    const Point rest = usual_rest(ball, *lies_, assumptions_);
    return next_shots(*personal_, day_, hole_.par, rest, lies_->at(rest), *lies_);
}

std::vector<ScorePaths::Visit> HoleStudy::visits_after(const ClubShots& shots, double aim) {
    if (!paths_) return {};
    paths_->from(fan_->next_places(shots.coarse, fan_->ray_near(aim)));
    return paths_->visits();
}

Tally HoleStudy::mean_tally(const ClubShots& shots, int ray) {
    Tally mean;
    const double share = 1.0 / static_cast<double>(shots.replicates.size());
    for (const FanShots& set : shots.replicates) {
        const Tally tally = fan_->tally(set, ray);
        for (std::size_t lie = 0; lie < lie_count; ++lie)
            mean.lies[lie] += share * tally.lies[lie];
        mean.lost += share * tally.lost;
        mean.stopped += share * tally.stopped;
        mean.leave_mean_m += share * tally.leave_mean_m;
        mean.leave_sd_m += share * tally.leave_sd_m;
    }
    return mean;
}

std::vector<Caution> HoleStudy::cautions(const ClubShots& shots, int ray) {
    std::vector<Caution> found;
    const std::vector<TeeFan::Landing> landings = fan_->landings(shots.coarse, ray);
    for (const Surrounding& surrounding : hole_.surroundings) {
        if (surrounding.region.empty()) continue;
        const Box bounds = surrounding.region.bounds();
        double share = 0.0;
        for (const TeeFan::Landing& landing : landings)
            if (bounds.contains(landing.place) && surrounding.region.contains(landing.place))
                share += landing.share;
        if (share >= least_caution_share) found.push_back({surrounding.kind, surrounding.label, share});
    }
    std::ranges::stable_sort(found, std::ranges::greater{}, &Caution::share);
    return found;
}

}  // namespace landwidth
