// The parts of the HTML report beside the plan itself: what to keep in mind, and what the plan rests on.
#pragma once

#include <string>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// The standing cautions and the warnings of this plan.
std::string plan_cautions(const PlanView& view);

// Findings of the map, the shot patterns and every assumption.
std::string plan_appendix(const PlanView& view);

// Source and attribution of the map.
std::string page_footer(const PlanView& view);

}  // namespace landwidth
