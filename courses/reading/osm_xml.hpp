// A look at OpenStreetMap XML before GDAL reads it.
//
// GDAL's OSM driver wants every element once, and nodes before the ways that use them; it drops what it
// cannot build without a word about what it was. Real exports come otherwise: ways first, nodes once with
// tags and once without, positions inside the ways, elements marked as deleted in an editor. This room reads
// the file into plain records, names what is broken in it, and puts it in order where it has to be.
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "courses/tags/map_feature.hpp"

namespace landwidth {

struct OsmElement {
    std::int64_t id = 0;
    std::vector<std::pair<std::string, std::string>> tags;
};
struct OsmNode : OsmElement {
    LonLat place;
};
struct OsmWay : OsmElement {
    std::vector<std::int64_t> nodes;
};
struct OsmMember {
    char kind = 'w';  // 'n', 'w' or 'r'
    std::int64_t id = 0;
    std::string role;
};
struct OsmRelation : OsmElement {
    std::vector<OsmMember> members;
};

struct OsmDocument {
    std::vector<OsmNode> nodes;  // each kind in file order, or sorted by id once put in order
    std::vector<OsmWay> ways;
    std::vector<OsmRelation> relations;
    std::string copyright;  // what the file's head says about its rights; may be empty
    std::string remark;     // what the export says went wrong with it ("Query timed out"); may be empty
    int deleted = 0;        // elements marked as deleted, left out
    int doubled = 0;        // elements that came more than once; the one with more in it is kept
    // False when GDAL's driver would not understand the file as it stands.
    bool in_order = true;
};

// `gdal_path` is read through GDAL's file system, `file` named in errors. Throws InputError: not well-formed
// (with the line), not an osm file, a position that is missing, no number or off the earth.
OsmDocument read_osm_xml(const std::string& gdal_path, const std::string& file);

// The document as OSM XML the driver understands.
std::string osm_xml_text(const OsmDocument& document);

Tags tags_of(const OsmElement& element);

}  // namespace landwidth
