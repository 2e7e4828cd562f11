// What is out of bounds on a hole.
//
// Rules:
// - Outside the course boundary (leisure=golf_course) is out, but no tee, fairway, green or bunker that lies
// on
//   it or beside it within 15 m, begun within 5: the boundary was drawn a little inside (a warning with both
//   ids). A hole whose tee or green lies outside it is played without it (a warning); a course without one
//   has none (a note).
// - An open golf=out_of_bounds line: the side away from the line of play is out, as deep as the assumptions
//   say. The side is the one the line of play is not on, judged by where the nearest part of the line of play
//   lies from each segment, near ones counting most. A line the line of play crosses tells no side and is
//   left out (a warning).
// - A closed one: inside is out, unless tee and green are inside: then outside is.
#pragma once

#include <optional>
#include <vector>

#include "courses/assembly/drawn_ground.hpp"
#include "courses/assembly/hole_draft.hpp"
#include "courses/assembly/hole_findings.hpp"
#include "geometry/line_of_play.hpp"

namespace landwidth {

struct OutOfBounds {
    std::vector<Region> out;
    std::optional<Region> in_bounds;
};

struct OutOfBoundsSources {
    std::vector<const MapFeature*> boundaries;
    std::vector<const MapFeature*> marks;   // golf=out_of_bounds
    const std::vector<DrawnGround>& drawn;  // the ground of the hole
};

OutOfBounds out_of_bounds_on(const OutOfBoundsSources& sources, const PlaneDrawing& drawing,
                             const LineOfPlay& line, const Box& extent, double depth_m, HoleDraft& draft,
                             FeatureNotes& notes);

}  // namespace landwidth
