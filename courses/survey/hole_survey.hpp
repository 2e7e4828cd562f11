// The numbers of a survey: landing widths and trouble along a hole, heights and slopes of its ground.
#pragma once

#include <optional>
#include <vector>

#include "courses/course.hpp"
#include "geometry/landing_width.hpp"

namespace landwidth {

// The ground on the line of play. Slopes are metres of rise for a metre of way.
struct GroundAtStation {
    double over_tee_m;
    double rise_along;     // in the direction of play; below 0 it falls
    double rise_to_right;  // square to it; above 0 the ground falls to the left
};

struct HoleSurvey {
    double length_m;  // along the line of play
    // One transect every 10 yd from 150 to 320 yd, as far as the hole reaches. Empty on a hole shorter than
    // 150 yd.
    std::vector<Transect> transects;
    // From the tee to the pin; absent, and no `ground`, where nobody gave heights.
    std::optional<double> rise_m = {};
    // At every transect.
    std::vector<GroundAtStation> ground = {};
};

HoleSurvey survey_hole(const Hole& hole);

}  // namespace landwidth
