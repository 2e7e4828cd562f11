#include "courses/survey/hole_survey.hpp"

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr int first_station_yd = 150;
constexpr int last_station_yd = 320;
constexpr int step_yd = 10;
// Fairway and trouble further from the line than this do not bear on a tee shot: over 130 yd.
constexpr double reach_m = 120.0;

GroundAtStation ground_at(const HeightRaster& heights, const Transect& transect, double tee_height_m) {
    const Point across = transect.across;
    const Point along{-across.y, across.x};
    const Point rise = heights.gradient(transect.centre);
    return {heights.at(transect.centre) - tee_height_m, dot(rise, along), dot(rise, across)};
}

}  // namespace

HoleSurvey survey_hole(const Hole& hole) {
    HoleSurvey survey{.length_m = hole.line.length(), .transects = {}};
    for (int station_yd = first_station_yd; station_yd <= last_station_yd; station_yd += step_yd) {
        const double station_m = Yards{static_cast<double>(station_yd)}.metres();
        if (station_m > survey.length_m) break;
        survey.transects.push_back(
            transect_at(hole.lies, hole.line, station_m, reach_m, hole.other_fairways));
    }
    if (hole.heights) {
        const double tee_height_m = hole.heights->at(hole.line.tee());
        survey.rise_m = hole.heights->at(hole.line.pin()) - tee_height_m;
        for (const Transect& transect : survey.transects)
            survey.ground.push_back(ground_at(*hole.heights, transect, tee_height_m));
    }
    return survey;
}

}  // namespace landwidth
