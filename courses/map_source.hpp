// Reads any vector source GDAL opens into features with OpenStreetMap tags. Built on GDAL/OGR and OSR.
//
// - .osm and .osm.pbf with settings of our own (closed golf ways are areas, no tag is hidden), no environment
// variable needed.
// - GeoJSON, GeoPackage, Shapefile (one, or a folder of them), KML, FlatGeobuf and whatever else this GDAL
// opens: every layer is read,
//   fields are tags (names compared without regard to case; the ten-character names of Shapefile and KML's
//   ExtendedData are recognised), hstore or JSON strings in `other_tags` are unpacked.
// - Closed lines that carry an area's tags become areas, as in files converted with GDAL's default settings.
// - Any CRS is transformed to WGS 84 longitude, latitude. A layer without CRS is taken for WGS 84 if its
// coordinates
//   allow it (a finding), else refused.
// Z is dropped, curves are made linear, multi-part shapes stay together.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "courses/finding.hpp"
#include "courses/map_feature.hpp"

namespace landwidth {

struct MapData {
    std::vector<MapFeature> features;  // only those with a tag of the vocabulary; in file order
    std::string source;                // file name without folders
    // What the source itself says ("(c) OpenStreetMap contributors, ODbL" for OpenStreetMap formats; dataset
    // metadata where it has such); empty when it says nothing.
    std::string attribution;
    std::vector<Finding> findings;
};

// Throws InputError: unreadable, empty, not a map, damaged part way, a coordinate that is not finite or off
// the earth, no golf in it. The message names file, layer, feature and field. Writes nothing, prints nothing
// (GDAL's own messages are caught and reworded).
MapData read_map(const std::filesystem::path& path);

}  // namespace landwidth
