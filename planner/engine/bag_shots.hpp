// A bag made ready for the search: every club's shots in cells of a fan, at the sizes the search works with.
// Made once for a golfer, used on every hole.
#pragma once

#include <vector>

#include "golfer-profiles/profile.hpp"
#include "planner/engine/tee_fan.hpp"

namespace landwidth {

struct ClubShots {
    std::size_t club;                  // index in the bag
    FanShots coarse;                   // for the first fan of aims
    FanShots fine;                     // for the best aim
    std::vector<FanShots> replicates;  // for the answer and its standard error
    std::vector<FanShots> draws;       // of what the pattern may be, for the confidence
};

struct BagShots {
    std::vector<ClubShots> clubs;  // those with a pattern but the putter, as in the bag
    double longest_total_m = 0.0;  // carry and run of the club that goes furthest
};

// Throws InputError when no club but the putter has a pattern.
BagShots bag_shots(const Golfer& golfer, const EngineAssumptions& assumptions);

}  // namespace landwidth
