// The day a hole is played on: wind, air and how firm the ground is. SI.
#pragma once

#include <optional>

#include "geometry/units.hpp"
#include "golfer-profiles/air.hpp"
#include "golfer-profiles/run_out.hpp"

namespace landwidth {

struct Wind {
    double speed_mps;  // mean, >= 0
    Bearing from;      // true: a wind from 270 degrees blows to the east
    // What gusts reach, >= speed_mps: two standard deviations over the mean (assumption). Every ball meets a
    // wind of its own. Absent: a steady wind.
    std::optional<double> gusts_mps = {};
};

struct Conditions {
    std::optional<Wind> wind = {};
    Weather weather = standard_weather(0.0);
    Firmness fairway = Firmness::ordinary;
    Firmness rough = Firmness::ordinary;
};

// The day that profiles are measured on, but for the ground's heights.
bool is_reference_day(const Conditions& conditions);

}  // namespace landwidth
