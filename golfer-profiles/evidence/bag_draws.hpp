// How sure a golfer's patterns are: joint draws of what every club's true pattern may be, given the shots
// behind all of them.
#pragma once

#include <vector>

#include "golfer-profiles/pattern_prior.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// By club of the profile, then by draw; empty for clubs without a pattern. Draw number i of one club and draw
// number i of another are of the same golfer, so that what they share cancels in their comparison.
using BagDraws = std::vector<std::vector<ShotPattern>>;

// `count` draws. The same arguments give the same draws, and more draws begin with the fewer.
BagDraws drawn_bags(const Golfer& golfer, const PatternPrior& prior, int count);

}  // namespace landwidth
