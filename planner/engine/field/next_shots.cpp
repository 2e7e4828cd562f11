#include "planner/engine/field/next_shots.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr int most_shots = 6;
// From closer in nobody lays up.
constexpr double least_to_lay_up_m = Yards{150.0}.metres();
constexpr double run_step_m = Yards{0.5}.metres();

class Path {
  public:
    Path(const PersonalField& field, const HoleDay& day, int par, const LieRaster& lies)
        : field_(field), day_(day), par_(par), lies_(lies), left_(field.left()) {}

    std::vector<PlannedShot> follow(Point from, Lie lie) {
        std::vector<PlannedShot> shots;
        const GolferGame& game = field_.game();
        for (int used = 1; used <= most_shots && is_in_play(lie); ++used) {
            if (game.hole_out().is_close(lie, distance(from, field_.grid().pin()))) break;
            const int cell = field_.cell_of(from, lie);
            if (field_.action(cell, used).option < 0) break;
            shots.push_back(shot(from, lie, cell, used));
            from = shots.back().leave;
            lie = shots.back().leave_lie;
        }
        return shots;
    }

  private:
    double reach_of_green() const { return field_.game().assumptions().short_game_zone_m; }

    ShotPurpose purpose(int cell, const ShotOption& option, Stance stance) const {
        if (stance == Stance::trees) return ShotPurpose::recovery;
        const double short_of = distance(field_.grid().centre(cell), field_.grid().pin()) - reach_of_green();
        if (option.total_m >= short_of) return ShotPurpose::to_the_green;
        const double longest = field_.game().menu().options(stance).front().total_m;
        return longest >= short_of ? ShotPurpose::lay_up : ShotPurpose::advance;
    }

    PlannedShot shot(Point from, Lie lie, int cell, int used) {
        const std::unique_ptr<PersonalField::Evaluator> evaluator = field_.evaluator(used);
        ActionSearch& search = evaluator->search();
        const Action action = field_.action(cell, used);
        const ShotOption& option = search.option(cell, action);
        const double aim = field_.grid().bearing_of(action.turn);
        const UsualBall ball = usual_ball(from, aim, option.pattern, *option.flight, day_);
        const Point leave = usual_rest(ball, lies_, field_.game().assumptions());
        const Stance stance = search.stance(cell);
        PlannedShot planned{.club = option.club,
                            .swing = option.swing,
                            .purpose = purpose(cell, option, stance),
                            .from = from,
                            .lie = lie,
                            .to_hole_m = left_.from(from),
                            .aim_point = from + option.pattern.usual.centre.carry_m * along_bearing(aim),
                            .leave = leave,
                            .leave_lie = lies_.at(leave),
                            .leave_m = left_.from(leave),
                            .more_m = ball.more_m,
                            .aim_value = field_.aim().value(field_.worth(from, lie, used).cost),
                            .alternative = {}};
        if ((planned.purpose == ShotPurpose::to_the_green && par_ >= 5) ||
            planned.purpose == ShotPurpose::lay_up)
            planned.alternative = alternative(cell, action, planned.purpose, search);
        return planned;
    }

    // The best shot of the other purpose. A shot the golfer would hardly think of is no alternative.
    std::optional<PlannedShot::Alternative> alternative(int cell, Action action, ShotPurpose chosen,
                                                        ActionSearch& search) const {
        if (distance(field_.grid().centre(cell), field_.grid().pin()) < least_to_lay_up_m)
            return std::nullopt;
        const auto& options = field_.game().menu().options(search.stance(cell));
        const auto allowed = [&](const ShotOption& option) {
            const ShotPurpose other = purpose(cell, option, search.stance(cell));
            return other != chosen && option.swing == 1.0;
        };
        std::vector<Ranked> found = search.everything(cell, allowed);
        if (found.empty()) return std::nullopt;
        std::vector<Action> actions;
        for (const Ranked& one : found)
            actions.push_back(one.action);
        const Action best = search.best_of(cell, actions).action;
        const ShotOption& option = options[static_cast<std::size_t>(best.option)];
        ShotPattern straight = option.pattern;
        straight.usual.centre.side_m = 0.0;
        const UsualBall ball = usual_ball(field_.grid().centre(cell), field_.grid().bearing_of(best.turn),
                                          straight, *option.flight, day_);
        const Point leave = usual_rest(ball, lies_, field_.game().assumptions());
        const double own = search.cost(cell, action, &ShotOption::value_set);
        const double other = search.cost(cell, best, &ShotOption::value_set);
        return PlannedShot::Alternative{option.club, option.swing, purpose(cell, option, search.stance(cell)),
                                        left_.from(leave), std::max(0.0, other - own)};
    }

    const PersonalField& field_;
    const HoleDay& day_;
    int par_;
    const LieRaster& lies_;
    const DistanceLeft& left_;
};

}  // namespace

Point usual_rest(const UsualBall& ball, const LieRaster& lies, const EngineAssumptions& assumptions) {
    const double share = run_share(lies.at(ball.landing), assumptions);
    const double run = ball.run_m * share;
    const Point aside = ball.aside_m * share * to_the_right(ball.way);
    Point rest = ball.landing;
    for (double on = 0.0; on < run; on += run_step_m) {
        const Lie lie = lies.at(rest);
        if (lie == Lie::bunker || is_penalty_area(lie)) return rest;
        const double done = std::min(on + run_step_m, run);
        rest = ball.landing + done * ball.way + done / run * aside;
    }
    return rest;
}

std::vector<PlannedShot> next_shots(const PersonalField& field, const HoleDay& day, int par, Point from,
                                    Lie lie, const LieRaster& lies) {
    return Path(field, day, par, lies).follow(from, lie);
}

}  // namespace landwidth
