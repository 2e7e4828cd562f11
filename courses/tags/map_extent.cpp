#include "courses/tags/map_extent.hpp"

namespace landwidth {

void reach_over(const LonLatPath& path, std::optional<MapExtent>& extent) {
    for (const LonLat& place : path) {
        if (!extent) extent = MapExtent::around(place);
        extent->add(place);
    }
}

void reach_over(const MapShape& shape, std::optional<MapExtent>& extent) {
    if (const auto* point = std::get_if<LonLat>(&shape)) {
        reach_over(LonLatPath{*point}, extent);
    } else if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&shape)) {
        for (const LonLatPath& path : *paths)
            reach_over(path, extent);
    } else {
        for (const LonLatPolygon& polygon : std::get<std::vector<LonLatPolygon>>(shape))
            reach_over(polygon.outer, extent);
    }
}

}  // namespace landwidth
