// Where it is dry, because golf is drawn there.
#include "courses/reading/cut_areas.hpp"

namespace landwidth {

void add_golf_places(const MapFeature& feature, std::vector<LonLat>& places) {
    constexpr std::size_t most = 3000;
    constexpr std::size_t of_a_ring = 8;
    const Role role = feature.role();
    const bool dry = role == Role::tee || role == Role::fairway || role == Role::green || role == Role::pin ||
                     role == Role::bunker || role == Role::hole;
    if (!dry || places.size() > most) return;
    if (const auto* point = std::get_if<LonLat>(&feature.shape)) {
        places.push_back(*point);
    } else if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&feature.shape)) {
        for (const LonLatPath& path : *paths) {
            if (path.empty()) continue;
            // Not between: a hole may be played over water.
            places.push_back(path.front());
            places.push_back(path.back());
        }
    } else {
        for (const LonLatPolygon& polygon : std::get<std::vector<LonLatPolygon>>(feature.shape)) {
            const std::size_t step = polygon.outer.size() / of_a_ring + 1;
            for (std::size_t i = 0; i < polygon.outer.size(); i += step)
                places.push_back(polygon.outer[i]);
        }
    }
}

}  // namespace landwidth
