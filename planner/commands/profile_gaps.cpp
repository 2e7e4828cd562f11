#include "planner/commands/profile_gaps.hpp"

#include <fmt/format.h>

#include <ostream>

#include "golfer-profiles/profile_file.hpp"
#include "planner/engine/bags/bag_gaps.hpp"
#include "planner/reports/gaps_reports.hpp"

namespace landwidth {

void ProfileGapsCommand::setup(CLI::App& app) {
    app.add_option("PROFILE", file_, "the profile file")->required();
    app.add_option("--assume", assumed_, "override a modelling assumption, e.g. gap_wide=15; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
    output_.setup(app, {"text", "json", "html"});
    app.footer("Example: landwidth profile gaps me.json --format html -o gaps.html");
}

int ProfileGapsCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    Assumptions assumptions = default_assumptions();
    for (const std::string& text : assumed_)
        override_assumption(assumptions, text);
    const ProfileReading reading = read_profile(file_);
    for (const std::string& warning : reading.warnings)
        err << fmt::format("landwidth: warning: {}: {}\n", file_, warning);
    const BagGaps gaps = bag_gaps(reading.golfer, assumptions);
    const GapsView view{reading.golfer, gaps, output_.units()};
    output_.write(output_.format() == "json"   ? gaps_json(view)
                  : output_.format() == "html" ? gaps_html(view)
                                               : gaps_text(view),
                  out);
    return 0;
}

}  // namespace landwidth
