#include "planner/commands/profile_check.hpp"

#include <fmt/format.h>

#include <ostream>
#include <utility>

#include "golfer-profiles/evidence/edited_clubs.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/reports/profile_text.hpp"

namespace landwidth {

void ProfileCheckCommand::setup(CLI::App& app) {
    app.add_option("PROFILE", file_, "the profile file")->required();
    app.footer(
        "Example: landwidth profile check me.json\n"
        "Leaves with 1 when the file is not a valid profile, with 2 when it cannot be read.");
}

int ProfileCheckCommand::run(std::ostream& out, std::ostream& err) {
    ProfileCheck check = check_profile(file_);
    if (check.golfer)
        for (std::string& sentence : edited_clubs(*check.golfer, default_assumptions().engine.prior))
            check.warnings.push_back(std::move(sentence));
    out << check_text(check, file_);
    if (check.golfer) return 0;
    const std::size_t more = check.errors.size() - 1;
    err << fmt::format("landwidth: {}: {}{}\n", file_, check.errors.front(),
                       more == 0 ? "" : fmt::format(" ({} more)", more));
    return 1;
}

}  // namespace landwidth
