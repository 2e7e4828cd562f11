// How high trees and buildings stand over the ground, by place.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "geometry/lie_partition.hpp"

namespace landwidth {

struct TallGround {
    Region region;
    double height_m;  // over the ground, > 0
    bool is_trees;    // trees stand only where the lie is trees: a fairway cut out of a wood has no canopy
};

class CanopyRaster {
  public:
    // Nothing stands anywhere.
    CanopyRaster() = default;
    // Of what stands on a place the highest counts. Where the lie is trees and no tall ground says how high,
    // `trees_m`. step_m > 0. Cost: proportional to the cells plus edges times the rows they cross.
    CanopyRaster(const LiePartition& lies, std::span<const TallGround> tall, double trees_m, double step_m);

    bool empty() const { return cells_dm_.empty(); }
    // Metres over the ground; 0 where nothing stands and outside the extent. To 0.1 m.
    double at(Point p) const;

  private:
    Point origin_{};
    double cells_per_m_ = 0.0;
    int columns_ = 0;
    int rows_ = 0;
    std::vector<std::uint16_t> cells_dm_;
};

}  // namespace landwidth
