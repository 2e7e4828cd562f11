#include <fmt/format.h>

#include <cmath>

#include "geometry/units.hpp"
#include "planner/reports/build_reports.hpp"
#include "planner/reports/build_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr auto left = TextTable::Align::left;
constexpr auto right = TextTable::Align::right;

// Two states that differ by less look the same in the table.
constexpr double shown_kg = 0.05 * kilograms_per_gram;

std::string grams(double kg) {
    return fmt::format("{:.1f}", rounded(kg / kilograms_per_gram, 1));
}

std::string inches(double m) {
    return fmt::format("{:.2f}", rounded(m / metres_per_inch, 2));
}

std::string title(const BuildView& view) {
    std::string words = fmt::format("Build of a club: {}", name_text(view.club));
    if (view.length_m) words += fmt::format(", {}", inches_text(*view.length_m));
    if (view.wishes.length_m) words += fmt::format(" to {}", inches_text(*view.wishes.length_m));
    return wrapped(words);
}

std::string weighed_table(const ClubWeights& weights) {
    TextTable table({{"", left}, {"as weighed", right}});
    table.add_row({"total, g", grams(weights.total_kg)});
    table.add_row({"balance point from the butt, in", inches(weights.balance_m)});
    table.add_row({"swing weight", swing_weight_words(weights.swing_weight)});
    return table.text();
}

// One column a state of the club.
class PartsTable {
  public:
    void add(std::string heading, const ClubParts& parts) {
        columns_.push_back({std::move(heading), right});
        const ClubWeights weights = weights_of(parts);
        const std::vector<std::string> cells{inches(parts.length_m),
                                             grams(parts.head_kg),
                                             grams(parts.shaft_kg),
                                             grams(parts.grip_kg),
                                             grams(weights.total_kg),
                                             inches(weights.balance_m),
                                             swing_weight_words(weights.swing_weight)};
        for (std::size_t i = 0; i < rows_.size(); ++i)
            rows_[i].push_back(cells.at(i));
    }
    std::string text() const {
        TextTable table(columns_);
        for (const auto& row : rows_)
            table.add_row(row);
        return table.text();
    }

  private:
    std::vector<TextTable::Column> columns_{{"", left}};
    std::vector<std::vector<std::string>> rows_{{"length, in"},  {"head, g"},
                                                {"shaft, g"},    {"grip, g"},
                                                {"total, g"},    {"balance point from the butt, in"},
                                                {"swing weight"}};
};

std::string parts_table(const BuildView& view) {
    PartsTable table;
    table.add("as it is", view.parts->before);
    if (view.wishes.changes_parts()) table.add("changed", view.parts->after);
    if (view.parts->restored) {
        table.add(fmt::format("head for {}", swing_weight_words(view.parts->target)), *view.parts->restored);
    }
    return table.text();
}

std::string points_words(const BuildChange& change) {
    const double points =
        weights_of(change.after).swing_weight.points() - weights_of(change.before).swing_weight.points();
    const double shown = rounded(points, 1);
    std::string words = shown == 0.0 ? "Swing weight stays as it is"
                                     : fmt::format("Swing weight {} by {:.1f} points",
                                                   shown < 0.0 ? "falls" : "rises", std::abs(shown));
    if (change.thumb_points) {
        words +=
            fmt::format("; the trade's rule of thumb makes it {:+.1f}", rounded(*change.thumb_points, 1));
    }
    return words + ".";
}

std::string head_words(const BuildView& view) {
    const BuildChange& change = *view.parts;
    const std::string target = swing_weight_words(change.target);
    if (!change.restored)
        return fmt::format("No head of a weight that is built gives {} with these parts.", target);
    const double more_kg = change.restored->head_kg - change.after.head_kg;
    if (std::abs(more_kg) < shown_kg) return fmt::format("The head as it is makes {}.", target);
    const char* how = more_kg > 0.0 ? "more: a heavier weight where the head has one, or weight added"
                                    : "less: a lighter weight where the head has one, or another head";
    return fmt::format("For {} the head must weigh {} g, {} g {}.", target, grams(change.restored->head_kg),
                       grams(std::abs(more_kg)), how);
}

std::string head_place(double from_end_m) {
    const double shown = rounded(from_end_m / metres_per_inch, 2);
    if (shown == 0.0) return "at the club's end";
    return fmt::format("{:.2f} in {} the club's end", std::abs(shown), shown > 0.0 ? "short of" : "beyond");
}

