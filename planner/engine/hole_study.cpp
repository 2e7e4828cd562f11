#include "planner/engine/hole_study.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

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

HoleStudy::HoleStudy(const Hole& hole, const Golfer& golfer, const GolferGame& game, const BagShots& bag,
                     const PlanRequest& request, int strokes_received)
    : HoleStudy(std::make_shared<const ValuedHole>(hole, golfer, game, request, strokes_received), hole,
                golfer, game, bag, request) {}

HoleStudy::HoleStudy(std::shared_ptr<const ValuedHole> valued, const Hole& hole, const Golfer& golfer,
                     const GolferGame& game, const BagShots& bag, const PlanRequest& request)
    : hole_(hole),
      golfer_(golfer),
      bag_(bag),
      assumptions_(request.assumptions.engine),
      valued_(std::move(valued)),
      fan_({valued_->lies(), valued_->field(), hole.line.pin(), valued_->rules().club_length_m,
            valued_->rules().back_on_line_reach_m},
           game.clearance(), hole.line.tee(), forward_of(hole),
           valued_->field().cost(hole.line.tee(), Lie::teeing_area, 2), request.local_rule_e5, assumptions_),
      marks_(hole) {
    if (personal() != nullptr) paths_ = std::make_unique<ScorePaths>(*personal());
}

ReplayCost HoleStudy::replay_cost() const {
    if (aim_for().is_strokes()) return std::nullopt;
    return field().cost(hole_.line.tee(), Lie::teeing_area, 2);
}

HoleStudy::Options HoleStudy::options() {
    Options options{tee_contenders(hole_, golfer_, bag_, fan_, forward_of(hole_), assumptions_), {}, 1};
    options.coarse_rays = std::max(
        1, static_cast<int>(std::lround(assumptions_.aim_coarse_step_rad / assumptions_.fan_angle_step_rad)));
    options.search = search_aims(fan_, options.contenders, options.coarse_rays, replay_cost());
    return options;
}

TeeChoice HoleStudy::choice(const ClubShots& shots, const ShotPattern& pattern, double aim,
                            double replay_cost) {
    const int ray = fan_.ray_near(aim);
    const AimedClub aimed = aimed_club(fan_, shots, ray, replay_cost);
    const Point along = along_bearing(fan_.bearing_of(ray));
    const double carry = pattern.usual.centre.carry_m;
    const Point target = hole_.line.tee() + carry * along;
    const Tally tally = mean_tally(shots, ray);
    const double cost = aimed.outcome.total(replay_cost);
    // What the strokes are on another aim only the distribution tells.
    ScoreDistribution score;
    if (!aim_for().is_strokes()) score = this->score(shots, aim);
    return {.club = shots.club,
            .aim = fan_.bearing_of(ray),
            .aim_bearing = hole_.frame.true_bearing(hole_.line.tee(), target),
            .aim_point = target,
            .description = marks_.describe(fan_.bearing_of(ray), carry),
            .expected_strokes = aim_for().is_strokes() ? cost : score.mean(),
            .aim_value = aim_for().value(cost),
            .standard_error = aimed.standard_error,
            .score = std::move(score),
            .lies = tally.lies,
            .lost_share = tally.lost,
            .leave_mean_m = tally.leave_mean_m,
            .leave_sd_m = tally.leave_sd_m,
            .landing = transect_across(hole_.lies, target, along, landing_reach_m).fairway,
            .cautions = cautions(shots, ray)};
}

ScoreDistribution HoleStudy::score(const ClubShots& shots, double aim) {
    return paths_ ? paths_->from(fan_.next_places(shots.fine, fan_.ray_near(aim))) : ScoreDistribution{};
}

std::vector<PlannedShot> HoleStudy::next_shots_after(const ShotPattern& pattern, double aim) const {
    if (personal() == nullptr) return {};
    const Point direction = along_bearing(aim);
    const ShotOffset& centre = pattern.usual.centre;
    const Point tee = hole_.line.tee();
    const Point landing = tee + centre.carry_m * direction + centre.side_m * Point{direction.y, -direction.x};
    const Point rest = usual_rest(landing, unit(landing - tee), pattern, valued_->lies(), assumptions_);
    return next_shots(*personal(), hole_.par, rest, valued_->lies().at(rest), valued_->lies());
}

Tally HoleStudy::mean_tally(const ClubShots& shots, int ray) {
    Tally mean;
    const double share = 1.0 / static_cast<double>(shots.replicates.size());
    for (const FanShots& set : shots.replicates) {
        const Tally tally = fan_.tally(set, ray);
        for (std::size_t lie = 0; lie < lie_count; ++lie)
            mean.lies[lie] += share * tally.lies[lie];
        mean.lost += share * tally.lost;
        mean.leave_mean_m += share * tally.leave_mean_m;
        mean.leave_sd_m += share * tally.leave_sd_m;
    }
    return mean;
}

std::vector<Caution> HoleStudy::cautions(const ClubShots& shots, int ray) const {
    std::vector<Caution> found;
    for (const Surrounding& surrounding : hole_.surroundings) {
        if (surrounding.region.empty()) continue;
        const Box bounds = surrounding.region.bounds();
        double share = 0.0;
        for (const FanShots::OnRay& group : shots.coarse.rays) {
            const Point direction = along_bearing(fan_.bearing_of(ray + group.ray));
            for (std::uint32_t i = group.first; i < group.end; ++i) {
                const FanShots::Shot& shot = shots.coarse.shots[i];
                const Point landing =
                    hole_.line.tee() + double{shot.row} * assumptions_.fan_ray_step_m * direction;
                if (bounds.contains(landing) && surrounding.region.contains(landing))
                    share += double{shot.weight};
            }
        }
        if (share >= least_caution_share) found.push_back({surrounding.kind, surrounding.label, share});
    }
    std::ranges::stable_sort(found, std::ranges::greater{}, &Caution::share);
    return found;
}

}  // namespace landwidth
