// OpenStreetMap records into features of a map, and what the file lacks of them into findings.
//
// - A node with tags of the vocabulary is a point, a way a line or an area (shapes_in_form() decides), a
// relation
//   of type multipolygon or boundary an area, one of type multilinestring or route a line. Other relations
//   are not used (a note where they are golf).
// - A hole line with points missing keeps what is left and is marked: its hole cannot be planned.
// - A course boundary of which anything is missing is none ("boundary-cut").
// - Anything else with points or members missing is built as far as it reaches ("points-missing",
//   "relation-cut", see cut_areas); with nothing of it there it is left out ("relation-incomplete",
//   "ring-thin").
// - A multipolygon without tags of its own goes to `bare`: its tags are on its outer way, as they used to be.
// Features come by kind (nodes, ways, relations) and id.
#pragma once

#include <string>

#include "courses/reading/osm_elements.hpp"
#include "courses/reading/read_features.hpp"

namespace landwidth {

ReadFeatures osm_features(const OsmElements& elements, const std::string& file);

}  // namespace landwidth
