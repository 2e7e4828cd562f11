// A bag made ready for the search: every club's shots in cells of a fan, at the sizes the search works with.
// Made once for a golfer, used on every hole.
#pragma once

#include <vector>

#include "golfer-profiles/evidence/bag_draws.hpp"
#include "golfer-profiles/profile.hpp"
#include "planner/engine/day/bag_flights.hpp"
#include "planner/engine/tee_fan.hpp"

namespace landwidth {

struct ClubShots {
    std::size_t club;                  // index in the bag
    FanShots coarse;                   // for the first fan of aims
    FanShots fine;                     // for the best aim
    std::vector<FanShots> replicates;  // for the answer and its standard error
    FanShots undrawn;                  // the pattern itself with as few shots as a draw
    std::vector<FanShots> draws;       // of what the pattern may be, for the confidence
};

struct BagShots {
    std::vector<ClubShots> clubs;  // the playable ones, as in the bag
};

// With these draws of every pattern: by club of the golfer, or none at all ({}). Throws InputError when no
// club but the putter has a pattern.
BagShots bag_shots(const Golfer& golfer, const BagFlights& flights, const EngineAssumptions& assumptions,
                   const BagDraws& draws);

}  // namespace landwidth
