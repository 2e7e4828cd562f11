#include "planner/engine/day/hole_day.hpp"

#include <cmath>
#include <numbers>

namespace landwidth {

HoleDay day_over(const Hole& hole, const Conditions& conditions) {
    HoleDay day{{}, hole.heights.get(), hole.canopy.empty() ? nullptr : &hole.canopy};
    // The plane's north is true at the tee; over a hole the difference is far below what a wind is known to.
    if (conditions.wind && conditions.wind->speed_mps > 0.0)
        day.wind_to = conditions.wind->from.radians + std::numbers::pi;
    return day;
}

WindAlong wind_along(const HoleDay& day, const Conditions& conditions, const Hole& hole) {
    if (!day.wind_to) return {0.0, 0.0};
    const double angle = *day.wind_to - plane_bearing(hole.line.vertices()[1] - hole.line.tee());
    const double speed = conditions.wind->speed_mps;
    return {speed * std::cos(angle), speed * std::sin(angle)};
}

}  // namespace landwidth
