#include "planner/commands/profile_new.hpp"

#include <fmt/format.h>

#include <ostream>

#include "geometry/error.hpp"
#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/level_guess.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/commands/typed_text.hpp"
#include "planner/reports/display_length.hpp"

namespace landwidth {

namespace {

std::string preset_list() {
    std::string list = "Presets:\n";
    for (const Preset& preset : presets())
        list += fmt::format("  {:<14} {}\n", preset.name, preset.summary);
    return list;
}

}  // namespace

void ProfileNewCommand::setup(CLI::App& app) {
    auto* preset = app.add_option("--preset", preset_, "a ready golfer of the list below")->type_name("NAME");
    golfer_.setup(app);
    auto* drive = app.add_option("--drive", drive_,
                                 "mean length of a drive, run included (default: the published mean for the "
                                 "handicap)");
    drive->type_name("LENGTH")->needs(golfer_.handicap_option());
    preset->excludes(golfer_.handicap_option())->excludes(drive)->excludes(golfer_.women_option());
    auto* carry = app.add_option(
        "--carry", carry_, "without a handicap: one known carry, e.g. \"7-iron=150yd\" or \"driver=200m\"");
    carry->type_name("CLUB=LENGTH")->excludes(golfer_.handicap_option())->excludes(preset);
    app.add_option("--club-speed", club_speed_,
                   "without a handicap: how fast the head of the driver moves, e.g. 95mph or 42m/s")
        ->type_name("SPEED")
        ->excludes(golfer_.handicap_option())
        ->excludes(preset)
        ->excludes(carry);
    app.add_option("--units", drive_units_, "of --drive: yards or metres")
        ->type_name("UNIT")
        ->check(CLI::IsMember({"yards", "metres"}).description(""))
        ->capture_default_str();
    output_.setup_file(app);
    app.footer(preset_list() +
               "\nExample: landwidth profile new --handicap 14 --drive 225 -o me.json"
               "\nExample: landwidth profile new --carry \"7-iron=150yd\" -o me.json"
               "\nExample: landwidth profile new --preset scratch-woman -o scratch-woman.json");
}

Golfer ProfileNewCommand::golfer() const {
    if (!preset_.empty()) return preset_golfer(preset_, {.name = golfer_.name(), .hand = golfer_.hand()});
    if (!carry_.empty() || !club_speed_.empty()) return golfer_by_length();
    if (!golfer_.has_handicap())
        throw UsageError(
            "say --handicap INDEX (and --drive LENGTH), --preset NAME, or one length: --carry "
            "\"7-iron=150yd\" or "
            "--club-speed 95mph; landwidth profile new --help lists the presets");
    GolferRequest request = golfer_.request("typical golfer");
    const DisplayUnits units = drive_units_ == "metres" ? DisplayUnits::metres : DisplayUnits::yards;
    if (drive_) request.drive_total_yd = to_yards(metres_of_display(*drive_, units));
    return typical_golfer(request);
}

// The level is a guess by the length, and the patterns are known for less.
Golfer ProfileNewCommand::golfer_by_length() const {
    const GolferRequest like = golfer_.request("typical golfer");
    double drive_yd = 0.0;
    if (carry_.empty()) {
        const Typed typed{"--club-speed", club_speed_};
        constexpr std::string_view example = "95mph";
        drive_yd = drive_by_club_speed(
            like, si_of(typed, quantity_of(typed, club_speed_, example), Measure::speed, example));
    } else {
        const Typed typed{"--carry", carry_};
        constexpr std::string_view example = "7-iron=150yd";
        const std::size_t equals = carry_.find('=');
        if (equals == std::string::npos) typed.refuse("CLUB=LENGTH is expected: write 7-iron=150yd");
        const std::string club(trimmed(std::string_view(carry_).substr(0, equals)));
        const auto kind = kind_by_name(club);
        if (!kind || *kind == ClubKind::putter) typed.refuse("the name does not tell which club it is");
        const std::string_view length = std::string_view(carry_).substr(equals + 1);
        const double carry_m = si_of(typed, quantity_of(typed, length, example), Measure::length, example);
        drive_yd = drive_by_carry(like, *kind, club, to_yards(carry_m));
    }
    Golfer golfer = typical_golfer(guessed_level(like, drive_yd));
    golfer.handicap_known = false;
    golfer.note = fmt::format(
        "No handicap is known: index {:g} is a guess by the length, for short game and putting; patterns are "
        "known for "
        "less.",
        golfer.handicap_index);
    return golfer;
}

int ProfileNewCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    const Golfer made = golfer();
    output_.write(profile_text(made), out);
    if (!made.handicap_known)
        err << fmt::format(
            "landwidth: warning: no handicap is known: short game and putting are taken for those of golfers "
            "who hit "
            "the ball as far (handicap index {:g}, a guess)\n",
            made.handicap_index);
    if (output_.to_file())
        err << fmt::format("wrote {}: {} clubs; typical numbers, not measured ones\n",
                           output_.file().string(), made.clubs.size());
    return 0;
}

}  // namespace landwidth
