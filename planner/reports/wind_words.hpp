// Winds in words: speeds in mph beside yards and in km/h beside metres, directions by the compass.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "planner/engine/day/conditions.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// Clockwise from north, 22.5 degrees apart.
inline constexpr std::array<std::string_view, 16> compass_points{
    "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};

// The nearest of them.
std::string_view compass_point(Bearing bearing);

// "12" and "12 mph": whole, never "-0".
std::string speed_number(double speed_mps, DisplayUnits units);
std::string speed_text(double speed_mps, DisplayUnits units);

// "wind 12 mph from 240 (WSW), gusting 18".
std::string wind_words(const Wind& wind, DisplayUnits units);
// "12 mph, gusts 18": for a label on a map.
std::string wind_label(const Wind& wind, DisplayUnits units);

// "9 mph against, 7 mph from the left"; parts that round to nothing are left out. `tail_mps` in the back of a
// ball positive, `cross_mps` to its right.
std::string wind_parts_words(double tail_mps, double cross_mps, DisplayUnits units);

}  // namespace landwidth
