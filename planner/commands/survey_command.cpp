#include "planner/commands/survey_command.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "courses/survey/hole_survey.hpp"
#include "geometry/error.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/reports/output_file.hpp"
#include "planner/reports/survey_reports.hpp"

namespace landwidth {

void SurveyCommand::setup(CLI::App& app) {
    course_.setup(app);
    app.add_option("--assume", assumed_, "override a modelling assumption, e.g. stream_width=3; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
    output_.setup(app, {"text", "json", "geojson", "gpkg"});
    app.footer(
        "Example: landwidth survey course.osm --tee white\n"
        "Leaves with 1 when a hole cannot be planned.\n"
        "No map yet: export the course from the open map in the browser as course.osm (credit: (c) "
        "OpenStreetMap\n"
        "contributors, ODbL). What it lacks is best drawn in this order: golf=hole lines from tee to pin "
        "with ref and\n"
        "par, then golf=green, tee, fairway, bunker, water, woods, and the boundary as leisure=golf_course.\n"
        "To mend it in a GIS: landwidth survey course.osm --format gpkg -o course.gpkg, then read "
        "course.gpkg.\n"
        "A map without golf tags: landwidth survey drawn.gpkg > drawn.tags proposes what its layers and "
        "columns\n"
        "mean; then landwidth survey drawn.gpkg --tags drawn.tags");
}

// A map without golf tags is refused, with a file of tags proposed for it.
MapData SurveyCommand::read_map(std::ostream& out) const {
    try {
        return course_.read_map();
    } catch (const NoGolfError& refusal) {
        if (output_.format() == "text" && !output_.to_file()) out << refusal.proposed_tags;
        throw;
    }
}

// A copy holds what a hole can be made of; what else the map had is counted.
void SurveyCommand::tell_left_out(const MapData& map, std::ostream& err) const {
    const bool copy = output_.format() == "geojson" || output_.format() == "gpkg";
    if (!copy || map.without_role == 0) return;
    err << fmt::format("landwidth: not in the copy: {} feature{} of {} whose tags say nothing to a golf hole\n",
                       map.without_role, map.without_role == 1 ? "" : "s", map.source);
}

void SurveyCommand::write(const MapData& map, const Course& course, const std::vector<HoleSurvey>& surveys,
                          std::ostream& out) const {
    if (output_.format() == "json") {
        output_.write(survey_json(course, surveys), out);
    } else if (output_.format() == "geojson") {
        output_.write(survey_geojson(map, course), out);
    } else if (output_.format() == "gpkg") {
        write_file_with(output_.file(), output_.force(), [&](const std::filesystem::path& path) {
            write_survey_geopackage(map, course, path);
        });
    } else {
        output_.write(survey_text(course, surveys, output_.units()), out);
    }
}

int SurveyCommand::run(std::ostream& out, std::ostream& err) {
    if (output_.format() == "gpkg" && !output_.to_file())
        throw UsageError("--format gpkg is a file: name it with -o FILE.gpkg");
    output_.check();
    Assumptions assumptions = default_assumptions();
    for (const std::string& text : assumed_)
        override_assumption(assumptions, text);
    const MapData map = read_map(out);
    const Course course = course_.assemble(map, assumptions.map);
    std::vector<HoleSurvey> surveys;
    for (const Hole& hole : course.holes)
        surveys.push_back(survey_hole(hole));
    write(map, course, surveys, out);
    tell_left_out(map, err);
    const bool broken = std::ranges::any_of(
        course.findings, [](const Finding& finding) { return finding.severity == Severity::error; });
    return broken ? 1 : 0;
}

}  // namespace landwidth
