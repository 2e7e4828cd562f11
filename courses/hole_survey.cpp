#include "courses/hole_survey.hpp"

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr int first_station_yd = 150;
constexpr int last_station_yd = 320;
constexpr int step_yd = 10;
// Fairway and trouble further from the line than this do not bear on a tee shot: over 130 yd.
constexpr double reach_m = 120.0;

}  // namespace

HoleSurvey survey_hole(const Hole& hole) {
    HoleSurvey survey{hole.line.length(), {}};
    for (int station_yd = first_station_yd; station_yd <= last_station_yd; station_yd += step_yd) {
        const double station_m = Yards{static_cast<double>(station_yd)}.metres();
        if (station_m > survey.length_m) break;
        survey.transects.push_back(transect_at(hole.lies, hole.line, station_m, reach_m));
    }
    return survey;
}

}  // namespace landwidth
