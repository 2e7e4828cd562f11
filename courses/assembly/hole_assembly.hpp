// Puts one hole together.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "courses/assembly/fairway_owners.hpp"
#include "courses/assembly/hole_draft.hpp"
#include "courses/assembly/hole_findings.hpp"
#include "courses/assembly/map_index.hpp"
#include "courses/course.hpp"

namespace landwidth {

// What all holes of a course share while they are put together.
struct CourseContext {
    const MapIndex& index;
    const CourseGround& ground;
    const MapAssumptions& assumptions;
    const std::string& tee;  // asked for; may be empty
    std::vector<const MapFeature*> boundaries;
    std::vector<const HoleDraft*> all_holes;  // of this and of neighbouring courses
    const FairwayOwners& fairways;
    std::optional<MapExtent> map_box;  // absent where the map does not say how far it reaches
    std::size_t holes_of_course;
    FeatureNotes& notes;
    std::set<const MapFeature*>& used;  // every feature that lies on the ground of a hole
};

// The draft must be playable. What there is to say is added to its findings; absent, with an error among
// them, when tee and pin turn out to be in one place.
std::optional<Hole> assemble_hole(HoleDraft& draft, const CourseContext& course);

}  // namespace landwidth
