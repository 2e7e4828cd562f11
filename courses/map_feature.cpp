#include "courses/map_feature.hpp"

namespace landwidth {

const std::string& MapFeature::tag(const std::string& key) const {
    static const std::string absent;
    const auto found = tags.find(key);
    return found == tags.end() ? absent : found->second;
}

std::string MapFeature::where() const {
    std::string place = file;
    if (!layer.empty() && layer != file) place += ", layer " + layer;
    return place + ", " + id;
}

}  // namespace landwidth
