#include "geometry/height_raster.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace landwidth {
namespace {

// Where a coordinate falls between the posts of an axis.
struct Between {
    std::size_t post;  // the next one exists
    double share;      // of the way to the next, 0 to 1
};

Between between_posts(double from_first, int posts) {
    const double held = std::clamp(from_first, 0.0, posts - 1.0);
    const double post = std::min(std::floor(held), posts - 2.0);
    return {static_cast<std::size_t>(post), held - post};
}

}  // namespace

HeightRaster::HeightRaster(const Box& extent, int columns, int rows, std::vector<float> heights_m)
    : extent_(extent),
      columns_(columns),
      rows_(rows),
      columns_per_m_((columns - 1) / (extent.max.x - extent.min.x)),
      rows_per_m_((rows - 1) / (extent.max.y - extent.min.y)),
      heights_m_(std::move(heights_m)) {
    const Point size = extent.max - extent.min;
    if (!(size.x > 0.0 && size.y > 0.0 && std::isfinite(size.x) && std::isfinite(size.y))) {
        throw std::invalid_argument("the extent of a height raster is not finite or has no area");
    }
    if (columns < 2 || rows < 2 ||
        heights_m_.size() != static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows)) {
        throw std::invalid_argument("the heights of a raster are not columns times rows, two at least");
    }
    if (!std::ranges::all_of(heights_m_, [](float height) { return std::isfinite(height); })) {
        throw std::invalid_argument("a height of a raster is not finite");
    }
}

double HeightRaster::at(Point p) const {
    const Between x = between_posts((p.x - extent_.min.x) * columns_per_m_, columns_);
    const Between y = between_posts((p.y - extent_.min.y) * rows_per_m_, rows_);
    const float* lower = heights_m_.data() + y.post * static_cast<std::size_t>(columns_) + x.post;
    const float* upper = lower + columns_;
    const auto along = [&](const float* row) {
        const double left = row[0];
        return left + x.share * (static_cast<double>(row[1]) - left);
    };
    const double low = along(lower);
    return low + y.share * (along(upper) - low);
}

Point HeightRaster::gradient(Point p) const {
    // Over the rim the ground is level, so at the rim the difference is taken inside it.
    const auto rise = [&](Point half) {
        const Point held{std::clamp(p.x, extent_.min.x + half.x, extent_.max.x - half.x),
                         std::clamp(p.y, extent_.min.y + half.y, extent_.max.y - half.y)};
        return (at(held + half) - at(held - half)) / (2.0 * length(half));
    };
    return {rise({0.5 / columns_per_m_, 0.0}), rise({0.0, 0.5 / rows_per_m_})};
}

}  // namespace landwidth
