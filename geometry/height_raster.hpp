// Heights of the ground over a rectangle of a hole's plane: a grid of posts, bilinear between them.
#pragma once

#include <vector>

#include "geometry/point.hpp"

namespace landwidth {

class HeightRaster {
  public:
    // Posts row by row from the corner of least x and y, `columns` and `rows` >= 2, spread evenly over the
    // extent, rim included; all heights finite metres. Else std::invalid_argument.
    HeightRaster(const Box& extent, int columns, int rows, std::vector<float> heights_m);

    const Box& extent() const { return extent_; }
    int columns() const { return columns_; }
    int rows() const { return rows_; }
    // Outside the extent as on its nearest rim.
    double at(Point p) const;
    // Rise per metre eastward and northward, over the distance of a post spacing around p.
    Point gradient(Point p) const;

  private:
    Box extent_;
    int columns_;
    int rows_;
    double columns_per_m_;
    double rows_per_m_;
    std::vector<float> heights_m_;
};

}  // namespace landwidth
