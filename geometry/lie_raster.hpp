// The lies of a hole as a raster, for look-ups by the million.
//
// A cell holds the lie at its centre. The error is confined to cells that an edge crosses: a look-up is wrong
// by at most half a cell's diagonal across an edge, and, edges running at all angles to the cells, the area
// of each lie is unbiased. The share of misread ground is close to 0.24 x length of all edges x step / area
// (see the tests); on a hole of 700 x 500 m with 60 overlapping areas that was 0.27 % at half a yard.
#pragma once

#include <cstdint>
#include <vector>

#include "geometry/lie_partition.hpp"

namespace landwidth {

class LieRaster {
  public:
    // step_m > 0, else, and for more than 1e9 cells, std::invalid_argument. A last row or column whose
    // centres fall outside the extent is left out: beyond() there, over less than half a step. Cost:
    // proportional to the number of cells plus edges x rows they cross (scan lines).
    LieRaster(const LiePartition& partition, double step_m);

    Lie at(Point p) const {
        const double column = (p.x - origin_.x) * cells_per_m_;
        const double row = (p.y - origin_.y) * cells_per_m_;
        if (!(column >= 0.0 && row >= 0.0 && column < columns_ && row < rows_)) return beyond_;
        return cells_[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
                      static_cast<std::size_t>(column)];
    }
    // The lie of a cell, counted row by row from the corner of least x and y.
    Lie cell(std::size_t index) const { return cells_[index]; }
    double step_m() const { return 1.0 / cells_per_m_; }
    int columns() const { return columns_; }
    int rows() const { return rows_; }

  private:
    Point origin_;
    double cells_per_m_;
    int columns_;
    int rows_;
    Lie beyond_;
    std::vector<Lie> cells_;
};

// The share of the extent's points whose raster lie differs from the partition's, from `points`
// low-discrepancy points.
double misread_share(const LieRaster& raster, const LiePartition& partition, int points);

}  // namespace landwidth
