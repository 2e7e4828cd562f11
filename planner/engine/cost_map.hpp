// What the places of a hole cost, sampled on a lattice for a picture.
#pragma once

#include <vector>

#include "geometry/point.hpp"

namespace landwidth {

struct CostMap {
    Point corner;      // the outer corner of cell (0, 0)
    Point along_row;   // from one cell of a row to the next, metres
    Point along_rows;  // from one row to the next
    int columns;
    int rows;
    // Expected strokes still to be played with a ball that comes to rest there, the penalty included for a
    // penalty area (with relief near it); row by row. NaN: out of bounds, or off the ground that was solved.
    std::vector<float> strokes;
};

}  // namespace landwidth
