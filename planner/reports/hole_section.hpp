// One hole of the HTML report: the map beside the reasons and the choices.
#pragma once

#include <string>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// A <section> with the id "hole-N", N counting from 1 in the order of play; never split over printed pages.
std::string hole_section(const PlanView& view, std::size_t hole);

}  // namespace landwidth
