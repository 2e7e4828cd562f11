#include "planner/reports/profile_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "planner/reports/display_length.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

std::string counted(std::size_t count, std::string_view what) {
    return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

// Golfers write a handicap better than scratch with a plus.
std::string index_text(double handicap_index) {
    return handicap_index < 0.0 ? fmt::format("+{}", -handicap_index) : fmt::format("{}", handicap_index);
}

std::string golfer_text(const Golfer& golfer) {
    return fmt::format("{}, handicap index {}, {}-handed", name_text(golfer.name),
                       index_text(golfer.handicap_index), golfer.hand == Hand::right ? "right" : "left");
}

std::string clubs_without_pattern(const Golfer& golfer) {
    std::string names;
    for (const Club& club : golfer.clubs) {
        if (!club.pattern && club.in_bag) names += (names.empty() ? "" : ", ") + name_text(club.name);
    }
    return names.empty() ? names : fmt::format("In the bag without a pattern: {}.", names);
}

TextTable bag_table(const BagView& bag, const std::string& within) {
    using enum TextTable::Align;
    TextTable table({{"club", left, true},
                     {"kind", left},
                     {"carry"},
                     {"run"},
                     {"total"},
                     {"side sd"},
                     {"within " + within},
                     {"mishits"},
                     {"shots"}});
    for (const ClubSummary& club : bag.clubs) {
        table.add_row({club.name + (club.in_bag ? "" : " *"), std::string(club_kind_name(club.kind)),
                       length_number(club.carry_m, bag.units), length_number(club.run_m, bag.units),
                       length_number(club.total_m, bag.units),
                       fmt::format("{:.1f}", in_display_units(club.side_sd_m, bag.units)),
                       share_text(club.share_within), share_text(club.mishit_share),
                       fmt::format("{}", club.shots)});
    }
    return table;
}

}  // namespace

std::string bag_text(const BagView& bag) {
    const std::string within = length_text(bag.half_width_m, bag.units);
    const bool has_presets =
        std::any_of(bag.clubs.begin(), bag.clubs.end(), [](const ClubSummary& c) { return c.shots == 0; });
    std::string text = wrapped(golfer_text(bag.golfer));
    if (!bag.golfer.note.empty()) text += wrapped(bag.golfer.note);
    text += "\n" + bag_table(bag, within).text() + "\n";
    text += wrapped(fmt::format(
        "Lengths in {}. Carry, run, total and side sd are of the usual shot; \"within {}\" is the share "
        "of all shots that land no farther left or right of the aim line than that.{}",
        bag.units == DisplayUnits::yards ? "yards" : "metres", within,
        has_presets ? " 0 shots: typical numbers, not measured ones." : ""));
    if (!std::ranges::all_of(bag.clubs, &ClubSummary::in_bag))
        text += wrapped("*: a club on trial, not in the bag; a plan leaves it out.");
    const std::string left_out = clubs_without_pattern(bag.golfer);
    return left_out.empty() ? text : text + wrapped(left_out);
}

std::string check_text(const ProfileCheck& check, const std::string& file_name) {
    std::string text;
    for (const std::string& error : check.errors)
        text += wrapped(error, "error    ");
    for (const std::string& warning : check.warnings)
        text += wrapped(warning, "warning  ");
    const std::string found = fmt::format("{}, {}", counted(check.errors.size(), "error"),
                                          counted(check.warnings.size(), "warning"));
    if (!check.golfer) return text + wrapped(fmt::format("{} is not a valid profile: {}.", file_name, found));
    return text +
           wrapped(fmt::format("{} is a valid profile: {}, {}; {}.", file_name, golfer_text(*check.golfer),
                               counted(check.golfer->clubs.size(), "club"), found));
}

}  // namespace landwidth
