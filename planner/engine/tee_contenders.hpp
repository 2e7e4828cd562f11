// The clubs worth computing from a tee, and the aims each may take.
#pragma once

#include <vector>

#include "courses/course.hpp"
#include "planner/engine/aim_search.hpp"
#include "planner/engine/day/bag_flights.hpp"

namespace landwidth {

struct TeeGround {
    const Hole& hole;
    const HoleDay& day;
    const BagFlights& flights;
};

// Of the clubs that are in the golfer's bag; `bag` may know more of the profile's. Never empty. `forward`:
// the fan's own, see TeeFan.
std::vector<Contender> tee_contenders(const TeeGround& ground, const Golfer& golfer, const BagShots& bag,
                                      const TeeFan& fan, double forward,
                                      const EngineAssumptions& assumptions);

}  // namespace landwidth
