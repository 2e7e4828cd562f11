#include "planner/commands/weigh_command.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ostream>

#include "geometry/error.hpp"
#include "planner/commands/plannable_course.hpp"
#include "planner/reports/weigh_setting_words.hpp"

namespace landwidth {

void WeighCommand::setup(CLI::App& app) {
    app.add_option("FILES", files_,
                   "maps of one or several courses, then the golfer's profile; with the profile alone the "
                   "changes are weighed on straight holes")
        ->required()
        ->expected(1, -1)
        ->type_name("[COURSE...] PROFILE");
    course_.setup_choice(app);
    app.add_option(
           "--add", added_,
           "a club to carry besides: one on trial in the profile, or a kind such as \"driving iron\"; again "
           "for "
           "others, each weighed on its own. With 14 clubs in the bag the one missed least stays at home")
        ->type_name("CLUB")
        ->allow_extra_args(false);
    app.add_option("--drop", dropped_, "a club to leave at home")->type_name("CLUB")->allow_extra_args(false);
    app.add_option(
           "--replace", replaced_,
           "a club for another, e.g. \"driver=driver, 44.5 in\"; again for others. An OLD that is not "
           "in the bag has the place of the club it is a build of: \"driver, 45.5 in=driver, 44 in\" "
           "weighs two builds against each other")
        ->type_name("OLD=NEW")
        ->allow_extra_args(false);
    app.add_option("--suppose", supposed_,
                   "a club as it might become, e.g. \"driver, 44 in: spread -10 %, ball speed +3 mph\"; also "
                   "carry spread, side spread, carry, side, mishits. Weighed in place of the club itself, or "
                   "as --add and --replace name it: \"driver, 44 in (supposed)\"")
        ->type_name("CLUB: CHANGE")
        ->allow_extra_args(false);
    app.add_flag("--together", together_, "all of these changes as one, instead of each on its own");
    const std::vector<std::string> troubles = chart_trouble_names();
    app.add_option("--trouble", trouble_,
                   fmt::format("without a course: what lies beyond the rough of every straight hole: {} "
                               "(default: a mix of all)",
                               fmt::join(troubles, ", ")))
        ->type_name("TROUBLE")
        ->check(CLI::IsMember(troubles).description(""));
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

WeighCommand::Ground WeighCommand::ground(const WeighRequest& request) const {
    if (files_.size() < 2) return straight_ground(request);
    if (!trouble_.empty())
        throw UsageError("--trouble is of the straight holes of a comparison without a course: leave it out");
    Ground ground;
    for (std::size_t i = 0; i + 1 < files_.size(); ++i) {
        const Course& course = ground.courses.emplace_back(course_.read(files_[i], request.assumptions.map));
        refuse_unplannable(course);
        const std::vector<std::string> warnings = map_warnings(course);
        ground.warnings.insert(ground.warnings.end(), warnings.begin(), warnings.end());
    }
    return ground;
}

WeighCommand::Ground WeighCommand::straight_ground(const WeighRequest& request) const {
    if (const std::string_view option = course_.given(); !option.empty())
        throw UsageError(fmt::format("{} goes with a course: name its map before the profile", option));
    if (request.conditions.wind)
        throw UsageError(
            "--wind goes with a course: straight holes point nowhere; name a map before the profile");
    std::optional<ChartTrouble> trouble;
    if (!trouble_.empty()) trouble = chart_trouble_named(trouble_);
    const StraightHoles straight = straight_holes(request.assumptions.engine.straight_holes, trouble);
    return {{straight_course(straight, request.assumptions)}, straight, {}};
}

ProfileReading WeighCommand::profile() const {
    try {
        return read_profile(files_.back());
    } catch (const InputError& error) {
        if (files_.size() > 1) throw;
        throw UsageError(
            fmt::format("{}; one file alone is the golfer's profile: name it behind a map", error.what()));
    }
}

int WeighCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    WeighRequest request;
    for (const std::string& text : assumed_)
        override_assumption(request.assumptions, text);
    request.local_rule_e5 = !local_rule_.empty();
    request.conditions = day_.conditions();
    const ProfileReading profile = this->profile();
    ChangesToWeigh asked =
        changes_to_weigh(profile.golfer, {added_, dropped_, replaced_, supposed_, together_});
    request.changes = asked.changes;
    request.supposed = asked.supposed;
    const Ground ground = this->ground(request);

    Weighing weighing = weigh_bags(ground.courses, asked.golfer, request);
    weighing.straight = ground.straight;
    std::vector<std::string> warnings = profile.warnings;
    warnings.insert(warnings.end(), ground.warnings.begin(), ground.warnings.end());
    warnings.insert(warnings.end(), asked.warnings.begin(), asked.warnings.end());
    weighing.warnings.insert(weighing.warnings.begin(), warnings.begin(), warnings.end());
    const WeighView view{ground.courses, asked.golfer, weighing, output_.units()};
    for (const std::string& warning : baseline_warnings(view))
        weighing.warnings.push_back(warning);
    for (const std::string& warning : weighing.warnings)
        err << "landwidth: warning: " << warning << '\n';
    write(view, weighing, out);
    return 0;
}

// `view` is of `weighing`.
void WeighCommand::write(const WeighView& view, Weighing& weighing, std::ostream& out) const {
    if (output_.format() == "json") {
        output_.write(weigh_json(view), out);
    } else if (output_.format() == "html") {
        output_.write(weigh_html(view), out);
    } else {
        // On a terminal the warnings have just been shown.
        if (!output_.to_file()) weighing.warnings.clear();
        output_.write(weigh_text(view), out);
    }
}

}  // namespace landwidth
