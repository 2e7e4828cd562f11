// How sure a golfer's patterns are: joint draws of what every club's true pattern may be, given the shots
// behind all of them. The model stands in golfer_prior.hpp.
#pragma once

#include <vector>

#include "golfer-profiles/evidence/golfer_prior.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// By club of the profile, then by draw; empty for clubs without a pattern. Draw number i of one club and draw
// number i of another are of the same golfer, so that what they share cancels in their comparison.
using BagDraws = std::vector<std::vector<ShotPattern>>;

// `count` draws of the patterns. Their middle is the pattern as the profile states it, also where somebody
// has edited that by hand: what the shots leave open is then open about the edit. Run and number of shots are
// the profile's. The same arguments give the same draws, and more draws begin with the fewer.
BagDraws drawn_bags(const Golfer& golfer, const GolferPrior& prior, int count);

// The same before they are moved about the profile's patterns: what the recorded shots say by themselves.
// middle_of (pattern_middle.hpp) the first `draws_of_middle` of them is what a learnt profile states.
BagDraws posterior_draws(const Golfer& golfer, const GolferPrior& prior, int count);
inline constexpr int draws_of_middle = 200;

// So many further shots of a club would tell as much of its spread as is known of it without its own: from
// the golfer's other clubs and from the level.
double shots_known_otherwise(const Golfer& golfer, std::size_t club, const GolferPrior& prior);

}  // namespace landwidth
