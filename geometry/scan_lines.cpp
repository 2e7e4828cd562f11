#include "geometry/scan_lines.hpp"

#include <cmath>
#include <stdexcept>

namespace landwidth {
namespace {

constexpr double most_cells = 1e9;

// How many cells of an axis have their centre within the extent.
int cells_along(double extent_m, double cells_per_m) {
    return static_cast<int>(std::floor(extent_m * cells_per_m + 0.5));
}

int first_centre(double from_origin_m, double cells_per_m, int count) {
    return static_cast<int>(std::clamp(std::ceil(from_origin_m * cells_per_m - 0.5), 0.0, count * 1.0));
}

}  // namespace

CellGrid CellGrid::over(const Box& box, double step_m) {
    const Point size = box.max - box.min;
    const double cells_per_m = 1.0 / step_m;
    if (!(step_m > 0.0) || !(size.x * cells_per_m * size.y * cells_per_m < most_cells)) {
        throw std::invalid_argument("the step of a raster is not above 0, or far too small");
    }
    return {box.min, cells_per_m, cells_along(size.x, cells_per_m), cells_along(size.y, cells_per_m)};
}

int CellGrid::first_row(double y) const {
    return first_centre(y - origin.y, cells_per_m, rows);
}

int CellGrid::first_column(double x) const {
    return first_centre(x - origin.x, cells_per_m, columns);
}

RowCrossings::RowCrossings(const CellGrid& grid, std::span<const EdgeBands::Edge> edges, std::size_t group)
    : columns_(static_cast<std::size_t>(grid.columns)), starts_(static_cast<std::size_t>(grid.rows) + 1, 0) {
    const auto for_each_row = [&](const auto& visit) {
        for (const EdgeBands::Edge& edge : edges) {
            if (edge.group != group) continue;
            const int end = grid.first_row(edge.high.y);
            for (int row = grid.first_row(edge.low.y); row < end; ++row) {
                visit(edge, static_cast<std::size_t>(row));
            }
        }
    };
    for_each_row([&](const EdgeBands::Edge&, std::size_t row) { ++starts_[row + 1]; });
    for (std::size_t row = 1; row < starts_.size(); ++row)
        starts_[row] += starts_[row - 1];
    crossings_.resize(starts_.back());
    std::vector<std::size_t> next(starts_.begin(), starts_.end() - 1);
    for_each_row([&](const EdgeBands::Edge& edge, std::size_t row) {
        const double up_m = grid.centre_y(static_cast<int>(row)) - edge.low.y;
        const double x = edge.low.x + up_m / (edge.high.y - edge.low.y) * (edge.high.x - edge.low.x);
        // Coming from the left, ground is entered over an edge that falls.
        crossings_[next[row]++] = {static_cast<std::size_t>(grid.first_column(x)), -edge.rise};
    });
    for (std::size_t row = 0; row + 1 < starts_.size(); ++row) {
        const auto crossings = std::span(crossings_).subspan(starts_[row], starts_[row + 1] - starts_[row]);
        std::sort(crossings.begin(), crossings.end(),
                  [](const Crossing& a, const Crossing& b) { return a.column < b.column; });
    }
}

}  // namespace landwidth
