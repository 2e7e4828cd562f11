// One order of features whatever file they came in.
#pragma once

#include <vector>

#include "courses/finding.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

// Nodes, ways, relations, each by number, as in OpenStreetMap data: FlatGeobuf sorts features by place and a
// folder of Shapefiles by form, and the order decides what doubled numbers of holes are called. Features with
// no such id, and findings on them, follow as they came.
void put_in_order_of_elements(std::vector<MapFeature>& features, std::vector<Finding>& findings);

}  // namespace landwidth
