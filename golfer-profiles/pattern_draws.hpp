// How sure a pattern is: draws of what the golfer's true pattern may be, given the shots behind it.
#pragma once

#include <cstdint>
#include <vector>

#include "golfer-profiles/pattern_prior.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// `count` draws from the posterior of the club's pattern; `stream` tells clubs apart (draws of different
// clubs are independent), the same arguments give the same draws. The club has a pattern.
//
// With the shots at hand (Club::learnt_from) by Gibbs sampling under the model of pattern_learning.hpp.
// Without, from the pattern and its number of shots alone, which are then taken as all that is known.
std::vector<ShotPattern> drawn_patterns(const Club& club, const PatternPrior& weight, std::uint64_t stream,
                                        int count);

}  // namespace landwidth
