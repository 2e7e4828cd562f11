// The same thing twice on a map.
#pragma once

#include <vector>

#include "courses/finding.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

// Multipolygons without tags lend their inner rings to the areas that are their outer rings: the tags of a
// multipolygon used to be put on its outer way.
void cut_out_inner_rings(const std::vector<MapFeature>& bare, std::vector<MapFeature>& features);

// Of areas with the same role and the same outer ring one is kept, with inner rings if any has them: a
// multipolygon whose tags are on its outer way comes twice out of GDAL's default settings. Of lines and
// points with the same role, name and shape one is kept. What is dropped is a note.
void drop_what_is_drawn_twice(std::vector<MapFeature>& features, std::vector<Finding>& findings);

}  // namespace landwidth
