// The outline of where a share of a club's usual shots land, as maps and map layers draw it.
#pragma once

#include "geometry/region.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// In the hole's plane, `points` of them; empty for a club without a pattern. Where the plan is not for the
// reference day on level ground, the profile's ellipse is moved to where the usual shot comes down; its shape
// stays.
Ring landing_rim(const PlanView& view, Point tee, const TeeChoice& choice, double share, int points);

}  // namespace landwidth
