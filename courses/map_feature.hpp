// A feature of a map as read: an id, tags of OpenStreetMap's open scheme, a shape in WGS 84 degrees.
#pragma once

#include <map>
#include <string>
#include <variant>
#include <vector>

#include "geometry/plane_frame.hpp"

namespace landwidth {

using Tags = std::map<std::string, std::string>;

struct LonLatPolygon {
    std::vector<LonLat> outer;
    std::vector<std::vector<LonLat>> inners;
};
using LonLatPath = std::vector<LonLat>;

// A multi-part shape keeps its parts together, since they share id and tags.
using MapShape = std::variant<LonLat, std::vector<LonLatPath>, std::vector<LonLatPolygon>>;

struct MapFeature {
    std::string id;     // "way/123", "relation/45", "node/6" for OpenStreetMap data, else "feature 7"
    std::string layer;  // GDAL's layer name
    std::string file;
    Tags tags;
    MapShape shape;

    // "" when absent.
    const std::string& tag(const std::string& key) const;
    // "file, layer, id" for error messages.
    std::string where() const;
};

}  // namespace landwidth
