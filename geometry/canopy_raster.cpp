#include "geometry/canopy_raster.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <stdexcept>

#include "geometry/lie_raster.hpp"
#include "geometry/scan_lines.hpp"

namespace landwidth {
namespace {

using Decimetres = std::uint16_t;

// What stands is never rounded down to nothing.
Decimetres decimetres(double height_m) {
    if (!(height_m > 0.0)) throw std::invalid_argument("what stands on the ground has no height");
    constexpr double most = std::numeric_limits<Decimetres>::max();
    return static_cast<Decimetres>(std::clamp(std::round(10.0 * height_m), 1.0, most));
}

// Ground painted in one go; the order is that of painting, so that the highest comes last.
struct Layer {
    Decimetres height_dm;
    bool is_trees;
    auto operator<=>(const Layer&) const = default;
};

}  // namespace

CanopyRaster::CanopyRaster(const LiePartition& lies, std::span<const TallGround> tall, double trees_m,
                           double step_m) {
    const Decimetres trees_dm = decimetres(trees_m);
    const CellGrid grid = CellGrid::over(lies.extent(), step_m);
    std::map<Layer, std::vector<EdgeBands::Edge>> layers;
    for (const TallGround& ground : tall) {
        append_edges(ground.region.polygons(), 0, layers[{decimetres(ground.height_m), ground.is_trees}]);
    }
    if (layers.empty() && lies.mapped(Lie::trees).empty()) return;

    const LieRaster lie(lies, step_m);  // the same cells
    cells_dm_.assign(grid.cells(), 0);
    for (const auto& [layer, edges] : layers) {
        const Layer painted = layer;
        RowCrossings(grid, edges, 0).for_each_span([&](std::size_t first, std::size_t end) {
            for (std::size_t cell = first; cell < end; ++cell) {
                if (!painted.is_trees || lie.cell(cell) == Lie::trees) cells_dm_[cell] = painted.height_dm;
            }
        });
    }
    for (std::size_t cell = 0; cell < cells_dm_.size(); ++cell) {
        if (cells_dm_[cell] == 0 && lie.cell(cell) == Lie::trees) cells_dm_[cell] = trees_dm;
    }
    if (std::ranges::all_of(cells_dm_, [](Decimetres height) { return height == 0; })) {
        cells_dm_ = {};
        return;
    }
    origin_ = grid.origin;
    cells_per_m_ = grid.cells_per_m;
    columns_ = grid.columns;
    rows_ = grid.rows;
}

double CanopyRaster::at(Point p) const {
    const double column = (p.x - origin_.x) * cells_per_m_;
    const double row = (p.y - origin_.y) * cells_per_m_;
    if (!(column >= 0.0 && row >= 0.0 && column < columns_ && row < rows_)) return 0.0;
    return 0.1 * cells_dm_[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
                           static_cast<std::size_t>(column)];
}

}  // namespace landwidth
