#include "planner/commands/profile_show.hpp"

#include <fmt/format.h>

#include <ostream>

#include "golfer-profiles/bag_summary.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/profile_text.hpp"

namespace landwidth {

namespace {

constexpr double half_width_shown = 15;  // in the units shown: a fairway of ordinary width from its middle

}  // namespace

void ProfileShowCommand::setup(CLI::App& app) {
    app.add_option("PROFILE", file_, "the profile file")->required();
    output_.setup(app, {"text", "json"});
    app.footer("Example: landwidth profile show me.json --units metres");
}

int ProfileShowCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    const ProfileReading reading = read_profile(file_);
    for (const std::string& warning : reading.warnings)
        err << fmt::format("landwidth: warning: {}: {}\n", file_, warning);
    const double half_width_m = metres_of_display(half_width_shown, output_.units());
    const std::vector<ClubSummary> clubs = bag_summary(reading.golfer, half_width_m);
    const BagView bag{reading.golfer, clubs, half_width_m, output_.units()};
    output_.write(output_.format() == "json" ? bag_json(bag) : bag_text(bag), out);
    return 0;
}

}  // namespace landwidth
