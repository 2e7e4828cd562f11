// The forms of a survey.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "courses/course.hpp"
#include "courses/reading/map_source.hpp"
#include "courses/survey/hole_survey.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// One entry a hole of course.holes.
std::string survey_text(const Course& course, const std::vector<HoleSurvey>& surveys, DisplayUnits units);
std::string survey_json(const Course& course, const std::vector<HoleSurvey>& surveys);

// The course as a map in OpenStreetMap's tags with the findings as points: RFC 7946, and the same as tables
// of a GeoPackage written to `path`, which must not exist (throws OutputError). See survey_layers.hpp.
std::string survey_geojson(const MapData& map, const Course& course);
void write_survey_geopackage(const MapData& map, const Course& course, const std::filesystem::path& path);

}  // namespace landwidth
