// The numbers of a survey: landing widths and trouble along a hole.
#pragma once

#include <vector>

#include "courses/course.hpp"
#include "geometry/landing_width.hpp"

namespace landwidth {

struct HoleSurvey {
    double length_m;  // along the line of play
    // One transect every 10 yd from 150 to 320 yd, as far as the hole reaches. Empty on a hole shorter than
    // 150 yd.
    std::vector<Transect> transects;
};

HoleSurvey survey_hole(const Hole& hole);

}  // namespace landwidth
