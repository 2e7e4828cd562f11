// The outline of where a share of a club's usual shots land, as maps and map layers draw it.
#pragma once

#include <vector>

#include "geometry/region.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// One ring, or one for each way where the usual shot goes two ways (landing_ellipses), in the order of the
// ways. In the hole's plane, `points` each; none for a club without a pattern. Where the plan is not for the
// reference day on level ground, the profile's ellipse is moved to where the usual shot comes down; its shape
// stays.
std::vector<Ring> landing_rims(const PlanView& view, Point tee, const TeeChoice& choice, double share,
                               int points);

}  // namespace landwidth
