// Lines of equal cost on a hole's cost map.
#pragma once

#include <vector>

#include "geometry/point.hpp"
#include "planner/engine/cost_map.hpp"

namespace landwidth {

// The edges of the ground that costs at least `level` strokes: closed rings in the hole's plane (the first
// point repeated at the end), in no order, an inside by the even-odd rule. Places without a value lie
// outside; the edge runs between the cells, half way where the cost jumps. Vertices within `tolerance_m` of
// the line are left out.
std::vector<Ring> edges_of_cost(const CostMap& map, double level, double tolerance_m);

}  // namespace landwidth
