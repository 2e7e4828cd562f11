// One hole, planned.
#pragma once

#include "planner/engine/hole_study.hpp"

namespace landwidth {

// `game` and `bag` are the golfer's, made once for all holes; `strokes_received` on this hole, for
// Stableford.
HolePlan plan_hole(const Hole& hole, const Golfer& golfer, const GolferGame& game, const BagShots& bag,
                   const PlanRequest& request, int strokes_received);

}  // namespace landwidth
