// A feature of a map as read: an id, tags of OpenStreetMap's open scheme, a shape in WGS 84 degrees.
#pragma once

#include <map>
#include <optional>
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

// Any place of the shape, to point at; absent when it has none.
std::optional<LonLat> place_of(const MapShape& shape);

// The part of the earth that a map shows, degrees; never across the 180th meridian.
struct MapBox {
    double west;
    double south;
    double east;
    double north;
};

struct MapFeature {
    std::string id;     // "way/123", "relation/45", "node/6" for OpenStreetMap data, else "feature 7"
    std::string layer;  // GDAL's layer name
    std::string file;
    Tags tags;
    MapShape shape;

    // "" when absent.
    const std::string& tag(const std::string& key) const;
    // The id for people: "way/123", but "layer holes, feature 7" where only the layer makes it unique.
    std::string label() const;
    // "file, layer, id" for error messages.
    std::string where() const;
};

}  // namespace landwidth
