// A strokes field sampled for a picture.
#pragma once

#include "planner/engine/cost_map.hpp"
#include "planner/engine/field/personal_field.hpp"

namespace landwidth {

// Expected strokes from every place on a lattice of about `step_m`; a penalty area with the best relief for a
// ball that came along the play.
CostMap sampled_costs(const PersonalField& field, double step_m);

}  // namespace landwidth
