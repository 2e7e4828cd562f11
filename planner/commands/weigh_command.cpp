#include "planner/commands/weigh_command.hpp"

#include <fmt/format.h>

#include <ostream>

#include "geometry/error.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/commands/asked_changes.hpp"
#include "planner/commands/plannable_course.hpp"
#include "planner/engine/bags/weighing.hpp"
#include "planner/reports/weigh_reports.hpp"

namespace landwidth {

void WeighCommand::setup(CLI::App& app) {
    app.add_option("FILES", files_, "maps of one or several courses, then the golfer's profile")
        ->required()
        ->expected(1, -1)
        ->type_name("COURSE... PROFILE");
    course_.setup_choice(app);
    app.add_option(
           "--add", added_,
           "a club to carry besides: one on trial in the profile, or a kind such as \"driving iron\"; again "
           "for "
           "others, each weighed on its own. With 14 clubs in the bag the one missed least stays at home")
        ->type_name("CLUB")
        ->allow_extra_args(false);
    app.add_option("--drop", dropped_, "a club to leave at home")->type_name("CLUB")->allow_extra_args(false);
    app.add_option("--replace", replaced_,
                   "a club for another, e.g. \"driver=driver, 44.5 in\"; again for others")
        ->type_name("OLD=NEW")
        ->allow_extra_args(false);
    app.add_option("--local-rule", local_rule_,
                   "Model Local Rule in force: E-5 (out of bounds and lost balls)")
        ->type_name("RULE")
        ->check(CLI::IsMember({"E-5"}, CLI::ignore_case).description(""));
    day_.setup(app);
    app.add_option("--assume", assumed_, "override a modelling assumption, e.g. weigh_draws=400; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
    output_.setup(app, {"text", "json", "html"});
    app.footer(
        "Example: landwidth weigh course.osm me.json --replace \"driver=driver, 44.5 in\" --add \"driving "
        "iron\"");
}

std::vector<Course> WeighCommand::read_courses(const Assumptions& assumptions) const {
    std::vector<Course> courses;
    for (std::size_t i = 0; i + 1 < files_.size(); ++i) {
        courses.push_back(course_.read(files_[i], assumptions.map));
        refuse_unplannable(courses.back());
    }
    return courses;
}

int WeighCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    WeighRequest request;
    for (const std::string& text : assumed_)
        override_assumption(request.assumptions, text);
    request.local_rule_e5 = !local_rule_.empty();
    request.conditions = day_.conditions();
    if (files_.size() < 2) throw UsageError("weigh needs the map of a COURSE and a PROFILE");
    const ProfileReading profile = read_profile(files_.back());
    ChangesToWeigh asked = changes_to_weigh(profile.golfer, {added_, dropped_, replaced_});
    request.changes = asked.changes;
    const std::vector<Course> courses = read_courses(request.assumptions);

    Weighing weighing = weigh_bags(courses, asked.golfer, request);
    std::vector<std::string> warnings = profile.warnings;
    for (const Course& course : courses) {
        const std::vector<std::string> of_map = map_warnings(course);
        warnings.insert(warnings.end(), of_map.begin(), of_map.end());
    }
    warnings.insert(warnings.end(), asked.warnings.begin(), asked.warnings.end());
    weighing.warnings.insert(weighing.warnings.begin(), warnings.begin(), warnings.end());
    for (const std::string& warning : weighing.warnings)
        err << "landwidth: warning: " << warning << '\n';

    const WeighView view{courses, asked.golfer, weighing, output_.units()};
    if (output_.format() == "json") {
        output_.write(weigh_json(view), out);
    } else if (output_.format() == "html") {
        output_.write(weigh_html(view), out);
    } else {
        // On a terminal the warnings have just been shown.
        if (!output_.to_file()) weighing.warnings.clear();
        output_.write(weigh_text(view), out);
    }
    return 0;
}

}  // namespace landwidth
