// The sea beside a hole, from coastlines.
//
// natural=coastline runs with the land on its left and the water on its right. The ground of a hole is cut
// along every coastline that comes near; a piece is sea when more of its shore has it on the right. A
// coastline that ends on the map is drawn on straight to the edge of the ground (a warning); one that ends at
// the map's own edge ends there, and nothing is said of the ground beyond. Where tee, pin and most of the
// line would lie in the water the coastline was drawn the wrong way and is turned round (a warning); shores
// that contradict each other, and a tee or pin in the sea, are warnings. Ground with no coastline near is
// land.
#pragma once

#include <optional>
#include <vector>

#include "courses/assembly/drawn_ground.hpp"
#include "courses/assembly/feature_shapes.hpp"
#include "courses/assembly/hole_draft.hpp"
#include "courses/assembly/hole_findings.hpp"
#include "geometry/line_of_play.hpp"

namespace landwidth {

// `known`: how far the map reaches, in the plane; absent where it does not say. Findings of a coastline go to
// `notes`, those of the hole to `draft`.
Region sea_beside(const std::vector<const MapFeature*>& coastlines, const PlaneDrawing& drawing,
                  const LineOfPlay& line, const Box& extent, const std::optional<Box>& known,
                  FeatureNotes& notes, HoleDraft& draft);

// Ground drawn for golf that reaches into the sea, more than a slip of the pen and where balls come down: it
// could be read two ways.
void tell_ground_in_sea(const Region& sea, const std::vector<const MapFeature*>& coastlines,
                        const std::vector<DrawnGround>& drawn, const PlaneDrawing& drawing,
                        const LineOfPlay& line, FeatureNotes& notes);

}  // namespace landwidth
