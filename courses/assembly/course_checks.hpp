// What a course as a whole lacks, or has too much of.
#pragma once

#include <set>
#include <vector>

#include "courses/assembly/course_ground.hpp"
#include "courses/assembly/course_groups.hpp"
#include "courses/assembly/hole_draft.hpp"
#include "courses/assembly/map_index.hpp"
#include "courses/finding.hpp"

namespace landwidth {

// golf=hole on a point is a cup when it lies in a green; else a hole that cannot be planned, unless one of
// `holes` is the line to it.
std::vector<Finding> points_for_holes(const CourseGround& ground, const std::vector<const HoleDraft*>& holes);

// A course without a boundary of its own: there is none, it lies beside the holes, or there is none and the
// file does not say where its map ends either. `groups`: all courses of the map; `holes`: the box of the
// chosen ones'.
std::vector<Finding> boundary_missing(const MapIndex& map, const std::vector<CourseGroup>& groups,
                                      const DegreeBox& holes, bool knows_edge);

// What none of the features around a course is: it is more likely missing on the map than on the ground.
std::vector<Finding> ground_missing(const std::vector<const IndexedFeature*>& around);

// Golf that lies on the ground of no hole, and golf that says nothing; `used`: on the ground of some hole.
std::vector<Finding> golf_unused(const MapIndex& map, const std::set<const MapFeature*>& used);

}  // namespace landwidth
