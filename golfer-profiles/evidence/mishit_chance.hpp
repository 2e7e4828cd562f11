// Which recorded shots were mishits, a pattern taken for the truth.
#pragma once

#include <span>
#include <vector>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// A shot that is more likely a mishit than not is counted as one.
inline constexpr double taken_for_mishit = 0.5;

// Of each shot, the chance that it was a mishit, in [0, 1].
std::vector<double> mishit_chances(const ShotPattern& pattern, std::span<const ShotOffset> shots);

}  // namespace landwidth
