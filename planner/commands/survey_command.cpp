#include "planner/commands/survey_command.hpp"

#include <algorithm>

#include "courses/survey/hole_survey.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/reports/survey_reports.hpp"

namespace landwidth {

void SurveyCommand::setup(CLI::App& app) {
    course_.setup(app);
    app.add_option("--assume", assumed_, "override a modelling assumption, e.g. stream_width=3; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
    output_.setup(app, {"text", "json"});
    app.footer(
        "Example: landwidth survey course.osm --tee white\n"
        "Leaves with 1 when a hole cannot be planned.");
}

int SurveyCommand::run(std::ostream& out, std::ostream& /*err*/) {
    output_.check();
    Assumptions assumptions = default_assumptions();
    for (const std::string& text : assumed_)
        override_assumption(assumptions, text);
    const Course course = course_.read(assumptions.map);
    std::vector<HoleSurvey> surveys;
    for (const Hole& hole : course.holes)
        surveys.push_back(survey_hole(hole));
    output_.write(output_.format() == "json" ? survey_json(course, surveys)
                                             : survey_text(course, surveys, output_.units()),
                  out);
    const bool broken = std::ranges::any_of(
        course.findings, [](const Finding& finding) { return finding.severity == Severity::error; });
    return broken ? 1 : 0;
}

}  // namespace landwidth
