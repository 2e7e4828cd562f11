// Two plans of what should be the same hole.
#pragma once

#include "planner/engine/round_plan.hpp"

namespace landwidth::fixture {

// Same clubs in the same order, aims turned by `turn` and mirrored by `sign`, costs alike. Rasters are laid
// anew, so equal to their error, not to the digit; aims are compared by what they cost, within the finest
// steps where the optimum is flat. `strokes`: how far costs may be apart.
void check_alike(const HolePlan& a, const HolePlan& b, double sign, double turn, double strokes);

}  // namespace landwidth::fixture
