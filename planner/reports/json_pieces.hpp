// What the machine-readable reports have in common: numbers rounded to what they mean, lies, assumptions.
#pragma once

#include <array>
#include <nlohmann/json.hpp>
#include <optional>
#include <vector>

#include "geometry/lie.hpp"
#include "geometry/plane_frame.hpp"
#include "planner/engine/assumptions.hpp"

namespace landwidth {

using Json = nlohmann::ordered_json;

inline constexpr int stroke_decimals = 4;

double json_yards(double metres);
Json json_place(const PlaneFrame& frame, Point point);
// null for none.
Json json_optional(const std::optional<double>& value, int decimals);

// A lie in the words of the plan's contract: a teeing area is closely mown and plays as fairway; red and
// yellow are one.
const char* json_lie(Lie lie);
// Shares by those words, adding to 1 exactly.
Json json_shares(const std::array<double, lie_count>& lies);

// Shares as whole numbers of this many parts, adding to it exactly: the largest takes up what rounding leaves
// over, where it shows least.
inline constexpr double share_parts = 10000.0;
std::vector<double> parts_of_shares(std::vector<double> shares);

Json json_assumptions(const Assumptions& assumptions);

// The text of a file. Names of maps and profiles may hold bytes that are no UTF-8; it is valid JSON all the
// same.
std::string json_text(const Json& json);

}  // namespace landwidth
