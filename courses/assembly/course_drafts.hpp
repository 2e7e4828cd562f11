// The holes of a map as drafts: those of the courses asked for and, since tees and fairways are shared out
// among all that lie there, those of the courses beside them.
#pragma once

#include <string>
#include <vector>

#include "courses/assembly/course_groups.hpp"
#include "courses/assembly/hole_draft.hpp"

namespace landwidth {

struct CourseDrafts {
    std::vector<HoleDraft> holes;       // of the courses asked for, in the order of play
    std::vector<HoleDraft> neighbours;  // of the courses within `here`
};

// `chosen`: some of `groups`, in the order of play; `here`: where neighbours are looked for; `tee`: asked
// for, may be empty.
CourseDrafts draft_courses(const std::vector<CourseGroup>& groups,
                           const std::vector<const CourseGroup*>& chosen, const DegreeBox& here,
                           const CourseGround& ground, const std::string& tee,
                           const MapAssumptions& assumptions);

// Where some holes are.
DegreeBox box_of(const std::vector<const MapFeature*>& holes);
// The place of the first that has one.
LonLat anchor_of(const std::vector<const MapFeature*>& holes);

// Throws InputError, naming `source` and the tees there are, when no hole has a tee of this name; none asked
// for is fine.
void check_tee(const std::string& tee, const std::vector<HoleDraft>& holes, const CourseGround& ground,
               const std::string& source);

// The holes with these refs, in their own order; all where none is asked for. Throws InputError, naming
// `source` and the refs there are, for one that no hole has.
std::vector<HoleDraft> holes_wanted(const std::vector<std::string>& refs, const std::vector<HoleDraft>& holes,
                                    const std::string& source);

}  // namespace landwidth
