// The lies and surroundings of one hole, from everything mapped near it.
//
// Rules: the hole's own green is the green, every other green fairway; golf=tee is teeing area whichever hole
// it is for; natural=sand without a golf tag is a bunker, water without one a red penalty area (notes);
// scrub, woods, single trees and rows of trees are trees; heath and wetland are rough (a note). Watercourses
// are as wide as tagged, else as assumed (a note); what runs under ground is left out (a note). Trees and
// buildings are as high as tagged, else as assumed (a note where a height cannot be read). Beaches, fences,
// walls and hedges in play are told and change nothing.
#pragma once

#include <vector>

#include "courses/assembly/drawn_ground.hpp"
#include "courses/assembly/hole_findings.hpp"
#include "courses/assembly/map_index.hpp"
#include "courses/course.hpp"
#include "courses/map_assumptions.hpp"
#include "geometry/line_of_play.hpp"

namespace landwidth {

struct HoleGround {
    std::vector<DrawnGround> drawn;
    std::vector<Surrounding> surroundings;
    // Trees and buildings, as high as tagged, else as assumed.
    std::vector<TallGround> tall;
    std::vector<const MapFeature*> out_of_bounds_marks;
    std::vector<const MapFeature*> coastlines;
};

// `green`: which part of which feature is the hole's own. `extent`: the hole's ground; `here`: a box that
// holds it and 100 m around it.
HoleGround ground_of_hole(const std::vector<const IndexedFeature*>& near, const MapFeature& green,
                          std::size_t green_part, const PlaneDrawing& drawing, const LineOfPlay& line,
                          const Box& extent, const DegreeBox& here, const MapAssumptions& assumptions,
                          FeatureNotes& notes);

}  // namespace landwidth
