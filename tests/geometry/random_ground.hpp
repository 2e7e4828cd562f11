// Seeded random ground for property tests. The numbers are the same on every machine; where two are drawn in
// one call, compilers may draw them in a different order.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numbers>
#include <random>
#include <vector>

#include "geometry/lie_partition.hpp"

namespace landwidth::testing {

inline constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
inline constexpr double infinity = std::numeric_limits<double>::infinity();

class Dice {
  public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    // The standard fixes the engine's numbers but not those of its distributions.
    double between(double low, double high) {
        return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1p-53);
    }
    Point in(const Box& box) { return {between(box.min.x, box.max.x), between(box.min.y, box.max.y)}; }
    int below(int end) { return static_cast<int>(between(0.0, end)); }

  private:
    std::mt19937_64 engine_;
};

// A ring around a centre that does not cross itself.
inline Ring blob(Dice& dice, Point centre, double radius_m, int corners) {
    Ring ring;
    for (int i = 0; i < corners; ++i) {
        const double bearing = 2.0 * std::numbers::pi * (i + dice.between(0.0, 0.9)) / corners;
        ring.push_back(centre + radius_m * dice.between(0.5, 1.0) * along_bearing(bearing));
    }
    return ring;
}

inline Region ground(Ring outer, std::vector<Ring> inners = {}) {
    return Region::repaired({std::move(outer), std::move(inners)}).region;
}

inline Region rectangle(double left, double bottom, double right, double top) {
    return Region::box({{left, bottom}, {right, top}});
}

// Blobs of every lie, some with an island, overlapping each other and the extent's edge.
inline std::vector<LieLayer> random_layers(Dice& dice, const Box& extent, int layers) {
    std::vector<LieLayer> all;
    for (int i = 0; i < layers; ++i) {
        const Point centre = dice.in(extent);
        const double radius_m = dice.between(5.0, 60.0);
        std::vector<Ring> islands;
        if (i % 4 == 0) islands.push_back(blob(dice, centre, 0.3 * radius_m, 9));
        all.push_back({all_lies[static_cast<std::size_t>(i) % lie_count],
                       ground(blob(dice, centre, radius_m, 20), std::move(islands))});
    }
    return all;
}

// Distance from p to the nearest edge of any of the layers.
inline double distance_to_edge(Point p, const std::vector<PolygonRings>& polygons) {
    double nearest = infinity;
    const auto look_at = [&](const Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Point a = ring[i];
            const Point step = ring[(i + 1) % ring.size()] - a;
            const double squared = dot(step, step);
            const double along = squared > 0.0 ? std::clamp(dot(p - a, step) / squared, 0.0, 1.0) : 0.0;
            nearest = std::min(nearest, distance(p, a + along * step));
        }
    };
    for (const PolygonRings& polygon : polygons) {
        look_at(polygon.outer);
        for (const Ring& inner : polygon.inners)
            look_at(inner);
    }
    return nearest;
}

// A motion that keeps lengths: mirrored in the y axis if asked, then turned left about the origin, then
// moved.
struct Motion {
    bool mirrored;
    double turn;
    Point shift;

    Point operator()(Point p) const { return shift + direction(p); }
    Point direction(Point p) const {
        const double x = mirrored ? -p.x : p.x;
        return {std::cos(turn) * x - std::sin(turn) * p.y, std::sin(turn) * x + std::cos(turn) * p.y};
    }
    Ring operator()(const Ring& ring) const {
        Ring moved;
        for (const Point p : ring)
            moved.push_back((*this)(p));
        return moved;
    }
    Region operator()(const Region& region) const {
        std::vector<Region> parts;
        for (const PolygonRings& polygon : region.polygons()) {
            std::vector<Ring> inners;
            for (const Ring& inner : polygon.inners)
                inners.push_back((*this)(inner));
            parts.push_back(ground((*this)(polygon.outer), std::move(inners)));
        }
        return Region::united(parts);
    }
    std::vector<LieLayer> operator()(const std::vector<LieLayer>& layers) const {
        std::vector<LieLayer> moved;
        for (const LieLayer& layer : layers)
            moved.push_back({layer.lie, (*this)(layer.region)});
        return moved;
    }
};

}  // namespace landwidth::testing
