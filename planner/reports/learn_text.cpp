#include "planner/reports/learn_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

#include "golfer-profiles/pattern_learning.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// Of one club, in the list.
constexpr std::size_t most_told = 25;

std::string one_decimal(double metres, DisplayUnits units) {
    return fmt::format("{:.1f}", in_display_units(metres, units));
}

// "3R", "2L", "0".
std::string side_number(double side_m, DisplayUnits units) {
    const std::string number = length_number(std::abs(side_m), units);
    return number == "0" ? number : number + (side_m > 0 ? "R" : "L");
}

std::size_t mishits_of(const LearntClub& club) {
    return static_cast<std::size_t>(std::count_if(club.mishit_chance.begin(), club.mishit_chance.end(),
                                                  [](double chance) { return chance > taken_for_mishit; }));
}

TextTable club_table(const LearnView& view) {
    using enum TextTable::Align;
    TextTable table({{"club", left, true},
                     {"shots"},
                     {"mishits"},
                     {"carry"},
                     {"run"},
                     {"side"},
                     {"carry sd"},
                     {"side sd"},
                     {"mishit share"},
                     {"from shots"}});
    for (const LearntClub& club : view.learnt.clubs) {
        const ShotPattern& pattern = *club.club.pattern;
        const Spread& usual = pattern.usual;
        table.add_row({club.club.name, fmt::format("{}", pattern.shots), fmt::format("{}", mishits_of(club)),
                       length_number(usual.centre.carry_m, view.units),
                       length_number(pattern.run_m, view.units), side_number(usual.centre.side_m, view.units),
                       one_decimal(usual.carry_sd_m, view.units), one_decimal(usual.side_sd_m, view.units),
                       share_text(pattern.mishit ? pattern.mishit->share : 0.0),
                       share_text(club.recorded_share)});
    }
    return table;
}

std::string row_words(const LearnView& view, const LandedShot& shot) {
    if (view.logs.size() == 1) return fmt::format("row {}", shot.row);
    const std::string file = std::filesystem::path(view.logs[shot.log].file).filename().string();
    return fmt::format("{} row {}", name_text(file), shot.row);
}

// How a shot differs from the club's usual one: "165 yd, 46 yd short of the usual, 20 yd right".
std::string difference_words(const LearntClub& club, const ShotOffset& landing, DisplayUnits units) {
    const Spread& usual = club.club.pattern->usual;
    const double longer = landing.carry_m - usual.centre.carry_m;
    const double aside = landing.side_m - usual.centre.side_m;
    std::string words = length_text(landing.carry_m, units);
    if (std::abs(longer) > usual.carry_sd_m) {
        words += fmt::format(", {} {} the usual", length_text(std::abs(longer), units),
                             longer < 0 ? "short of" : "past");
    }
    if (std::abs(aside) > usual.side_sd_m) {
        words +=
            fmt::format(", {} {} of it", length_text(std::abs(aside), units), aside < 0 ? "left" : "right");
    }
    return words;
}

std::string mishit_list(const LearnView& view) {
    std::string lines;
    for (const LearntClub& club : view.learnt.clubs) {
        std::size_t told = 0;
        for (std::size_t i = 0; i < club.mishit_chance.size(); ++i) {
            const double chance = club.mishit_chance[i];
            if (chance <= taken_for_mishit || ++told > most_told) continue;
            const LandedShot& shot = club.logged.shots[i];
            lines +=
                wrapped(fmt::format("{}: {} ({} sure)", row_words(view, shot),
                                    difference_words(club, shot.landing, view.units), share_text(chance)),
                        fmt::format("  {}, ", name_text(club.club.name)));
        }
    }
    return lines;
}

std::string prior_words(const LearnView& view) {
    std::string lines;
    for (const LearntClub& club : view.learnt.clubs) {
        const std::string carry = length_text(club.prior.usual.centre.carry_m, view.units);
        const std::string before =
            club.source == PriorSource::typical
                ? fmt::format("a typical one of the level, scaled by {:.2f} to {} of carry", club.prior_scale,
                              carry)
            : club.earlier_shots > 0
                ? fmt::format("the profile's own, {} shots behind it", club.earlier_shots)
                : fmt::format("the profile's own, {} of carry", carry);
        lines += wrapped(before, fmt::format("  {}: ", name_text(club.club.name)));
    }
    return lines;
}

}  // namespace

std::string learn_text(const LearnView& view) {
    const bool yards = view.units == DisplayUnits::yards;
    std::string text = club_table(view).text() + "\n";
    text += wrapped(fmt::format(
        "Lengths in {}, of the usual shot; R and L are right and left of the aim line. Mishits: recorded "
        "shots taken for one. From shots: how much of spread and mishits is recorded, the rest is known "
        "beforehand, where a typical pattern counts as {:g} shots.",
        yards ? "yards" : "metres", view.weight.worth_shots));
    text += "\nKnown beforehand\n" + prior_words(view);
    const std::string mishits = mishit_list(view);
    text += mishits.empty() ? "\nNo shot was taken for a mishit.\n" : "\nTaken for a mishit\n" + mishits;
    return text;
}

}  // namespace landwidth
