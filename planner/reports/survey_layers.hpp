// A course as map layers in the open vocabulary, as it was read, with the findings beside it: to be opened in
// a GIS, mended and read again.
//
// areas, lines and points hold one feature a feature of the map, its tags in fields of their names; tags that
// nobody here looks at are in `other_tags`, a JSON object. Ids of the source are kept: in `@id` where it is
// OpenStreetMap data, else in `source_id`. findings holds points: where a finding has no place of its own, at
// the start of its hole, else in the middle of the course. Reading tells those of reading the map again until
// they are removed and makes the others anew; the fields that this takes are in copied_findings.hpp.
#pragma once

#include <vector>

#include "courses/course.hpp"
#include "courses/reading/map_source.hpp"
#include "planner/reports/vector_layers.hpp"

namespace landwidth {

// Coordinates are as read, not rounded.
std::vector<VectorLayer> survey_layers(const MapData& map, const Course& course);

}  // namespace landwidth
