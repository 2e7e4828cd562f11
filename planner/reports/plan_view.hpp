// What every report of a plan is made from.
#pragma once

#include "planner/engine/round_plan.hpp"

namespace landwidth {

enum class DisplayUnits { yards, metres };

struct PlanView {
    const Course& course;
    const Golfer& golfer;
    const RoundPlan& plan;
    DisplayUnits units = DisplayUnits::yards;
};

}  // namespace landwidth
