// Which holes make up a course.
//
// A hole belongs to the course its golf:course:name says (to each of them, if it lists several), else to the
// smallest leisure=golf_course area it lies in, else to the holes nobody named. A hole without
// golf:course:name goes with the named loop of its area, and a hole in no area with the course of the map,
// when there is only one and that has no hole of its number yet; that is a note. Names are compared without
// regard to case.
#pragma once

#include <string>
#include <vector>

#include "courses/assembly/map_index.hpp"
#include "courses/finding.hpp"

namespace landwidth {

struct CourseGroup {
    std::string name;  // may be empty
    // What the user calls it by: the name, else the id of its area, else "unnamed".
    std::string handle;
    std::vector<const MapFeature*> holes;       // golf=hole features in file order
    std::vector<const MapFeature*> boundaries;  // areas of its name or with a hole of it inside
    std::vector<Finding> findings;              // on its holes, which have no numbers yet
};

std::vector<CourseGroup> course_groups(const MapIndex& index);

// The groups of these names in this order; the name of a boundary stands for its only group. None named: the
// only group. Throws InputError naming `source` and listing the courses.
std::vector<const CourseGroup*> choose_courses(const std::vector<CourseGroup>& groups,
                                               const std::vector<std::string>& names,
                                               const std::string& source);

}  // namespace landwidth
