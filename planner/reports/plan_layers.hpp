// A plan as map layers.
//
// Shapes are rounded to 1e-8 degrees (about a millimetre), rings right-handed (outer ones counterclockwise)
// and cut at the antimeridian, as RFC 7946 asks. Fields are always yards, whatever the view's units; labels
// follow the view.
#pragma once

#include <vector>

#include "planner/reports/plan_view.hpp"
#include "planner/reports/vector_layers.hpp"

namespace landwidth {

// lies, landing_ellipses, landing_widths, aim_lines: in drawing order. A layer without features stays.
std::vector<VectorLayer> plan_layers(const PlanView& view);

}  // namespace landwidth
