// The straight hole of a driver chart: a fairway of one landing width from near the tee to a round green, and
// one kind of trouble at one distance from the edges of the fairway.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "courses/course.hpp"
#include "planner/engine/assumptions.hpp"

namespace landwidth {

// What lies beyond the rough beside the fairway: nothing but more rough, woods on both sides, or a red
// penalty area or out of bounds on one side.
enum class ChartTrouble { rough, trees, water_left, water_right, out_left, out_right };

inline constexpr std::array all_chart_troubles{ChartTrouble::rough,      ChartTrouble::trees,
                                               ChartTrouble::water_left, ChartTrouble::water_right,
                                               ChartTrouble::out_left,   ChartTrouble::out_right};

// "rough", "trees", "water-left", ...: as typed and as files have it.
std::string_view chart_trouble_name(ChartTrouble trouble);
// All of them, in the order above.
std::vector<std::string> chart_trouble_names();
std::optional<ChartTrouble> chart_trouble_named(std::string_view name);

// Played due north from (0, 0), metres; width_m > 0, length_m at least 100 m. Par is by length, at least 4.
Hole chart_hole(double width_m, double length_m, ChartTrouble trouble, const Assumptions& assumptions);

// The same ground with the tee moved forward, so that the hole is length_m long; not longer than it was.
Hole chart_hole_shortened(const Hole& hole, double length_m, const Assumptions& assumptions);

}  // namespace landwidth
