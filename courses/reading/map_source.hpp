// Reads OpenStreetMap data, and any vector source GDAL opens, into features with OpenStreetMap tags. Built on
// GDAL/OGR and OSR.
//
// - OpenStreetMap's own formats, told by what is in them: .osm (also .gz, .bz2), .osm.pbf, .o5m, JSON of
// queries.
//   Read into one kind of records (osm_elements) and from there in one way (osm_features): the same map gives
//   the same features and findings. Elements may come in any order, more than once, with positions inside the
//   ways; those marked as deleted are left out.
// - GeoJSON, GeoPackage, Shapefile (one, or a folder of them), KML, FlatGeobuf and whatever else this GDAL
//   opens, also packed as .gz or .zip: every layer is read, fields are tags (names compared without regard to
//   case; the ten-character names of Shapefile and KML's ExtendedData are recognised), hstore or JSON strings
//   in `other_tags`, `all_tags` and `tags` are unpacked.
// - Closed lines that carry an area's tags become areas, in OpenStreetMap's own formats as in files converted
//   with GDAL's default settings.
// - Any CRS is transformed to WGS 84 longitude, latitude. A layer without CRS is taken for WGS 84 if its
//   coordinates allow it (a finding), else refused.
// Z is dropped, curves are made linear, multi-part shapes stay together. What an export left out, what was
// dropped, closed or found twice is a finding.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "courses/finding.hpp"
#include "courses/reading/tag_mapping.hpp"
#include "courses/tags/map_extent.hpp"
#include "courses/tags/map_feature.hpp"
#include "geometry/error.hpp"

namespace landwidth {

struct MapData {
    std::vector<MapFeature> features;  // only those with a tag of the vocabulary; in file order
    std::string source;                // file name without folders
    // What the source itself says ("(c) OpenStreetMap contributors, ODbL" for OpenStreetMap formats; dataset
    // metadata where it has such); empty when it says nothing.
    std::string attribution;
    // What the map reaches over, and whether the file says so; absent without features.
    std::optional<MapExtent> extent;
    // Of a copy that `survey` wrote also what the map it is of had to tell (copied_findings.hpp).
    std::vector<Finding> findings;
    // How many features are left out because their tags say nothing to a golf hole.
    std::size_t without_role = 0;

    // Absent where the file does not say how far it reaches.
    std::optional<MapExtent> stated_extent() const {
        return extent && extent->stated ? extent : std::nullopt;
    }
};

// There is no golf on the map as far as its tags go. `proposed_tags`: what its layers and columns seem to
// mean, as a file for --tags; empty when they do not tell.
class NoGolfError : public InputError {
  public:
    NoGolfError(const std::string& place, const std::string& problem, std::string tags)
        : InputError(place, problem), proposed_tags(std::move(tags)) {}

    std::string proposed_tags;
};

// `mapping`: what the layers and columns of a map that is no OpenStreetMap file mean.
//
// Throws InputError: unreadable, empty, not a map, damaged part way, a coordinate that is not finite or off
// the earth, a column of the mapping that is not there; NoGolfError: no golf in it. The message names file,
// layer, feature and field. Writes nothing, prints nothing (GDAL's own messages are caught and reworded).
MapData read_map(const std::filesystem::path& path, const TagMapping& mapping = {});

}  // namespace landwidth
