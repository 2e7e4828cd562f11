// Which files are OpenStreetMap's own, and their records.
#pragma once

#include <string>
#include <string_view>

#include "courses/reading/osm_elements.hpp"

namespace landwidth {

enum class OsmFormat { none, xml, json, pbf, o5m };

// By the first bytes of the unpacked file; by its name (".osm", ".osm.gz", ".osm.pbf", ...) only where those
// say nothing, so that a damaged file is refused by the reader that can say why.
OsmFormat osm_format_of(std::string_view head, const std::string& file);

// `gdal_path` as GDAL takes it, `file` to be named in errors. Throws InputError as the readers do.
OsmElements read_osm_file(OsmFormat format, const std::string& gdal_path, const std::string& file);

}  // namespace landwidth
