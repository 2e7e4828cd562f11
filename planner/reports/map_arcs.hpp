// Arcs of equal distance from the tee, as far as the drawn ground reaches around the line of play.
#pragma once

#include <vector>

#include "geometry/line_of_play.hpp"
#include "geometry/region.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct DistanceArc {
    double distance;            // in display units, a multiple of 50
    std::vector<Point> points;  // left to right as seen from the tee, in the hole's plane; at least two
};

// One every 50 yd or 50 m, up to the furthest point of the line of play.
std::vector<DistanceArc> distance_arcs(const LineOfPlay& line, const Region& ground, DisplayUnits units);

}  // namespace landwidth
