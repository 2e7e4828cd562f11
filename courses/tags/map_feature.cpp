#include "courses/tags/map_feature.hpp"

#include "courses/tags/vocabulary.hpp"

namespace landwidth {

FeatureTags::FeatureTags(Tags tags) : tags_(std::move(tags)), role_(role_of(tags_)) {}

std::optional<LonLat> place_of(const MapShape& shape) {
    if (const auto* point = std::get_if<LonLat>(&shape)) return *point;
    if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&shape)) {
        for (const LonLatPath& path : *paths) {
            if (!path.empty()) return path[path.size() / 2];
        }
        return std::nullopt;
    }
    return std::get<std::vector<LonLatPolygon>>(shape).front().outer.front();
}

const std::string& MapFeature::tag(const std::string& key) const {
    static const std::string absent;
    const Tags& all = tags;
    const auto found = all.find(key);
    return found == all.end() ? absent : found->second;
}

std::string MapFeature::label() const {
    return id.starts_with("feature ") ? "layer " + layer + ", " + id : id;
}

std::string MapFeature::where() const {
    std::string place = file;
    if (!layer.empty() && layer != file) place += ", layer " + layer;
    return place + ", " + id;
}

}  // namespace landwidth
