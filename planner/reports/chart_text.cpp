#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "planner/reports/chart_reports.hpp"
#include "planner/reports/chart_words.hpp"
#include "planner/reports/closing_text.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr std::size_t most_lengths = 8;
constexpr std::size_t longest_name = 16;

// Every first, second or third length, so that no more than most_lengths are shown.
std::vector<std::size_t> lengths_shown(const DriverChart& chart) {
    const std::size_t count = chart.lengths_m.size();
    const std::size_t step = (count + most_lengths - 1) / most_lengths;
    std::vector<std::size_t> shown;
    for (std::size_t length = 0; length < count; length += step)
        shown.push_back(length);
    return shown;
}

std::string cell_text(const ChartView& view, const ChartCell& cell) {
    const std::string club = shortened(chart_club_text(view, cell), longest_name);
    const std::string saving = chart_saving_text(cell);
    return saving.empty() ? club : fmt::format("{} {}", club, saving);
}

// The columns [first, end) of what is shown.
std::string block(const ChartView& view, const std::vector<std::size_t>& shown, std::size_t first,
                  std::size_t end) {
    const DriverChart& chart = view.chart;
    std::vector<TextTable::Column> columns{{"landing"}};
    for (std::size_t i = first; i < end; ++i)
        columns.push_back({length_text(chart.lengths_m[shown[i]], view.units), TextTable::Align::left, true});
    TextTable table(std::move(columns));
    for (std::size_t width = 0; width < chart.widths_m.size(); ++width) {
        std::vector<std::string> row{length_text(chart.widths_m[width], view.units)};
        for (std::size_t i = first; i < end; ++i)
            row.push_back(cell_text(view, chart.cell(width, shown[i])));
        table.add_row(std::move(row));
    }
    return table.text();
}

// How many columns fit beside each other, the widest cell taken for all.
std::size_t columns_that_fit(const ChartView& view, const std::vector<std::size_t>& shown) {
    constexpr std::size_t for_widths = 9;
    std::size_t widest = 6;
    for (std::size_t width = 0; width < view.chart.widths_m.size(); ++width)
        for (const std::size_t length : shown)
            widest = std::max(widest, display_width(cell_text(view, view.chart.cell(width, length))));
    return std::max<std::size_t>(1, (report_width - for_widths) / (widest + 2));
}

// Blocks of about as many columns each.
std::string cells_table(const ChartView& view, const std::vector<std::size_t>& shown) {
    const std::size_t fit = columns_that_fit(view, shown);
    const std::size_t blocks = (shown.size() + fit - 1) / fit;
    const std::size_t each = (shown.size() + blocks - 1) / blocks;
    std::string text;
    for (std::size_t first = 0; first < shown.size(); first += each)
        text += block(view, shown, first, std::min(first + each, shown.size())) + "\n";
    return text;
}

std::string turns_table(const ChartView& view) {
    TextTable table({{"length"}, {"par"}, {"the driver pays", TextTable::Align::left}});
    for (const TurnWords& words : turn_words(view))
        table.add_row({words.lengths, words.pars, words.pays});
    return table.text();
}

std::string paragraph(const std::vector<std::string>& sentences) {
    return wrapped(fmt::format("{}", fmt::join(sentences, " ")));
}

}  // namespace

std::string chart_text(const ChartView& view) {
    const std::vector<std::size_t> shown = lengths_shown(view.chart);
    return wrapped(fmt::format("Driver chart of {}: {}", name_text(view.golfer.name),
                               trouble_words(view.chart.trouble))) +
           wrapped(
               "By landing width (down) and length of the hole (across): the club to hit and the strokes "
               "it saves.") +
           "\n" + cells_table(view, shown) + "Break-even landing widths\n" + turns_table(view) + "\n" +
           paragraph(chart_summary(view)) + bulleted("What it rests on", chart_grounds(view)) +
           bulleted("Warnings", view.chart.warnings) + bulleted("Keep in mind", chart_cautions());
}

}  // namespace landwidth
