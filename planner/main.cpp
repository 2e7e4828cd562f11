// The program: finds the command, runs it, turns each kind of failure into one plain line.

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <exception>
#include <iostream>
#include <new>
#include <string>

#include "geometry/error.hpp"
#include "planner/commands/build_command.hpp"
#include "planner/commands/chart_command.hpp"
#include "planner/commands/command_set.hpp"
#include "planner/commands/plan_command.hpp"
#include "planner/commands/profile_command.hpp"
#include "planner/commands/survey_command.hpp"
#include "planner/commands/weigh_command.hpp"

namespace landwidth {

namespace {

constexpr int exit_bad = 2;

int fail(const std::string& message) {
    std::cerr << "landwidth: " << message << '\n';
    return exit_bad;
}

int run_chosen(const CommandSet& commands) {
    Command* chosen = commands.chosen();
    if (chosen == nullptr) throw UsageError("no command given; landwidth --help lists them");
    const int code = chosen->run(std::cout, std::cerr);
    std::cout.flush();
    if (!std::cout)
        throw OutputError("standard output", "the result could not be written; is the disk full?");
    return code;
}

int run_program(int argc, const char* const* argv) {
    CLI::App program(
        "Which club off this tee, aimed where, and what it pays: plans a round of golf from a course map and "
        "a golfer's own "
        "shot patterns.",
        "landwidth");
    program.set_version_flag("--version", "landwidth " LANDWIDTH_VERSION);
    program.require_subcommand(0, 1);
    program.footer("landwidth COMMAND --help shows a command's options and an example.");
    CommandSet commands;
    commands.add<SurveyCommand>(
        program, "survey", "what is on a map: holes, lengths, landing widths, trouble, and what is missing");
    commands.add<ProfileCommand>(program, "profile",
                                 "make, learn, check or show a golfer's profile and its gaps");
    commands.add<PlanCommand>(program, "plan", "the round plan: club, aim and cost for every tee");
    commands.add<WeighCommand>(program, "weigh",
                               "what changes to the bag are worth: another club, another build");
    commands.add<BuildCommand>(
        program, "build", "what a change of length, head, shaft or grip does to a club, and what it may do");
    commands.add<ChartCommand>(
        program, "chart", "the driver chart: where the driver pays, by landing width and length of the hole");
    try {
        program.parse(argc, argv);
    } catch (const CLI::CallForHelp&) {
        // The help of the innermost command named.
        return program.exit(CLI::CallForHelp());
    } catch (const CLI::Success& wanted) {
        return program.exit(wanted);
    } catch (const CLI::ParseError& error) {
        return fail(std::string(error.what()) +
                    "; landwidth --help and landwidth COMMAND --help show what goes");
    }
    return run_chosen(commands);
}

}  // namespace

}  // namespace landwidth

int main(int argc, char** argv) {
    try {
        return landwidth::run_program(argc, argv);
    } catch (const landwidth::Error& error) {
        return landwidth::fail(error.what());
    } catch (const std::bad_alloc&) {
        return landwidth::fail("out of memory");
    } catch (const std::exception& error) {
        return landwidth::fail(std::string("this is a defect of the program, please report it: ") +
                               error.what());
    }
}
