// Which recorded shots were mishits.
//
// Every report asks over the draws and not by their middle: where shots hardly spread, the middle of all
// draws fits none of them.
#pragma once

#include <span>
#include <vector>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// A shot that is more likely a mishit than not is counted as one.
inline constexpr double taken_for_mishit = 0.5;

// Of each shot, the chance that it was a mishit, in [0, 1]; the mean over draws of the pattern. At least one
// draw.
std::vector<double> mishit_chances(std::span<const ShotPattern> draws, std::span<const ShotOffset> shots);
// The same with one pattern taken for the truth.
std::vector<double> mishit_chances(const ShotPattern& pattern, std::span<const ShotOffset> shots);

}  // namespace landwidth
