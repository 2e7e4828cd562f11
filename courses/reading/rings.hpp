// Rings out of stretches of ways, and areas out of rings.
#pragma once

#include <vector>

#include "courses/tags/map_feature.hpp"

namespace landwidth {

// What a relation says a member is.
enum class RingRole { unsaid, outer, inner };

// A line whose points are all there: a way, or a stretch of one.
struct OutlinePart {
    LonLatPath path;
    RingRole role = RingRole::unsaid;

    // At least three different places, back where it began.
    bool closed() const { return path.size() > 3 && path.front() == path.back(); }
};

// Stretches that meet end to end become one; turned round where that fits. At a place where more than two
// meet, those of the same role are joined first.
std::vector<OutlinePart> joined(std::vector<OutlinePart> stretches);

// Whether a place is inside a closed path, by the even-odd rule in degrees. On the edge: either.
bool is_inside(LonLat place, const LonLatPath& ring);

// Areas out of closed rings: each inner ring goes to the smallest outer ring around it. A ring that says
// neither is inner when an odd number of the others lie around it. An inner ring that is in no outer one is
// dropped.
std::vector<LonLatPolygon> areas_of(const std::vector<OutlinePart>& rings);

// Square degrees, never negative; for comparing.
double degree_area(const LonLatPath& ring);

}  // namespace landwidth
