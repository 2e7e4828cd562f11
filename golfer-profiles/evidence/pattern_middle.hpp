// The middle of drawn patterns, and draws moved about another middle. Not for use outside of this room.
#pragma once

#include <span>
#include <vector>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// Means of carries and sides, of the logarithms of spreads, of the log odds of a mishit; the middle of the
// tails. Where mishits are of two kinds among the draws, those of the kind that most draws have. At least one
// draw.
ShotPattern middle_of(std::span<const ShotPattern> draws);

// Every draw moved alike so that a middle `from` becomes `to`: shifted along and aside, spreads by a factor,
// mishits in their odds. Tails stay. Mishits of another kind than the middle's keep their place.
void move_about(const ShotPattern& from, const ShotPattern& to, std::span<ShotPattern> draws);

}  // namespace landwidth
