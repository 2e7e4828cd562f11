#include "planner/commands/profile_new.hpp"

#include <fmt/format.h>

#include <ostream>

#include "geometry/error.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile_file.hpp"
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
    app.add_option("--units", drive_units_, "of --drive: yards or metres")
        ->type_name("UNIT")
        ->check(CLI::IsMember({"yards", "metres"}).description(""))
        ->capture_default_str();
    output_.setup_file(app);
    app.footer(preset_list() +
               "\nExample: landwidth profile new --handicap 14 --drive 225 -o me.json"
               "\nExample: landwidth profile new --preset scratch-woman -o scratch-woman.json");
}

Golfer ProfileNewCommand::golfer() const {
    if (!preset_.empty()) return preset_golfer(preset_, {.name = golfer_.name(), .hand = golfer_.hand()});
    if (!golfer_.has_handicap())
        throw UsageError(
            "say --handicap INDEX (and --drive LENGTH), or --preset NAME; "
            "landwidth profile new --help lists the presets");
    GolferRequest request = golfer_.request("typical golfer");
    const DisplayUnits units = drive_units_ == "metres" ? DisplayUnits::metres : DisplayUnits::yards;
    if (drive_) request.drive_total_yd = to_yards(metres_of_display(*drive_, units));
    return typical_golfer(request);
}

int ProfileNewCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    const Golfer made = golfer();
    output_.write(profile_text(made), out);
    if (output_.to_file())
        err << fmt::format("wrote {}: {} clubs; typical numbers, not measured ones\n",
                           output_.file().string(), made.clubs.size());
    return 0;
}

}  // namespace landwidth
