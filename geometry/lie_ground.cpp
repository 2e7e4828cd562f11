#include "geometry/lie_ground.hpp"

#include <algorithm>
#include <stdexcept>
#include <string>

namespace landwidth {
namespace {

bool within(const Box& inner, const Box& outer) {
    return outer.contains(inner.min) && outer.contains(inner.max);
}

Region ground_of(const Box& extent) {
    const bool has_area = extent.min.x < extent.max.x && extent.min.y < extent.max.y;
    if (!has_area) throw std::invalid_argument("the extent of a hole is not finite or has no area");
    return Region::box(extent);
}

}  // namespace

LiePartition::Ground::Ground(const Box& extent, std::span<const LieLayer> layers,
                             const std::optional<Region>& in_bounds)
    : extent_(ground_of(extent)) {
    for (const LieLayer& layer : layers) {
        // Rough is what the others leave; drawn or not makes no difference.
        if (layer.lie == Lie::rough || layer.region.empty()) continue;
        mapped_[rank_of(layer.lie)].push_back(layer.region);
    }
    if (in_bounds) mapped_[rank_of(Lie::out_of_bounds)].push_back(extent_.without(*in_bounds));
    mapped_[rank_of(Lie::rough)].push_back(extent_);

    std::vector<EdgeBands::Edge> edges;
    for (std::size_t rank = 0; rank < lie_count; ++rank) {
        for (const Region& region : mapped_[rank]) {
            append_edges(region.polygons(), static_cast<std::uint8_t>(rank), edges);
        }
    }
    // Neither a row of the extent nor a path through it meets an edge above or below it.
    std::erase_if(edges, [&](const EdgeBands::Edge& edge) {
        return edge.high.y < extent.min.y || edge.low.y > extent.max.y;
    });
    claims_ = EdgeBands(std::move(edges));
}

const Region& LiePartition::Ground::claim(std::size_t rank) const {
    return late(claim_[rank], [&] {
        std::vector<Region> parts;
        for (const Region& region : mapped_[rank]) {
            const bool whole = region.empty() || within(region.bounds(), extent_.bounds());
            parts.push_back(whole ? region : region.common_with(extent_));
        }
        return Region::united(parts);
    });
}

const Region& LiePartition::Ground::claimed_before(std::size_t rank) const {
    return late(claimed_before_[rank],
                [&] { return rank == 0 ? Region() : claimed_before(rank - 1).joined_with(claim(rank - 1)); });
}

const Region& LiePartition::Ground::settled(std::size_t rank) const {
    try {
        return late(settled_[rank], [&] { return claim(rank).without(claimed_before(rank)); });
    } catch (const std::runtime_error& trouble) {
        throw std::runtime_error("cutting out the " + std::string(lie_name(lie_priority[rank])) +
                                 " of a hole: " + trouble.what());
    }
}

}  // namespace landwidth
