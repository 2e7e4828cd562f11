#include "courses/assembly/outline_near.hpp"

#include <cmath>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr std::size_t long_outline = 1000;
constexpr double longest_short_cut_deg = 0.1;
constexpr double metres_per_degree = 111'195.0;  // on a sphere of 6,371 km

bool within_a_short_cut(LonLat a, LonLat b) {
    return std::abs(std::remainder(b.lon_deg - a.lon_deg, 360.0)) <= longest_short_cut_deg &&
           std::abs(b.lat_deg - a.lat_deg) <= longest_short_cut_deg;
}

LonLatPath path_near(const LonLatPath& path, const DegreeBox& here) {
    LonLatPath kept{path.front()};
    for (std::size_t at = 0; at + 1 < path.size();) {
        std::size_t next = at + 1;
        unsigned sides = here.sides_beyond(path[at]) & here.sides_beyond(path[next]);
        while (sides != 0 && next + 1 < path.size() && within_a_short_cut(path[at], path[next + 1])) {
            sides &= here.sides_beyond(path[next + 1]);
            if (sides != 0) ++next;
        }
        kept.push_back(path[next]);
        at = next;
    }
    return kept;
}

bool lies_beyond_a_side(const LonLatPath& path, const DegreeBox& here) {
    unsigned sides = here.sides_beyond(path.front());
    for (const LonLat& place : path)
        sides &= here.sides_beyond(place);
    return sides != 0;
}

double ring_area(const LonLatPath& ring) {
    const LonLat start = ring.front();
    double middle = 0.0;
    for (const LonLat& place : ring)
        middle += place.lat_deg / static_cast<double>(ring.size());
    double twice = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const LonLat& a = ring[i];
        const LonLat& b = ring[(i + 1) % ring.size()];
        twice += std::remainder(a.lon_deg - start.lon_deg, 360.0) * (b.lat_deg - start.lat_deg) -
                 std::remainder(b.lon_deg - start.lon_deg, 360.0) * (a.lat_deg - start.lat_deg);
    }
    return 0.5 * std::abs(twice) * metres_per_degree * metres_per_degree *
           std::cos(middle * radians_per_degree);
}

}  // namespace

std::optional<LonLatPolygon> outline_near(const LonLatPolygon& polygon, const DegreeBox& here) {
    std::size_t points = polygon.outer.size();
    for (const LonLatPath& inner : polygon.inners)
        points += inner.size();
    if (points < long_outline) return std::nullopt;
    LonLatPolygon near{path_near(polygon.outer, here), {}};
    for (const LonLatPath& inner : polygon.inners) {
        if (!lies_beyond_a_side(inner, here)) near.inners.push_back(path_near(inner, here));
    }
    return near;
}

double rough_area(const LonLatPolygon& polygon) {
    double area = ring_area(polygon.outer);
    for (const LonLatPath& inner : polygon.inners)
        area -= ring_area(inner);
    return area;
}

}  // namespace landwidth
