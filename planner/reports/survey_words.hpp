// What the forms of a survey share.
#pragma once

#include <vector>

#include "courses/course.hpp"
#include "courses/survey/hole_survey.hpp"

namespace landwidth {

struct SurveyTotals {
    int holes = 0;
    int par = 0;
    double length_m = 0.0;
    int errors = 0;
    int warnings = 0;
    int notes = 0;
};
SurveyTotals survey_totals(const Course& course, const std::vector<HoleSurvey>& surveys);

}  // namespace landwidth
