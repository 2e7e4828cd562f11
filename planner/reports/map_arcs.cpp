#include "planner/reports/map_arcs.hpp"

#include <algorithm>
#include <optional>

#include "planner/reports/display_length.hpp"

namespace landwidth {
namespace {

constexpr double spacing = 50.0;
constexpr double step_along_line_m = 1.0;
constexpr double step_along_arc_m = 3.0;
// The ground around the tee would let a short arc run on behind it.
constexpr double furthest_turn_rad = 65.0 * radians_per_degree;

// The direction in which the line of play first gets so far from the tee.
std::optional<double> bearing_at_distance(const LineOfPlay& line, double radius_m) {
    for (double station = 0.0; station <= line.length(); station += step_along_line_m) {
        const Point p = line.point_at(station);
        if (distance(line.tee(), p) >= radius_m) return plane_bearing(p - line.tee());
    }
    return std::nullopt;
}

// How far the arc can turn from `bearing` in the direction of `step_rad` and stay on the ground.
double reach(const LineOfPlay& line, const Region& ground, double radius_m, double bearing, double step_rad) {
    double turn = 0.0;
    while (std::abs(turn + step_rad) < furthest_turn_rad &&
           ground.contains(line.tee() + radius_m * along_bearing(bearing + turn + step_rad))) {
        turn += step_rad;
    }
    // Halve the last step until the end lies on the outline.
    double step = step_rad;
    for (int i = 0; i < 5; ++i) {
        step /= 2.0;
        if (ground.contains(line.tee() + radius_m * along_bearing(bearing + turn + step))) turn += step;
    }
    return turn;
}

}  // namespace

std::vector<DistanceArc> distance_arcs(const LineOfPlay& line, const Region& ground, DisplayUnits units) {
    std::vector<DistanceArc> arcs;
    for (double number = spacing;; number += spacing) {
        const double radius_m = metres_of_display(number, units);
        const std::optional<double> bearing = bearing_at_distance(line, radius_m);
        if (!bearing) return arcs;
        const double step_rad = std::min(step_along_arc_m / radius_m, 0.1);
        const double left = reach(line, ground, radius_m, *bearing, -step_rad);
        const double right = reach(line, ground, radius_m, *bearing, step_rad);
        const int pieces = std::max(2, static_cast<int>((right - left) / (2.0 * step_rad)));
        DistanceArc arc{number, {}};
        for (int i = 0; i <= pieces; ++i) {
            const double bearing_here = *bearing + left + (right - left) * i / pieces;
            arc.points.push_back(line.tee() + radius_m * along_bearing(bearing_here));
        }
        arcs.push_back(std::move(arc));
    }
}

}  // namespace landwidth
