// What a plan rests on, below the plan itself in the HTML report.
#pragma once

#include <string>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// Findings of the map, the shot patterns and every assumption.
std::string plan_appendix(const PlanView& view);

}  // namespace landwidth
