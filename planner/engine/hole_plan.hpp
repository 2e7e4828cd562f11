// One hole, planned.
#pragma once

#include "planner/engine/bag_shots.hpp"
#include "planner/engine/published_field.hpp"
#include "planner/engine/round_plan.hpp"

namespace landwidth {

// `strokes` and `bag` are the golfer's, made once for all holes.
HolePlan plan_hole(const Hole& hole, const Golfer& golfer, const StrokesByDistance& strokes,
                   const BagShots& bag, const PlanRequest& request);

}  // namespace landwidth
