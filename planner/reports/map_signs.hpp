// The signs of a hole map other than the ground: their drawing as legend entries and their style.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "geometry/lie.hpp"
#include "geometry/point.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// What is on one map.
struct MapContents {
    std::array<bool, lie_count> lies{};
    std::vector<Surrounding::Kind> surroundings;  // each kind once
    std::string best;                             // club names
    std::string second;                           // empty: none drawn
    bool next_shots = false;
    bool landing_width = false;
    bool arcs = false;
    bool wind = false;
};

// The style class of a surrounding on the map.
std::string_view surrounding_class(Surrounding::Kind kind);

// The outline of a broad arrow around `centre` that points along the unit vector `towards`: how a wind blows.
// 26 px long.
std::vector<Point> wind_arrow(Point centre, Point towards);

// A list of the signs on the map with their meaning, as HTML.
std::string map_legend(const MapContents& contents, DisplayUnits units);

}  // namespace landwidth
