// Long outlines near a hole: a wood of a whole county has more points than any hole needs.
#pragma once

#include <optional>

#include "courses/assembly/map_index.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

// The polygon with fewer points that covers the same ground within `here`: where its outline runs beyond one
// side of the box, a short cut beyond that side takes its place (no longer than 0.1 degrees, so that it is
// straight on any map; the box should be 100 m wider than what is needed). Short cuts may cross each other
// outside the box. Absent for outlines of fewer than 1,000 points, which are no work.
std::optional<LonLatPolygon> outline_near(const LonLatPolygon& polygon, const DegreeBox& here);

// The area in square metres within 1 %, for areas of up to some hundred kilometres away from the poles.
double rough_area(const LonLatPolygon& polygon);

}  // namespace landwidth
