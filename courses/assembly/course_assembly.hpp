// Puts holes together from the features of a map.
//
// A hole is a golf=hole way from tee to pin. Its ground is everything mapped within `hole_margin_m` of its
// line, whichever hole it was drawn for, so features shared by two holes count for both; only its own green
// is a green. Water without a golf tag is a red penalty area; golf=water_hazard is yellow,
// golf=lateral_water_hazard red. The boundary is leisure=golf_course: outside is out of bounds. Nothing is
// guessed silently: see the findings.
#pragma once

#include <string>
#include <vector>

#include "courses/course.hpp"
#include "courses/map_assumptions.hpp"
#include "courses/reading/map_source.hpp"

namespace landwidth {

// The courses found on a map, by golf:course:name of the holes, else by the leisure=golf_course they lie in.
struct CourseOnMap {
    // What to ask for in CourseRequest::names. Where several courses are on the map and nobody named this
    // one: the id of its area ("way/123"), or "unnamed" for holes in no area. Empty: the only one, unnamed.
    std::string name;
    int holes;  // golf=hole lines, before alternatives for other tees are merged
};
std::vector<CourseOnMap> courses_on(const MapData& map);

struct CourseRequest {
    // Names to plan, compared without regard to case, in the order of play (three loops of nine: name the two
    // you play). Empty: the only one.
    std::vector<std::string> names;
    // Name of the tee to play from, compared without regard to case; empty: the one the hole's line starts
    // at.
    std::string tee;
    // Refs of the holes wanted; empty: all. Holes not wanted are neither assembled nor reported on.
    std::vector<std::string> refs;
};

// Throws InputError when there is no hole at all, the name matches no course or is needed and missing (the
// message lists the names with their numbers of holes), a ref or tee is asked for that no hole has. A hole
// that cannot be planned (a line of one point, no green) is left out with an error finding; the caller
// decides whether that is fatal.
Course assemble_course(const MapData& map, const CourseRequest& request, const MapAssumptions& assumptions);

}  // namespace landwidth
