// Shots recorded on a course as positions: where a shot started and came to rest, and where it was aimed.
#pragma once

#include <string>

#include "geometry/plane_frame.hpp"
#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

struct ShotPositions {
    LonLat start, finish, target;
};

// The finish seen from the start: along the line to the target and across it (right positive), metres.
// Distances are those of the ellipsoid. Throws InputError(place, ...) for positions that cannot be of one
// shot: a latitude beyond the poles, longitude and latitude swapped, target equal to start, target or finish
// over 700 m away.
ShotOffset offset_at_rest(const ShotPositions& positions, const std::string& place);

}  // namespace landwidth
