// What the day must not change: nothing at all when nothing blows and the ground is level; and when the hole,
// its ground and the wind turn or mirror together, the plan turns or mirrors with them.
#include <cmath>
#include <numbers>

#include "tests/catch.hpp"
#include "tests/planner/engine/alike.hpp"
#include "tests/planner/engine/day_plan.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

// Every number of a plan.
std::vector<double> numbers_of(const HolePlan& plan) {
    std::vector<double> all;
    const auto add = [&](const auto&... numbers) { (all.push_back(static_cast<double>(numbers)), ...); };
    for (const TeeChoice& c : plan.choices) {
        add(c.club, c.aim, c.aim_bearing.radians, c.aim_point.x, c.aim_point.y, c.expected_strokes,
            c.aim_value, c.standard_error, c.lost_share, c.leave_mean_m, c.leave_sd_m, c.cautions.size(),
            c.day.carry_m, c.day.drift_m, c.day.run_m, c.day.peak_m, c.day.landing_angle_rad,
            c.day.stopped_share);
        all.insert(all.end(), c.score.shares.begin(), c.score.shares.end());
        all.insert(all.end(), c.lies.begin(), c.lies.end());
    }
    add(plan.verdict.margin.value_or(-1.0), plan.verdict.confidence, plan.verdict.toss_up, plan.plays_as_m,
        plan.rise_m, plan.always_driver, plan.never_driver);
    for (const PlannedShot& shot : plan.next)
        add(shot.club, shot.swing, shot.aim_point.x, shot.aim_point.y, shot.leave.x, shot.leave.y,
            shot.leave_m, shot.more_m, shot.aim_value);
    return all;
}

HoleParts without_trees(HoleParts parts) {
    std::erase_if(parts.layers, [](const LieLayer& layer) { return layer.lie == Lie::trees; });
    return parts;
}

// Rises to the green, falls across from left to right, with a hollow at the corner of the bend.
double rolling_m(Point p) {
    const Point from_corner = p - yd(0, 240);
    return 0.02 * p.y - 0.03 * p.x - 4.0 * std::exp(-dot(from_corner, from_corner) / (2.0 * 40.0 * 40.0));
}

// On the right of the play a wind from the left; in the mirror from the right.
Conditions mirrored(Conditions day) {
    day.wind->from.radians = -day.wind->from.radians;
    return day;
}

}  // namespace

TEST_CASE("a wind of no speed, level ground and the reference weather change no digit", "[day]") {
    const double level_m = GENERATE(0.0, 37.3, -4.7);
    for (const HoleParts& parts : {eventful_hole(), without_trees(eventful_hole())}) {
        const std::vector<double> plain = numbers_of(planned(parts, slicer()));
        HoleParts level = parts;
        level.height_m = [=](Point) { return level_m; };
        CHECK((numbers_of(planned(parts, slicer(), windy(0.0, 77.0))) == plain));
        INFO("ground at " << level_m << " m");
        CHECK((numbers_of(planned(level, slicer(), windy(0.0, 0.0))) == plain));
    }
}

TEST_CASE("a hole turned with its ground and the wind: the same plan, turned", "[day]") {
    HoleParts parts = eventful_hole();
    parts.height_m = rolling_m;
    const HolePlan plan = planned(parts, slicer(), windy(12.0, 250.0));
    for (const double degrees : {37.0, 90.0, 180.0}) {
        INFO("turned by " << degrees);
        const double turn = degrees * radians_per_degree;
        const HolePlan other = planned(turned(parts, turn), slicer(), windy(12.0, 250.0 + degrees));
        check_alike(plan, other, 1.0, turn, 0.005);
        WARN("differs by " << other.choices.front().expected_strokes - plan.choices.front().expected_strokes);
    }
}

TEST_CASE("a hole mirrored with its ground, the wind and the golfer: the plan mirrors", "[day]") {
    HoleParts parts = eventful_hole();
    parts.height_m = rolling_m;
    const HolePlan plan = planned(parts, slicer(), windy(12.0, 250.0));
    const HolePlan other = planned(mirrored(parts), mirrored(slicer()), mirrored(windy(12.0, 250.0)));
    check_alike(plan, other, -1.0, 0.0, 0.008);
    WARN("differs by " << other.choices.front().expected_strokes - plan.choices.front().expected_strokes);
}
