// A slip of the pen: one point of a shape that lies far from all its others (a digit lost in a coordinate, a
// point dragged away, a jump to latitude 0).
//
// A point of an outline is stray when going round by way of it is longer than five times the rest of the
// outline, and by more than 200 m: no ground of a golf course has such a spike. On the outline of a large
// wood or lake, whatever its length, when the way there and back is more than 2 km, both its legs are 20
// times as long as its neighbours are apart and 5 times as long as every other leg: a large lake's own corner
// is wider, or stands among legs as long. A point inside a line when the detour is more than twice the rest
// of the line and more than 1 km. It is left out and told as severely as the loss of such a feature. The ends
// of a line are believed: which of them is wrong cannot be told, and a hole of such a length is refused when
// it is put together. Assumptions, all of them.
#pragma once

#include <vector>

#include "courses/finding.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

// One point of every outline or line at most; the features in any form of source.
void leave_out_stray_points(std::vector<MapFeature>& features, std::vector<Finding>& findings);
// Areas of golf and buildings that still reach further than any course go whole (a warning).
void leave_out_huge_areas(std::vector<MapFeature>& features, std::vector<Finding>& findings);

}  // namespace landwidth
