#include "planner/commands/profile_command.hpp"

#include "planner/commands/profile_check.hpp"
#include "planner/commands/profile_gaps.hpp"
#include "planner/commands/profile_learn.hpp"
#include "planner/commands/profile_new.hpp"
#include "planner/commands/profile_show.hpp"

namespace landwidth {

void ProfileCommand::setup(CLI::App& app) {
    app.require_subcommand(1);
    subcommands_.add<ProfileNewCommand>(app, "new", "make a profile with typical numbers, to start from");
    subcommands_.add<ProfileLearnCommand>(app, "learn", "make a profile from recorded shots");
    subcommands_.add<ProfileCheckCommand>(app, "check",
                                          "tell everything that is wrong or doubtful in a profile");
    subcommands_.add<ProfileShowCommand>(app, "show", "show the bag of a profile as a table");
    subcommands_.add<ProfileGapsCommand>(
        app, "gaps", "how far apart the clubs carry, and the slot a second tee club would fill");
    app.footer("Example: landwidth profile new --handicap 14 --drive 225 -o me.json");
}

int ProfileCommand::run(std::ostream& out, std::ostream& err) {
    return subcommands_.chosen()->run(out, err);
}

}  // namespace landwidth
