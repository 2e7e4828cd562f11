// OpenStreetMap data as plain records, whatever file they came in.
//
// Three readers fill them: osm_xml (.osm, also as .gz and .bz2), osm_binary (.pbf, .o5m) and osm_json (the
// JSON of queries); osm_features makes features of them. Nobody after the readers knows the format, so that
// the same map, and the same loss, is told the same way whatever it was saved as.
//
// Positions are kept in steps of 1e-7 degrees (about 1 cm), as the data itself is.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "courses/tags/map_extent.hpp"
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
    // Where it is, for a way that comes without its nodes: exports can be told to write a middle or a box
    // only.
    std::optional<LonLat> middle;
};
struct OsmMember {
    char kind = 'w';  // 'n', 'w' or 'r'
    std::int64_t id = 0;
    std::string role;
};
struct OsmRelation : OsmElement {
    std::vector<OsmMember> members;
    std::optional<LonLat> middle;
};

struct OsmElements {
    std::vector<OsmNode> nodes;  // each kind ascending by id, every id once
    std::vector<OsmWay> ways;
    std::vector<OsmRelation> relations;
    std::optional<MapExtent> box;  // what the file says it reaches over
    std::string copyright;         // what the file's head says about its rights; may be empty
    std::string remark;        // what the export says went wrong with it ("Query timed out"); may be empty
    int deleted = 0;           // elements marked as deleted, left out
    int doubled = 0;           // elements that came more than once; the one with more in it is kept
    std::size_t elements = 0;  // in the file, whether kept or not

    // Null where there is none.
    const OsmNode* node(std::int64_t id) const;
    const OsmWay* way(std::int64_t id) const;
};

// Collects elements as they come, in any order, and puts them in order at the end.
class OsmCollector {
  public:
    // The collected elements; to be filled element by element.
    OsmElements elements;

    // A position that stands inside a way or a member: it yields to the node itself, and is no double of it.
    void add_inline(std::int64_t node, LonLat place);
    // The same without an id; returns the one made up for it, below those an editor gives to new elements.
    std::int64_t add_inline(LonLat place);
    // A node that is named but has no position: an id that no node has.
    std::int64_t made_up_id() { return --last_made_up_; }
    // The points of a member, in full inside its relation.
    OsmWay& add_inline_way(std::int64_t id);
    void add_box(const MapExtent& box);

    OsmElements finish();

  private:
    std::vector<OsmNode> inline_nodes_;
    std::vector<OsmWay> inline_ways_;
    std::int64_t last_made_up_ = -4'000'000'000'000'000;
};

// Position in steps of 1e-7 degrees.
LonLat in_steps(LonLat place);

// The box of an export between two corners; one that lies across the 180th meridian ends beyond it.
MapExtent box_between(LonLat south_west, LonLat north_east);

// The position that the texts give. Throws InputError naming `where` ("course.osm, node/3") when one is no
// number or not on the earth.
LonLat place_in(const std::string& lon, const std::string& lat, const std::string& where);

// Keys folded, values trimmed, empty ones left out; of a key that comes twice the first.
Tags tags_of(const OsmElement& element);

}  // namespace landwidth
