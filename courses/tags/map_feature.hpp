// A feature of a map as read: an id, tags of OpenStreetMap's open scheme, a shape in WGS 84 degrees.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "courses/tags/roles.hpp"
#include "geometry/plane_frame.hpp"

namespace landwidth {

using Tags = std::map<std::string, std::string>;

// The tags of a feature and the role they give it: decided once, when the tags are given, so that the one
// never tells other than the other.
class FeatureTags {
  public:
    FeatureTags() = default;  // none
    FeatureTags(Tags tags);

    operator const Tags&() const { return tags_; }
    Role role() const { return role_; }
    Tags::const_iterator begin() const { return tags_.begin(); }
    Tags::const_iterator end() const { return tags_.end(); }
    std::size_t size() const { return tags_.size(); }
    bool operator==(const FeatureTags& other) const = default;

  private:
    Tags tags_;
    Role role_ = Role::none;
};

struct LonLatPolygon {
    std::vector<LonLat> outer;
    std::vector<std::vector<LonLat>> inners;
};
using LonLatPath = std::vector<LonLat>;

// A multi-part shape keeps its parts together, since they share id and tags.
using MapShape = std::variant<LonLat, std::vector<LonLatPath>, std::vector<LonLatPolygon>>;

// Any place of the shape, to point at; absent when it has none.
std::optional<LonLat> place_of(const MapShape& shape);

struct MapFeature {
    std::string id;     // "way/123", "relation/45", "node/6" for OpenStreetMap data, else "feature 7"
    std::string layer;  // GDAL's layer name
    std::string file;
    FeatureTags tags;
    MapShape shape;
    // Of a line: how many of its points the source lacks. The shape is what is left.
    std::size_t points_missing = 0;

    Role role() const { return tags.role(); }
    // "" when absent.
    const std::string& tag(const std::string& key) const;
    // The id for people: "way/123", but "layer holes, feature 7" where only the layer makes it unique.
    std::string label() const;
    // "file, layer, id" for error messages.
    std::string where() const;
};

}  // namespace landwidth
