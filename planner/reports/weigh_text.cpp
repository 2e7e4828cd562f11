#include <fmt/format.h>

#include "planner/reports/closing_text.hpp"
#include "planner/reports/day_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/weigh_reports.hpp"
#include "planner/reports/weigh_setting_words.hpp"
#include "planner/reports/weigh_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {

namespace {

constexpr auto left = TextTable::Align::left;
constexpr auto right = TextTable::Align::right;
// Where the landing width and the trouble of straight holes stand in the table of holes: behind the length.
constexpr std::ptrdiff_t straight_columns = 3;

std::string title(const WeighView& view) {
    std::string words = "What changes to the bag are worth";
    if (!view.golfer.name.empty()) words += fmt::format(" to {}", name_text(view.golfer.name));
    const std::optional<std::string> straight = straight_title(view);
    if (straight) words += ": " + *straight;
    for (std::size_t i = 0; !straight && i < view.courses.size(); ++i) {
        const Course& course = view.courses[i];
        words += (i == 0 ? ": " : ", ") + name_text(course.name.empty() ? course.source : course.name);
    }
    const Weighing& weighing = view.weighing;
    const std::string day = day_words(weighing.conditions, weighing.has_heights, view.units);
    std::string text = wrapped(words) + (day.empty() ? "" : wrapped(capitalised(day) + "."));
    if (straight) text += wrapped(straight_words(view));
    return text;
}

// A label that would be cut short in the table, on several lines.
std::vector<std::string> label_lines(std::string_view label) {
    constexpr std::size_t room = 30, most_lines = 3;
    std::vector<std::string> lines;
    const std::string text = wrapped(label, "", room);
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = text.find('\n', at);
        lines.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    if (lines.size() <= most_lines) return lines;
    lines.resize(most_lines);
    lines.back() = shortened(lines.back() + " ...", room);
    return lines;
}

std::string side_by_side(const WeighView& view) {
    TextTable table({{"change", left, true},
                     {"strokes", right},
                     {"saves", right},
                     {"90 % between", right},
                     {"helps", right},
                     {"new club on", right},
                     {"so it", left}});
    table.add_row({"the bag of today", fmt::format("{:.2f}", view.weighing.strokes), "", "", "", "", ""});
    const auto add_row = [&](std::string_view label, std::vector<std::string> figures) {
        const std::vector<std::string> lines = label_lines(label);
        figures.insert(figures.begin(), lines.front());
        table.add_row(std::move(figures));
        for (std::size_t i = 1; i < lines.size(); ++i)
            table.add_row({"  " + lines[i], "", "", "", "", "", ""});
    };
    std::string from;
    for (const WeighedChange& change : view.weighing.changes) {
        if (has_baseline(change) && baseline_label(view, change) != from) {
            from = baseline_label(view, change);
            add_row(from, {fmt::format("{:.2f}", change.baseline_strokes), "", "", "", "", ""});
        }
        const int holes = holes_with_new_club(change);
        add_row(change.change.label,
                {fmt::format("{:.2f}", change.strokes), gain_text(change.gain),
                 fmt::format("{} and {}", gain_text(change.low), gain_text(change.high)), helps_text(change),
                 holes == 1 ? "1 hole" : fmt::format("{} holes", holes), standing_words(change)});
    }
    return table.text();
}

std::string holes_of(const WeighView& view, const WeighedChange& change) {
    const bool several = view.courses.size() > 1;
    std::vector<TextTable::Column> columns{{"hole", left, true},
                                           {"par", right},
                                           {std::string(display_unit(view.units)), right},
                                           {before_word(change), left, true},
                                           {"then", left, true},
                                           {"saves", right},
                                           {"sure", right},
                                           {"what the tee shots find", left, true}};
    if (several) columns.insert(columns.begin(), {"course", left, true});
    const std::optional<StraightHoles>& straight = view.weighing.straight;
    if (straight) {
        columns.insert(columns.begin() + straight_columns, {"trouble", left});
        columns.insert(columns.begin() + straight_columns, {"width", right});
    }
    TextTable table(columns);
    bool any = false;
    for (std::size_t c = 0; c < view.courses.size(); ++c)
        for (std::size_t h = 0; h < view.courses[c].holes.size(); ++h) {
            const Hole& hole = view.courses[c].holes[h];
            const HoleGain& gain = change.courses[c].holes[h];
            if (!shows(gain)) continue;
            any = true;
            std::vector<std::string> row{hole.ref,
                                         std::to_string(hole.par),
                                         length_number(hole.line.length(), view.units),
                                         view.golfer.clubs.at(gain.before.club).name,
                                         view.golfer.clubs.at(gain.after.club).name,
                                         gain_text(gain.gain),
                                         gain.chance ? share_text(*gain.chance) : "-",
                                         short_why_words(gain, view.units)};
            if (several) row.insert(row.begin(), std::to_string(c + 1));
            if (straight) {
                row.insert(row.begin() + straight_columns, trouble_words(straight->holes.at(h).trouble));
                row.insert(row.begin() + straight_columns,
                           length_number(straight->holes[h].width_m, view.units));
            }
            table.add_row(row);
        }
    return any ? table.text(report_width, 2) : "  No hole is played otherwise.\n";
}

std::string one_change(const WeighView& view, const WeighedChange& change) {
    std::string text = "\n" + wrapped(capitalised(change.change.label));
    for (const std::string& words : supposed_words(view, change))
        text += wrapped(words, "  ");
    if (const std::string from = baseline_words(view, change); !from.empty()) text += wrapped(from, "  ");
    text += wrapped(sureness_words(change), "  ");
    if (const std::string bare = without_shots_words(view, change); !bare.empty())
        text += wrapped(bare, "  ");
    if (const std::string home = left_at_home_words(view, change); !home.empty()) text += wrapped(home, "  ");
    text += holes_of(view, change);
    return text + wrapped(next_step_words(view, change), "  ");
}

std::string closing(const WeighView& view) {
    std::string text =
        bulleted("Warnings", view.weighing.warnings) +
        bulleted("Keep in mind",
                 standing_cautions(setting_words(view.weighing.conditions, view.weighing.has_heights))) +
        "\n";
    if (!view.weighing.straight)
        for (const Course& course : view.courses)
            text += map_line(course);
    return text;
}

}  // namespace

std::string weigh_text(const WeighView& view) {
    std::string text = title(view) + "\n" + side_by_side(view) + "\n";
    text += wrapped(fmt::format(
        "Strokes: expected for {}. Saves: strokes saved, + is better. Helps: in how much of what the "
        "recorded shots leave possible. Sure: the same for one hole.",
        round_words(view)));
    for (const std::string& words : two_way_words(view))
        text += wrapped(words);
    for (const WeighedChange& change : view.weighing.changes)
        text += one_change(view, change);
    return text + closing(view);
}

}  // namespace landwidth
