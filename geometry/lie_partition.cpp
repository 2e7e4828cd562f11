#include "geometry/lie_partition.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <stdexcept>

#include "geometry/lie_ground.hpp"

namespace landwidth {

LiePartition::LiePartition(const Box& extent, std::span<const LieLayer> layers,
                           const std::optional<Region>& in_bounds)
    : extent_(extent),
      beyond_(in_bounds ? Lie::out_of_bounds : Lie::rough),
      ground_(std::make_shared<const Ground>(extent, layers, in_bounds)) {}

const Region& LiePartition::region(Lie lie) const {
    return ground_->settled(rank_of(lie));
}

std::span<const Region> LiePartition::mapped(Lie lie) const {
    return ground_->mapped(rank_of(lie));
}

Lie LiePartition::lie_at(Point p) const {
    if (!extent_.contains(p)) return beyond_;
    // Never 0, since rough claims the whole extent.
    const auto rank = static_cast<std::size_t>(std::countr_zero(ground_->claims().at(p)));
    return lie_priority[rank];
}

std::vector<LieStretch> LiePartition::stretches(Point from, Point to) const {
    const double path_m = distance(from, to);
    if (!std::isfinite(path_m)) throw std::invalid_argument("a path with an end that is not finite");
    if (path_m <= shortest_stretch_m) return {{0.0, path_m, lie_at(from)}};
    std::vector<LieStretch> all;
    const Point along = unit(to - from);
    for_each_stretch(ground_->claims().cuts(from, to), [&](double from_m, double to_m) {
        const Lie lie = lie_at(from + 0.5 * (from_m + to_m) * along);
        if (!all.empty() && all.back().lie == lie) {
            all.back().to_m = to_m;
        } else {
            all.push_back({from_m, to_m, lie});
        }
    });
    return all;
}

}  // namespace landwidth
