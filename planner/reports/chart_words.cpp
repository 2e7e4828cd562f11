#include "planner/reports/chart_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "planner/reports/display_length.hpp"
#include "planner/reports/score_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

const ChartClub& better_of(const ChartCell& cell) {
    return cell.driver_saves >= 0.0 ? cell.driver : cell.control;
}

std::string club_name(const ChartView& view, const ChartClub& club) {
    return name_text(view.golfer.clubs.at(club.club).name);
}

std::string place_words(const ChartView& view, std::size_t cell) {
    const DriverChart& chart = view.chart;
    return fmt::format("a landing of {} on a hole of {}",
                       length_text(chart.widths_m[cell / chart.lengths_m.size()], view.units),
                       length_text(chart.lengths_m[cell % chart.lengths_m.size()], view.units));
}

// "mini-driver on 60, driving iron on 36", the commonest first.
std::string control_tally(const ChartView& view) {
    std::map<std::size_t, std::size_t> cells_of_club;
    for (const ChartCell& cell : view.chart.cells)
        if (side_of(cell) == ChartSide::control) ++cells_of_club[cell.control.club];
    std::vector<std::pair<std::size_t, std::size_t>> order(cells_of_club.begin(), cells_of_club.end());
    std::ranges::stable_sort(order, std::greater{}, [](const auto& entry) { return entry.second; });
    std::string words;
    for (const auto& [club, cells] : order)
        words += fmt::format("{}{} on {}", words.empty() ? "" : ", ",
                             name_text(view.golfer.clubs.at(club).name), cells);
    return words;
}

std::string counts_sentence(const ChartView& view) {
    const std::vector<ChartCell>& cells = view.chart.cells;
    const auto count = [&](ChartSide side) {
        const auto found = std::ranges::count(cells, side, side_of);
        return found == 0 ? std::string("none") : fmt::format("{}", found);
    };
    const std::string clubs = control_tally(view);
    return fmt::format(
        "Of {} holes, each of one landing width and length, the driver pays on {}, a control club on {}{}; "
        "on {} either will do.",
        cells.size(), count(ChartSide::driver), count(ChartSide::control),
        clubs.empty() ? "" : fmt::format(" ({})", clubs), count(ChartSide::either));
}

// Between which widths, over all lengths, the verdict turns to the driver (or from it) as landings widen.
struct TurnRange {
    std::size_t least, most;  // lengths
};
std::optional<TurnRange> turn_range(const DriverChart& chart, bool to_driver) {
    std::optional<TurnRange> range;
    const auto width = [&](std::size_t length) { return chart.break_evens[length]->width_m; };
    for (std::size_t i = 0; i < chart.lengths_m.size(); ++i) {
        const std::optional<EvenWidth>& turn = chart.break_evens[i];
        if (!turn || turn->driver_pays_beyond != to_driver) continue;
        if (!range) range = TurnRange{i, i};
        if (width(i) < width(range->least)) range->least = i;
        if (width(i) > width(range->most)) range->most = i;
    }
    return range;
}

std::string range_words(const ChartView& view, const TurnRange& range) {
    const auto place = [&](std::size_t i) {
        return fmt::format("{} (on a hole of {})",
                           length_text(view.chart.break_evens[i]->width_m, view.units),
                           length_text(view.chart.lengths_m[i], view.units));
    };
    return range.least == range.most ? place(range.least)
                                     : fmt::format("{} to {}", place(range.least), place(range.most));
}

std::vector<std::string> turn_sentences(const ChartView& view) {
    std::vector<std::string> sentences;
    if (const auto range = turn_range(view.chart, true))
        sentences.push_back(fmt::format("Going wider, the verdict turns to the driver at a landing of {}.",
                                        range_words(view, *range)));
    if (const auto range = turn_range(view.chart, false))
        sentences.push_back(fmt::format(
            "Going wider, the verdict turns from the driver to the control club at a landing of {}{}.",
            range_words(view, *range),
            view.chart.trouble == ChartTrouble::rough
                ? ": narrower fairways are mostly missed with either, and the longer miss costs less"
                : ""));
    if (sentences.empty())
        sentences.push_back(fmt::format("At no length does the verdict turn between landings of {} and {}.",
                                        length_text(view.chart.widths_m.front(), view.units),
                                        length_text(view.chart.widths_m.back(), view.units)));
    return sentences;
}

std::string most_sentence(const ChartView& view) {
    const std::vector<ChartCell>& cells = view.chart.cells;
    const auto index = [&](auto found) { return static_cast<std::size_t>(found - cells.begin()); };
    const std::size_t best = index(std::ranges::max_element(cells, {}, &ChartCell::driver_saves));
    const std::size_t worst = index(std::ranges::min_element(cells, {}, &ChartCell::driver_saves));
    std::string words;
    if (side_of(cells[best]) == ChartSide::driver)
        words = fmt::format("The driver saves at most {:.2f} strokes ({}).", cells[best].driver_saves,
                            place_words(view, best));
    if (side_of(cells[worst]) == ChartSide::control)
        words += fmt::format("{}The control club saves at most {:.2f} ({}, the {}).",
                             words.empty() ? "" : " ", -cells[worst].driver_saves, place_words(view, worst),
                             club_name(view, cells[worst].control));
    return words;
}

}  // namespace

