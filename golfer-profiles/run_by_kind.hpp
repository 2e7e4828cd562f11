// How far a ball runs after landing on fairway, when nobody measured it.
#pragma once

#include "golfer-profiles/profile.hpp"

namespace landwidth {

// The share of the carry that a ball of this kind of club runs on an ordinary fairway; in [0, 0.2]. Sources
// beside the numbers.
double run_share_of_carry(ClubKind kind);

}  // namespace landwidth
