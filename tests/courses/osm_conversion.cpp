#include "tests/courses/osm_conversion.hpp"

#include <cstdlib>
#include <nlohmann/json.hpp>
#include <stdexcept>

namespace landwidth::test {

namespace {

using nlohmann::json;

json element_of(const char* type, const OsmElement& element) {
    json result{{"type", type}, {"id", element.id}};
    for (const auto& [key, value] : element.tags)
        result["tags"][key] = value;
    return result;
}

json place_of(LonLat place) {
    return {{"lat", place.lat_deg}, {"lon", place.lon_deg}};
}

json positions_of(const OsmWay& way, const OsmElements& elements) {
    json positions = json::array();
    for (const std::int64_t id : way.nodes) {
        const OsmNode* node = elements.node(id);
        positions.push_back(node == nullptr ? json() : place_of(node->place));
    }
    return positions;
}

}  // namespace

void run_osmium(const std::string& arguments) {
    const std::string command = "osmium " + arguments + " >/dev/null 2>&1";
    if (std::system(command.c_str()) != 0) throw std::runtime_error("failed: " + command);
}

std::string osm_json(const OsmElements& elements, JsonStyle style) {
    json list = json::array();
    for (const OsmNode& node : elements.nodes) {
        if (style == JsonStyle::positions && node.tags.empty()) continue;
        json item = element_of("node", node);
        item.update(place_of(node.place));
        list.push_back(std::move(item));
    }
    for (const OsmWay& way : elements.ways) {
        json item = element_of("way", way);
        item["nodes"] = way.nodes;
        if (style == JsonStyle::positions) item["geometry"] = positions_of(way, elements);
        list.push_back(std::move(item));
    }
    for (const OsmRelation& relation : elements.relations) {
        json item = element_of("relation", relation);
        item["members"] = json::array();
        for (const OsmMember& member : relation.members) {
            const char* type = member.kind == 'n' ? "node" : member.kind == 'r' ? "relation" : "way";
            json record{{"type", type}, {"ref", member.id}, {"role", member.role}};
            const OsmWay* way = member.kind == 'w' ? elements.way(member.id) : nullptr;
            if (style == JsonStyle::positions && way != nullptr)
                record["geometry"] = positions_of(*way, elements);
            item["members"].push_back(std::move(record));
        }
        list.push_back(std::move(item));
    }
    json document{
        {"version", 0.6},
        {"osm3s", {{"copyright", "The data included in this document is from www.openstreetmap.org."}}}};
    if (elements.box) {
        document["bounds"] = {{"minlat", elements.box->south},
                              {"minlon", elements.box->west},
                              {"maxlat", elements.box->north},
                              {"maxlon", elements.box->east}};
    }
    document["elements"] = std::move(list);
    return document.dump(1);
}

}  // namespace landwidth::test
