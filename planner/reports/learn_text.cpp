#include "planner/reports/learn_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

#include "golfer-profiles/evidence/mishit_chance.hpp"
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

// "231 to 244", "6L to 3R".
std::string length_range(double low_m, double high_m, DisplayUnits units) {
    return fmt::format("{} to {}", length_number(low_m, units), length_number(high_m, units));
}
std::string side_range(double low_m, double high_m, DisplayUnits units) {
    return fmt::format("{} to {}", side_number(low_m, units), side_number(high_m, units));
}
std::string spread_range(const OpenFigure& figure, DisplayUnits units) {
    return fmt::format("{} to {}", one_decimal(figure.low, units), one_decimal(figure.high, units));
}

// The recorded numbers themselves.
TextTable raw_table(const LearnView& view) {
    using enum TextTable::Align;
    TextTable table({{"club", left, true},
                     {"n"},
                     {"carry mean"},
                     {"sd"},
                     {"median"},
                     {"90 % between"},
                     {"side mean"},
                     {"sd"},
                     {"median"},
                     {"90 % between"}});
    for (const LearntClub& club : view.learnt.clubs) {
        if (club.raw.shots == 0) continue;
        const std::size_t shots = club.raw.shots;
        const RawFigures& carry = club.raw.carry;
        const RawFigures& side = club.raw.side;
        const auto sd = [&](const RawFigures& figures) {
            return shots > 1 ? one_decimal(figures.sd, view.units) : std::string("-");
        };
        table.add_row({club.club.name, fmt::format("{}", shots), length_number(carry.mean, view.units),
                       sd(carry), length_number(carry.median, view.units),
                       length_range(carry.low, carry.high, view.units), side_number(side.mean, view.units),
                       sd(side), side_number(side.median, view.units),
                       side_range(side.low, side.high, view.units)});
    }
    return table;
}

// How far the evidence leaves the model's numbers open.
TextTable open_table(const LearnView& view) {
    using enum TextTable::Align;
    TextTable table({{"club", left, true}, {"carry"}, {"side"}, {"carry sd"}, {"side sd"}, {"mishit share"}});
    for (const LearntClub& club : view.learnt.clubs) {
        const OpenPattern& open = club.open;
        table.add_row(
            {club.club.name, length_range(open.carry.low, open.carry.high, view.units),
             side_range(open.side.low, open.side.high, view.units), spread_range(open.carry_sd, view.units),
             spread_range(open.side_sd, view.units),
             fmt::format("{} to {}", share_text(open.mishit_share.low), share_text(open.mishit_share.high))});
    }
    return table;
}

std::string prior_words(const LearnView& view) {
    std::string lines;
    for (const LearntClub& club : view.learnt.clubs) {
        const ShotPattern& prior = club.prior;
        const std::string figures =
            fmt::format("{} of carry, side sd {}", length_text(prior.usual.centre.carry_m, view.units),
                        one_decimal(prior.usual.side_sd_m, view.units));
        const std::string before =
            club.source == PriorSource::typical ? fmt::format("typical of the level, {}", figures)
            : club.earlier_shots > 0
                ? fmt::format("{} earlier shots, and before them {}", club.earlier_shots, figures)
                : fmt::format("the pattern the profile states, {}", figures);
        lines += wrapped(before, fmt::format("  {}: ", name_text(club.club.name)));
    }
    return lines;
}

// Clubs whose shots go two ways, by what that means on the ground.
std::string shape_words(const LearnView& view) {
    std::string lines;
    for (const ShapeFound& shape : view.learnt.shapes) {
        const auto club = std::ranges::find_if(view.learnt.clubs, [&](const LearntClub& learnt) {
            return same_name(family_of(learnt.club), shape.club);
        });
        if (club == view.learnt.clubs.end()) continue;
        const Spread& usual = club->club.pattern->usual;
        const auto way = [&](const Way& one) {
            const double side = spread_of(usual, one).centre.side_m;
            return fmt::format("{} about {} {}", share_text(one.share),
                               length_text(std::abs(side), view.units), side < 0 ? "left" : "right");
        };
        lines += wrapped(
            fmt::format("{}, {}; of {} sets drawn from one usual shot, {} look as odd as the {} "
                        "recorded",
                        way(shape.ways[0]), way(shape.ways[1]), shape.drawn, shape.as_odd, shape.shots),
            fmt::format("  {}: ", name_text(shape.club)));
    }
    return lines;
}

// What a place on the face did.
std::string strike_words(const LearnView& view) {
    std::string lines;
    const auto slope = [](const StrikeSlope& found, double unit, std::string_view what) {
        return fmt::format("; {:+.1f} {} a cm (standard error {:.1f}, {} shots)", found.per_cm / unit, what,
                           found.standard_error / unit, found.shots);
    };
    for (const StrikeEffect& effect : view.learnt.strikes) {
        std::string words = fmt::format(
            "{:.0f} mm from the centre of the face as a rule (root mean square), {:.0f} mm "
            "towards the {} on average",
            1000.0 * effect.off_centre_m, 1000.0 * std::abs(effect.mean_toe_m),
            effect.mean_toe_m < 0 ? "heel" : "toe");
        if (effect.ball_speed_share)
            words += slope(*effect.ball_speed_share, 0.01, "% of ball speed off the centre");
        if (effect.side_m)
            words += slope(*effect.side_m, in_display_units(1.0, view.units) > 1.0 ? metres_per_yard : 1.0,
                           view.units == DisplayUnits::yards ? "yd to the right towards the toe"
                                                             : "m to the right towards the toe");
        lines += wrapped(words, fmt::format("  {}: ", name_text(effect.club)));
    }
    return lines;
}

}  // namespace

std::string learn_text(const LearnView& view) {
    const bool yards = view.units == DisplayUnits::yards;
    std::string text = club_table(view).text() + "\n";
    text += wrapped(fmt::format(
        "Lengths in {}, of the usual shot; R and L are right and left of the aim line. Mishits: recorded "
        "shots taken for one. From shots: how much of the spread comes from the club's own recorded shots; "
        "the "
        "rest comes from the golfer's other clubs and from the level.",
        yards ? "yards" : "metres"));
    text += "\nThe recorded shots by themselves, mishits among them\n" + raw_table(view).text();
    text += "\nWhat is made of them: 90 % of what the shots of all clubs leave possible lies between\n" +
            open_table(view).text();
    text += wrapped(
        "The two differ because a golfer is one person: few shots of a club lean on the golfer's other clubs "
        "and, where those are few too, on the level; and because mishits stand apart from the usual shot.");
    text += "\nKnown before any shot\n" + prior_words(view);
    const std::string shapes = shape_words(view);
    if (!shapes.empty())
        text +=
            "\nShots that go two ways: one usual shot does not describe them, and plans take them as two\n" +
            shapes;
    const std::string strikes = strike_words(view);
    if (!strikes.empty()) text += "\nWhere on the face\n" + strikes;
    const std::string mishits = mishit_list(view);
    text += mishits.empty() ? "\nNo shot was taken for a mishit.\n" : "\nTaken for a mishit\n" + mishits;
    return text;
}

}  // namespace landwidth
