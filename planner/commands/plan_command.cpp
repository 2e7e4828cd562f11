#include "planner/commands/plan_command.hpp"

#include <fmt/format.h>

#include <ostream>

#include "geometry/error.hpp"
#include "planner/commands/plannable_course.hpp"
#include "planner/engine/wind_card.hpp"
#include "planner/reports/output_file.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/wind_card_reports.hpp"

namespace landwidth {
namespace {

// Puts the warnings of profile and map before those of the work, and shows them all.
void tell_warnings(std::vector<std::string>& warnings, const ProfileReading& profile, const Course& course,
                   std::ostream& err) {
    const std::vector<std::string> of_map = map_warnings(course);
    warnings.insert(warnings.begin(), of_map.begin(), of_map.end());
    warnings.insert(warnings.begin(), profile.warnings.begin(), profile.warnings.end());
    for (const std::string& warning : warnings)
        err << "landwidth: warning: " << warning << '\n';
}

}  // namespace

void PlanCommand::setup(CLI::App& app) {
    course_.setup(app);
    app.add_option("PROFILE", profile_, "the golfer: a profile file (landwidth profile new makes one)")
        ->required();
    app.add_option(
           "--field", field_,
           "what a place on the hole is worth: personal (solved for the golfer's own clubs) or published "
           "(the tour table with a handicap adjustment)")
        ->type_name("FIELD")
        ->check(CLI::IsMember({"personal", "published"}).description(""))
        ->capture_default_str();
    app.add_option(
           "--aim-for", aim_for_,
           "what the golfer wants: strokes (the fewest), stableford (points), par-or-better (its chance)")
        ->type_name("AIM")
        ->check(CLI::IsMember({"strokes", "stableford", "par-or-better"}).description(""))
        ->capture_default_str();
    app.add_option("--local-rule", local_rule_,
                   "Model Local Rule in force: E-5 (out of bounds and lost balls)")
        ->type_name("RULE")
        ->check(CLI::IsMember({"E-5"}, CLI::ignore_case).description(""));
    day_.setup(app);
    day_.setup_wind_card(app);
    app.add_option("--assume", assumed_,
                   "override a modelling assumption, e.g. trees_lost_share=0.1; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
    output_.setup(app, {"text", "json", "html", "geojson", "gpkg"});
    app.footer("Example: landwidth plan course.osm me.json --format html -o plan.html");
}

int PlanCommand::run(std::ostream& out, std::ostream& err) {
    if (output_.format() == "gpkg" && !output_.to_file())
        throw UsageError("--format gpkg is a file: name it with -o FILE.gpkg");
    output_.check();
    PlanRequest request;
    for (const std::string& text : assumed_)
        override_assumption(request.assumptions, text);
    request.local_rule_e5 = !local_rule_.empty();
    request.conditions = day_.conditions();
    request.field = field_ == "published" ? FieldKind::published : FieldKind::personal;
    request.aim_for = aim_for_ == "stableford"      ? AimFor::stableford
                      : aim_for_ == "par-or-better" ? AimFor::par_or_better
                                                    : AimFor::strokes;
    if (request.field == FieldKind::published && request.aim_for != AimFor::strokes)
        throw UsageError(fmt::format(
            "--aim-for {}: the published table knows mean strokes alone; leave out --field published",
            aim_for_));
    request.cost_maps = output_.format() == "html";
    const std::optional<Wind> card_wind = day_.wind_card();
    if (card_wind) check_wind_card(request);

    const ProfileReading profile = read_profile(profile_);
    const Course course = course_.read(request.assumptions.map);
    refuse_unplannable(course);
    if (card_wind)
        write_wind_card(course, profile, request, *card_wind, out, err);
    else
        write_plan(course, profile, request, out, err);
    return 0;
}

void PlanCommand::check_wind_card(const PlanRequest& request) const {
    if (request.field == FieldKind::published)
        throw UsageError("--wind-card: the published table knows no wind; leave out --field published");
    if (request.aim_for != AimFor::strokes)
        throw UsageError(fmt::format("--wind-card goes by strokes: leave out --aim-for {}", aim_for_));
    if (output_.format() == "geojson" || output_.format() == "gpkg") {
        throw UsageError(fmt::format("--wind-card is no map: --format text, json or html in place of {}",
                                     output_.format()));
    }
}

void PlanCommand::write_wind_card(const Course& course, const ProfileReading& profile,
                                  const PlanRequest& request, const Wind& wind, std::ostream& out,
                                  std::ostream& err) const {
    WindCard card = wind_card(course, profile.golfer, request, wind);
    tell_warnings(card.warnings, profile, course, err);
    const WindCardView view{course, profile.golfer, card, output_.units()};
    if (output_.format() == "json") {
        output_.write(wind_card_json(view), out);
    } else if (output_.format() == "html") {
        output_.write(wind_card_html(view), out);
    } else {
        // On a terminal the warnings have just been shown.
        if (!output_.to_file()) card.warnings.clear();
        output_.write(wind_card_text(view), out);
    }
}

void PlanCommand::write_plan(const Course& course, const ProfileReading& profile, const PlanRequest& request,
                             std::ostream& out, std::ostream& err) const {
    RoundPlan plan = plan_round(course, profile.golfer, request);
    tell_warnings(plan.warnings, profile, course, err);

    const PlanView view{course, profile.golfer, plan, output_.units()};
    if (output_.format() == "json") {
        output_.write(plan_json(view), out);
    } else if (output_.format() == "html") {
        output_.write(plan_html(view), out);
    } else if (output_.format() == "geojson") {
        output_.write(plan_geojson(view), out);
    } else if (output_.format() == "gpkg") {
        write_file_with(output_.file(), output_.force(),
                        [&](const std::filesystem::path& path) { write_plan_geopackage(view, path); });
    } else {
        // On a terminal the warnings have just been shown.
        if (!output_.to_file()) plan.warnings.clear();
        output_.write(plan_text(view), out);
    }
}

}  // namespace landwidth