std::string parts_notes(const BuildView& view) {
    std::string text;
    if (view.wishes.changes_parts()) text += wrapped(points_words(*view.parts));
    if (view.wishes.any() && !view.wishes.head_kg) text += wrapped(head_words(view));
    if (view.wishes.length_m && view.wishes.cut_end == CutEnd::tip) {
        text += wrapped("Cut at the tip: the shaft plays stiffer, which no figure here shows.");
    }
    const ClubParts& before = view.parts->before;
    text += wrapped(fmt::format(
        "By moments: the head balances {} ({}), the shaft at {:.0f} % of its length from the butt, the grip "
        "{:.1f} in from the butt.",
        head_place(before.head_centre_from_end_m),
        view.head_centre_measured ? "from the club's own balance" : "assumed",
        100.0 * before.shaft_balance_share, before.grip_balance_m / metres_per_inch));
    return text;
}

// Rounded outward: a range that is shown holds the one that is meant.
Range outward(Range range, int decimals) {
    constexpr double noise = 1e-6;
    const double step = std::pow(10.0, -decimals);
    return {std::floor(range.low / step + noise) * step, std::ceil(range.high / step - noise) * step};
}

std::string change_range(Range change, int decimals) {
    const Range shown = outward(change, decimals);
    const auto end = [&](double value) {
        return value == 0.0 ? std::string("0") : fmt::format("{:+.{}f}", value, decimals);
    };
    return fmt::format("{} to {}", end(shown.low), end(shown.high));
}

std::string value_range(Range range, int decimals) {
    const Range shown = outward(range, decimals);
    return fmt::format("{:.{}f} to {:.{}f}", shown.low, decimals, shown.high, decimals);
}

void add_flight_row(TextTable& table, const std::string& what, double unit, int decimals, Range change,
                    const std::optional<double>& now, const std::optional<Range>& then) {
    table.add_row({what, change_range({change.low / unit, change.high / unit}, decimals),
                   now ? fmt::format("{:.{}f}", *now / unit, decimals) : "-",
                   then ? value_range({then->low / unit, then->high / unit}, decimals) : "-"});
}

std::string flight_table(const BuildView& view) {
    const LengthChange& flight = *view.flight;
    const double change_m = flight.to_m - flight.from_m;
    TextTable table(
        {{fmt::format("{} {}", inches_text(std::abs(change_m)), change_m < 0.0 ? "less" : "more"), left},
         {"may change by", right},
         {"as it is", right},
         {"then", right}});
    const double mph = metres_per_second_per_mph;
    add_flight_row(table, "club speed, mph", mph, 1, flight.club_speed_mps, view.known.club_speed_mps,
                   flight.club_speed_after_mps);
    add_flight_row(table, "ball speed, mph", mph, 1, flight.ball_speed_mps, view.known.ball_speed_mps,
                   flight.ball_speed_after_mps);
    add_flight_row(table, fmt::format("carry, {}", display_unit(view.units)),
                   metres_of_display(1.0, view.units), 0, flight.carry_m, view.known.carry_m,
                   flight.carry_after_m);
    return table.text();
}

std::string flight_notes(const BuildView& view) {
    const LengthChange& flight = *view.flight;
    const std::string smash =
        flight.own_smash ? fmt::format("{:.2f} (the golfer's own)", flight.smash.high)
                         : fmt::format("{:.2f} to {:.2f} (assumed)", flight.smash.low, flight.smash.high);
    std::string words = fmt::format("Ball speed over club speed: {}. ", smash);
    words += flight.to_m > flight.from_m
                 ? "No gain at all, or a loss, is possible: a longer club finds the middle of the face less "
                   "often."
                 : "No loss at all, or a gain, is possible: a shorter club finds the middle of the face more "
                   "often.";
    for (const std::string& sentence : trial_words())
        words += " " + sentence;
    if (!view.parts)
        words += " What becomes of the swing weight can be told when the weights of the parts are known.";
    return wrapped(words);
}

std::string length_notes(const BuildView& view) {
    std::string text;
    for (const LengthVerdict verdict : view.verdicts)
        text += wrapped(
            length_verdict_words(verdict, view.wishes.length_m.value_or(view.length_m.value_or(0.0))));
    return text + wrapped(length_rules_words());
}

}  // namespace

std::string build_text(const BuildView& view) {
    std::string text = title(view) + "\n";
    if (view.weighed) text += weighed_table(*view.weighed) + "\n";
    if (view.parts) text += parts_table(view) + "\n" + parts_notes(view) + "\n";
    if (view.flight) text += flight_table(view) + "\n" + flight_notes(view) + "\n";
    if (view.length_m) text += length_notes(view) + "\n";
    for (const std::string& caution : build_cautions())
        text += wrapped(caution, "! ");
    return text;
}

}  // namespace landwidth
