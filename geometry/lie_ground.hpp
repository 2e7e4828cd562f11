// What a LiePartition shares between its copies: the mapped ground by lie, before and after overlaps are
// settled. Private to this room.
//
// A rank is a place in lie_priority.
#pragma once

#include <algorithm>
#include <mutex>

#include "geometry/edge_bands.hpp"
#include "geometry/lie_partition.hpp"

namespace landwidth {

inline std::size_t rank_of(Lie lie) {
    return static_cast<std::size_t>(std::ranges::find(lie_priority, lie) - lie_priority.begin());
}

class LiePartition::Ground {
  public:
    Ground(const Box& extent, std::span<const LieLayer> layers, const std::optional<Region>& in_bounds);

    // Groups are ranks. Rough claims all of the extent; the others as mapped, reaching out of it or not.
    const EdgeBands& claims() const { return claims_; }
    std::span<const Region> mapped(std::size_t rank) const { return mapped_[rank]; }
    // What is left of a lie when those before it have taken theirs.
    const Region& settled(std::size_t rank) const;

  private:
    struct Late {
        std::once_flag made;
        Region region;
    };
    template <typename Make>
    static const Region& late(Late& late, const Make& make) {
        std::call_once(late.made, [&] { late.region = make(); });
        return late.region;
    }
    // All that is mapped with a lie, cut to the extent; and all that goes before it.
    const Region& claim(std::size_t rank) const;
    const Region& claimed_before(std::size_t rank) const;

    Region extent_;
    std::array<std::vector<Region>, lie_count> mapped_;
    EdgeBands claims_;
    mutable std::array<Late, lie_count> claim_;
    mutable std::array<Late, lie_count> claimed_before_;
    mutable std::array<Late, lie_count> settled_;
};

}  // namespace landwidth
