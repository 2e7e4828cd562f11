#include "geometry/lie_raster.hpp"

#include <algorithm>
#include <stdexcept>

#include "geometry/lie_ground.hpp"
#include "geometry/scan_lines.hpp"

namespace landwidth {

LieRaster::LieRaster(const LiePartition& partition, double step_m) : beyond_(partition.beyond()) {
    const CellGrid grid = CellGrid::over(partition.extent(), step_m);
    origin_ = grid.origin;
    cells_per_m_ = grid.cells_per_m;
    columns_ = grid.columns;
    rows_ = grid.rows;
    cells_.assign(grid.cells(), Lie::rough);
    // Painted over each other: the lie that wins an overlap comes last.
    for (std::size_t rank = lie_count - 1; rank-- > 0;) {
        const RowCrossings crossings(grid, partition.ground_->claims().edges(), rank);
        crossings.for_each_span([&](std::size_t first, std::size_t end) {
            std::fill(cells_.data() + first, cells_.data() + end, lie_priority[rank]);
        });
    }
}

double misread_share(const LieRaster& raster, const LiePartition& partition, int points) {
    if (points <= 0) throw std::invalid_argument("a misread share needs at least one point");
    // Steps of an additive recurrence in the plane: 1/g and 1/g^2 with g^3 = g + 1 (the plastic number).
    constexpr double step_x = 0.7548776662466927;
    constexpr double step_y = 0.5698402909980532;
    const Box& extent = partition.extent();
    const Point size = extent.max - extent.min;
    int misread = 0;
    double u = 0.5;
    double v = 0.5;
    for (int i = 0; i < points; ++i) {
        const Point p{extent.min.x + u * size.x, extent.min.y + v * size.y};
        if (raster.at(p) != partition.lie_at(p)) ++misread;
        u = u + step_x < 1.0 ? u + step_x : u + step_x - 1.0;
        v = v + step_y < 1.0 ? v + step_y : v + step_y - 1.0;
    }
    return static_cast<double>(misread) / points;
}

}  // namespace landwidth
