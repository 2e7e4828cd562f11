// The forms of a survey.
#pragma once

#include <string>
#include <vector>

#include "courses/course.hpp"
#include "courses/survey/hole_survey.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// One entry a hole of course.holes.
std::string survey_text(const Course& course, const std::vector<HoleSurvey>& surveys, DisplayUnits units);
std::string survey_json(const Course& course, const std::vector<HoleSurvey>& surveys);

}  // namespace landwidth