ChartSide side_of(const ChartCell& cell) {
    if (cell.toss_up || std::round(100.0 * cell.driver_saves) == 0.0) return ChartSide::either;
    return cell.driver_saves > 0.0 ? ChartSide::driver : ChartSide::control;
}

std::string_view trouble_words(ChartTrouble trouble) {
    switch (trouble) {
        case ChartTrouble::rough:
            break;
        case ChartTrouble::trees:
            return "trees on both sides";
        case ChartTrouble::water_left:
            return "a red penalty area on the left";
        case ChartTrouble::water_right:
            return "a red penalty area on the right";
        case ChartTrouble::out_left:
            return "out of bounds on the left";
        case ChartTrouble::out_right:
            return "out of bounds on the right";
    }
    return "rough only";
}

std::string chart_club_text(const ChartView& view, const ChartCell& cell) {
    return side_of(cell) == ChartSide::either ? "either" : club_name(view, better_of(cell));
}

std::string chart_saving_text(const ChartCell& cell) {
    return side_of(cell) == ChartSide::either ? std::string()
                                              : fmt::format("{:.2f}", std::abs(cell.driver_saves));
}

namespace {

std::string pays_words(const ChartView& view, std::size_t length) {
    const DriverChart& chart = view.chart;
    std::size_t either = 0;
    for (std::size_t width = 0; width < chart.widths_m.size(); ++width)
        either += side_of(chart.cell(width, length)) == ChartSide::either ? 1 : 0;
    if (either == chart.widths_m.size()) return "either club will do";
    const std::optional<EvenWidth>& turn = chart.break_evens.at(length);
    if (turn)
        return fmt::format("{} {}", turn->driver_pays_beyond ? "from" : "up to",
                           length_text(turn->width_m, view.units));
    return fmt::format("at {} width{}", chart.cell(0, length).driver_saves >= 0.0 ? "every" : "no",
                       either > 0 ? ", or either will do" : "");
}

}  // namespace

std::vector<TurnWords> turn_words(const ChartView& view) {
    const DriverChart& chart = view.chart;
    std::vector<TurnWords> rows;
    for (std::size_t first = 0, last = 0; first < chart.lengths_m.size(); first = last) {
        const std::string pays = pays_words(view, first);
        for (last = first + 1; last < chart.lengths_m.size() && pays_words(view, last) == pays;)
            ++last;
        const std::string end = length_text(chart.lengths_m[last - 1], view.units);
        const int least_par = chart.pars[first];
        const int most_par = chart.pars[last - 1];
        rows.push_back({last - first == 1
                            ? end
                            : fmt::format("{} to {}", length_number(chart.lengths_m[first], view.units), end),
                        least_par == most_par ? fmt::format("{}", least_par)
                                              : fmt::format("{} or {}", least_par, most_par),
                        pays});
    }
    return rows;
}

std::vector<std::string> chart_summary(const ChartView& view) {
    std::vector<std::string> sentences = turn_sentences(view);
    sentences.insert(sentences.begin(), counts_sentence(view));
    if (std::string most = most_sentence(view); !most.empty()) sentences.push_back(std::move(most));
    return sentences;
}

std::vector<std::string> chart_grounds(const ChartView& view) {
    const ChartHole& hole = view.chart.assumptions.engine.chart_hole;
    const auto length = [&](double metres) { return length_text(metres, view.units); };
    std::string beside = "rough";
    if (view.chart.trouble != ChartTrouble::rough)
        beside = fmt::format("rough for {} and then {}", length(hole.trouble_from_edge_m),
                             trouble_words(view.chart.trouble));
    return {
        fmt::format("Every hole is straight: a fairway as wide as the landing, from near the tee to a round "
                    "green of {} radius, beside it {}. No bunkers, level ground, still air.",
                    length(hole.green_radius_m), beside),
        fmt::format("Every club is aimed where it costs least. Strokes are {}.",
                    field_words(FieldKind::personal)),
        "The control club is the best tee club that is no driver. Pays: in strokes to hole out, over the "
        "best club of the other side.",
        "Either: the difference is within the noise, or it does not hold in enough of the plausible "
        "patterns, given how few shots stand behind them.",
    };
}

std::vector<std::string> chart_cautions() {
    std::vector<std::string> all = cautions_of_any_shot();
    all.insert(all.begin(),
               "A hole of your course is no hole of this chart: its bends, bunkers, slopes and water weigh "
               "too (landwidth plan looks at them). Local rules and the committee decide.");
    return all;
}

}  // namespace landwidth
