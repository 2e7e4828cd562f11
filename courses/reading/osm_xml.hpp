// OpenStreetMap XML into records.
//
// Read with expat and not with libosmium's own XML reader: that one passes over positions inside the ways of
// a relation and over remarks, takes change files for maps, and does not say in which line or element a file
// is broken. After the records there is one path for every format.
#pragma once

#include <string>

#include "courses/reading/osm_elements.hpp"
#include "courses/reading/unpacking.hpp"

namespace landwidth {

// `file` is named in errors. Throws InputError: not well-formed (with the line), not an osm file, a position
// that is missing, no number or off the earth.
OsmElements read_osm_xml(UnpackedFile& source, const std::string& file);

}  // namespace landwidth
