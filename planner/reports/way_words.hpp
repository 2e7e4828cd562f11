// Clubs whose usual shots go two ways, in words that every report shares.
#pragma once

#include <array>
#include <string>

#include "golfer-profiles/shot_pattern.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// "70 % about 7 m left, 30 % about 27 m right": of the usual shots of a pattern.
std::string ways_words(const Spread& usual, const std::array<Way, 2>& ways, DisplayUnits units);
// The same; empty where they go one way.
std::string ways_words(const ShotPattern& pattern, DisplayUnits units);

}  // namespace landwidth
