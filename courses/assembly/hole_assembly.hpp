// Puts one hole together.
#pragma once

#include <optional>
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
    FeatureNotes& notes;  // what is told once, however many holes it bears on
};

struct AssembledHole {
    // Absent, with an error among the findings, for a draft that cannot be played, or when tee and pin turn
    // out to be in one place.
    std::optional<Hole> hole;
    std::vector<Finding> findings;          // of the draft and of the assembly, with the hole's ref
    std::vector<const MapFeature*> ground;  // every feature that lies on its ground
};

AssembledHole assemble_hole(HoleDraft draft, const CourseContext& course);

}  // namespace landwidth
