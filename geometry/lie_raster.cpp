#include "geometry/lie_raster.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "geometry/lie_ground.hpp"

namespace landwidth {
namespace {

constexpr double most_cells = 1e9;

// How many cells of an axis have their centre within the extent.
int cells_along(double extent_m, double cells_per_m) {
    return static_cast<int>(std::floor(extent_m * cells_per_m + 0.5));
}

struct Grid {
    Point origin;
    double cells_per_m;
    int columns;
    int rows;

    double centre_y(int row) const { return origin.y + (row + 0.5) / cells_per_m; }
    // The first row, or column, whose centre is not below, or left of, a coordinate.
    int first_row(double y) const { return first(y - origin.y, rows); }
    int first_column(double x) const { return first(x - origin.x, columns); }

  private:
    int first(double from_origin_m, int count) const {
        return static_cast<int>(std::clamp(std::ceil(from_origin_m * cells_per_m - 0.5), 0.0, count * 1.0));
    }
};

// A boundary of one lie's ground on the centre line of a row: from this column on there is one layer of it
// more or less.
struct Crossing {
    int column;
    int change;
};

class RowCrossings {
  public:
    RowCrossings(const Grid& grid, std::span<const EdgeBands::Edge> edges, std::size_t group)
        : starts_(static_cast<std::size_t>(grid.rows) + 1, 0) {
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
            crossings_[next[row]++] = {grid.first_column(x), -edge.rise};
        });
    }

    // Calls visit(first column, column after the last) for the ground in a row.
    template <typename Visit>
    void for_each_span(int row, const Visit& visit) {
        const auto r = static_cast<std::size_t>(row);
        const auto crossings = std::span(crossings_).subspan(starts_[r], starts_[r + 1] - starts_[r]);
        std::sort(crossings.begin(), crossings.end(),
                  [](const Crossing& a, const Crossing& b) { return a.column < b.column; });
        int layers = 0;
        int first = 0;
        for (const Crossing& crossing : crossings) {
            const bool was_inside = layers > 0;
            layers += crossing.change;
            if (!was_inside && layers > 0) first = crossing.column;
            if (was_inside && layers <= 0) visit(first, crossing.column);
        }
    }

  private:
    std::vector<std::size_t> starts_;
    std::vector<Crossing> crossings_;
};

}  // namespace

LieRaster::LieRaster(const LiePartition& partition, double step_m)
    : origin_(partition.extent().min), cells_per_m_(1.0 / step_m), beyond_(partition.beyond()) {
    const Point size = partition.extent().max - origin_;
    if (!(step_m > 0.0) || !(size.x * cells_per_m_ * size.y * cells_per_m_ < most_cells)) {
        throw std::invalid_argument("the step of a lie raster is not above 0, or far too small");
    }
    columns_ = cells_along(size.x, cells_per_m_);
    rows_ = cells_along(size.y, cells_per_m_);
    const Grid grid{origin_, cells_per_m_, columns_, rows_};
    cells_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), Lie::rough);
    // Painted over each other: the lie that wins an overlap comes last.
    for (std::size_t rank = lie_count - 1; rank-- > 0;) {
        RowCrossings crossings(grid, partition.ground_->claims().edges(), rank);
        for (int row = 0; row < rows_; ++row) {
            const auto start = cells_.begin() + static_cast<std::ptrdiff_t>(row) * columns_;
            crossings.for_each_span(
                row, [&](int first, int end) { std::fill(start + first, start + end, lie_priority[rank]); });
        }
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
