#include "planner/engine/day/hole_day.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace landwidth {

namespace {

// The side of a canopy's cell.
constexpr double rim_m = 1.0;

}  // namespace

HoleDay day_over(const Hole& hole, const Conditions& conditions) {
    HoleDay day{{}, hole.heights.get(), hole.canopy.empty() ? nullptr : &hole.canopy};
    // The plane's north is true at the tee; over a hole the difference is far below what a wind is known to.
    if (conditions.wind && conditions.wind->speed_mps > 0.0)
        day.wind_to = conditions.wind->from.radians + std::numbers::pi;
    return day;
}

double canopy_m(const HoleDay& day, const LieRaster& lies, Point place, Lie lie) {
    if (day.canopy == nullptr) return 0.0;
    const double own = day.canopy->at(place);
    const bool among_trees = lie == Lie::trees;
    if ((own > 0.0) == among_trees) return own;
    // On the rim of trees one raster has them and the other not.
    double highest = own;
    for (const Point step : {Point{rim_m, 0.0}, Point{-rim_m, 0.0}, Point{0.0, rim_m}, Point{0.0, -rim_m}}) {
        if (among_trees) highest = std::max(highest, day.canopy->at(place + step));
        if (!among_trees && lies.at(place + step) == Lie::trees) return 0.0;
    }
    return highest;
}

WindAlong wind_along(const HoleDay& day, const Conditions& conditions, const Hole& hole) {
    if (!day.wind_to) return {0.0, 0.0};
    const double angle = *day.wind_to - plane_bearing(hole.line.vertices()[1] - hole.line.tee());
    const double speed = conditions.wind->speed_mps;
    return {speed * std::cos(angle), speed * std::sin(angle)};
}

}  // namespace landwidth
