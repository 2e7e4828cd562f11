// Painting ground onto a grid of cells, row by row: a cell is painted where its centre is in the ground.
// Private to this room.
#pragma once

#include <algorithm>
#include <span>
#include <vector>

#include "geometry/edge_bands.hpp"
#include "geometry/point.hpp"

namespace landwidth {

// Square cells over a box, from the corner of least x and y. A last row or column whose centres would fall
// outside the box is left out.
struct CellGrid {
    Point origin;
    double cells_per_m;
    int columns;
    int rows;

    // Throws std::invalid_argument when step_m is not above 0 and for more than 1e9 cells.
    static CellGrid over(const Box& box, double step_m);

    std::size_t cells() const { return static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows); }
    double centre_y(int row) const { return origin.y + (row + 0.5) / cells_per_m; }
    // The first row, or column, whose centre is not below, or left of, a coordinate.
    int first_row(double y) const;
    int first_column(double x) const;
};

// Where the centre lines of the rows cross the edges of one group of ground, which may overlap itself.
// Cost: edges times the rows they cross.
class RowCrossings {
  public:
    RowCrossings(const CellGrid& grid, std::span<const EdgeBands::Edge> edges, std::size_t group);

    // Calls visit(first cell, cell after the last) for the ground of every row, bottom to top; cells are
    // counted row by row.
    template <typename Visit>
    void for_each_span(const Visit& visit) const {
        for (std::size_t row = 0; row + 1 < starts_.size(); ++row) {
            int layers = 0;
            std::size_t first = 0;
            for (std::size_t i = starts_[row]; i < starts_[row + 1]; ++i) {
                const std::size_t cell = row * columns_ + crossings_[i].column;
                const bool was_inside = layers > 0;
                layers += crossings_[i].change;
                if (!was_inside && layers > 0) first = cell;
                if (was_inside && layers <= 0) visit(first, cell);
            }
        }
    }

  private:
    // A boundary of the ground on the centre line of a row: from this column on there is one layer of it more
    // or less.
    struct Crossing {
        std::size_t column;
        int change;
    };

    std::size_t columns_;
    std::vector<std::size_t> starts_;  // of each row in crossings_, and the end
    std::vector<Crossing> crossings_;  // of a row from left to right
};

}  // namespace landwidth
