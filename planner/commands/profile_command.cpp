#include "planner/commands/profile_command.hpp"

#include <fmt/format.h>

#include <charconv>
#include <ostream>

#include "geometry/error.hpp"
#include "golfer-profiles/bag_summary.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/profile_text.hpp"

namespace landwidth {

namespace {

constexpr double half_width_shown = 15;  // in the units shown: a fairway of ordinary width from its middle

// "14", "-2.3", and as golfers write it, "+2.3" for better than scratch.
double handicap_of_text(const std::string& typed) {
    const bool plus = typed.starts_with('+');
    const char* first = typed.data() + (plus ? 1 : 0);
    const char* end = typed.data() + typed.size();
    double value = 0.0;
    const auto [stopped, error] = std::from_chars(first, end, value);
    if (error != std::errc() || stopped != end || (plus && value < 0.0)) {
        throw UsageError(
            fmt::format("--handicap {}: a number is expected; a plus handicap is written +2.3", typed));
    }
    return plus ? -value : value;
}

std::string preset_list() {
    std::string list = "Presets:\n";
    for (const Preset& preset : presets())
        list += fmt::format("  {:<14} {}\n", preset.name, preset.summary);
    return list;
}

}  // namespace

void ProfileCommand::setup(CLI::App& app) {
    app.require_subcommand(1);
    setup_new(*app.add_subcommand("new", "make a profile with typical numbers, to start from"));
    setup_check(*app.add_subcommand("check", "tell everything that is wrong or doubtful in a profile"));
    setup_show(*app.add_subcommand("show", "show the bag of a profile as a table"));
    app.footer("Example: landwidth profile new --handicap 14 --drive 225 -o me.json");
}

void ProfileCommand::setup_new(CLI::App& app) {
    new_ = &app;
    auto* preset = app.add_option("--preset", preset_, "a ready golfer of the list below")->type_name("NAME");
    auto* handicap =
        app.add_option("--handicap", handicap_, "handicap index, 14.2; better than scratch as +2.3")
            ->type_name("INDEX");
    auto* drive = app.add_option("--drive", drive_,
                                 "mean length of a drive, run included (default: the published mean for the "
                                 "handicap)");
    drive->type_name("LENGTH")->needs(handicap);
    auto* women = app.add_flag("--women", women_, "go by the women's published numbers, not the men's");
    preset->excludes(handicap)->excludes(drive)->excludes(women);
    app.add_option("--units", drive_units_, "of --drive: yards or metres")
        ->type_name("UNIT")
        ->check(CLI::IsMember({"yards", "metres"}).description(""))
        ->capture_default_str();
    app.add_flag("--left-handed", left_handed_, "mirror the shot patterns");
    app.add_option("--name", name_, "the golfer's name")->type_name("TEXT");
    new_output_.setup_file(app);
    app.footer(preset_list() +
               "\nExample: landwidth profile new --handicap 14 --drive 225 -o me.json"
               "\nExample: landwidth profile new --preset scratch-woman -o scratch-woman.json");
}

void ProfileCommand::setup_check(CLI::App& app) {
    check_ = &app;
    app.add_option("PROFILE", file_, "the profile file")->required();
    app.footer(
        "Example: landwidth profile check me.json\n"
        "Leaves with 1 when the file is not a valid profile, with 2 when it cannot be read.");
}

void ProfileCommand::setup_show(CLI::App& app) {
    app.add_option("PROFILE", file_, "the profile file")->required();
    show_output_.setup(app, {"text", "json"});
    app.footer("Example: landwidth profile show me.json --units metres");
}

int ProfileCommand::run(std::ostream& out, std::ostream& err) {
    if (new_->parsed()) return run_new(out, err);
    if (check_->parsed()) return run_check(out, err);
    return run_show(out, err);
}

Golfer ProfileCommand::new_golfer() const {
    const Hand hand = left_handed_ ? Hand::left : Hand::right;
    if (!preset_.empty()) return preset_golfer(preset_, {.name = name_, .hand = hand});
    if (handicap_.empty())
        throw UsageError(
            "say --handicap INDEX (and --drive LENGTH), or --preset NAME; "
            "landwidth profile new --help lists the presets");
    const DisplayUnits units = drive_units_ == "metres" ? DisplayUnits::metres : DisplayUnits::yards;
    std::optional<double> drive_yd;
    if (drive_) drive_yd = to_yards(metres_of_display(*drive_, units));
    return typical_golfer({.name = name_.empty() ? "typical golfer" : name_,
                           .handicap_index = handicap_of_text(handicap_),
                           .drive_total_yd = drive_yd,
                           .reference = women_ ? Reference::women : Reference::men,
                           .hand = hand});
}

int ProfileCommand::run_new(std::ostream& out, std::ostream& err) const {
    new_output_.check();
    const Golfer golfer = new_golfer();
    new_output_.write(profile_text(golfer), out);
    if (new_output_.to_file())
        err << fmt::format("wrote {}: {} clubs; typical numbers, not measured ones\n",
                           new_output_.file().string(), golfer.clubs.size());
    return 0;
}

int ProfileCommand::run_check(std::ostream& out, std::ostream& err) const {
    const ProfileCheck check = check_profile(file_);
    out << check_text(check, file_);
    if (check.golfer) return 0;
    const std::size_t more = check.errors.size() - 1;
    err << fmt::format("landwidth: {}: {}{}\n", file_, check.errors.front(),
                       more == 0 ? "" : fmt::format(" ({} more)", more));
    return 1;
}

int ProfileCommand::run_show(std::ostream& out, std::ostream& err) const {
    show_output_.check();
    const ProfileReading reading = read_profile(file_);
    for (const std::string& warning : reading.warnings)
        err << fmt::format("landwidth: warning: {}: {}\n", file_, warning);
    const double half_width_m = metres_of_display(half_width_shown, show_output_.units());
    const std::vector<ClubSummary> clubs = bag_summary(reading.golfer, half_width_m);
    const BagView bag{reading.golfer, clubs, half_width_m, show_output_.units()};
    show_output_.write(show_output_.format() == "json" ? bag_json(bag) : bag_text(bag), out);
    return 0;
}

}  // namespace landwidth
