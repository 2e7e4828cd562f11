#include "planner/reports/chart_picture.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "planner/reports/chart_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/svg_writing.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// Pixels of the picture at its natural size.
constexpr double picture_width = 960.0;
constexpr double left_margin = 58.0, right_margin = 10.0, top_margin = 40.0, bottom_margin = 46.0;
constexpr double cell_height = 33.0;
constexpr double pixels_per_letter = 4.6;  // of a club's name

constexpr std::string_view defs = R"svg(<defs>
<pattern id="chart-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
<rect width="7" height="7" fill="#e4ecf6"/><path d="M0 0V7" stroke="#5f7fa8" stroke-width="1.5"/></pattern>
</defs>
<style>
.chart-picture text { font: 10.5px system-ui, sans-serif; fill: #14180f; font-variant-numeric: tabular-nums; }
.chart-picture .chart-value { font-weight: 650; stroke: #fff; stroke-width: 3px; stroke-linejoin: round;
  paint-order: stroke; }
.chart-picture .chart-name { font-size: 8.6px; stroke: #fff; stroke-width: 3px; stroke-linejoin: round;
  paint-order: stroke; }
.chart-picture .chart-none { font-size: 9px; fill: #55594f; stroke: #fff; stroke-width: 3px; paint-order: stroke; }
.chart-picture .chart-title { font-weight: 650; font-size: 11.5px; }
.chart-picture .m { text-anchor: middle; }
.chart-picture .e { text-anchor: end; }
.chart-driver { fill: #f6cf8f; stroke: #fff; stroke-width: 1; }
.chart-control { fill: url(#chart-hatch); stroke: #fff; stroke-width: 1; }
.chart-either { fill: #fff; stroke: #c9cbbf; stroke-width: .6; }
.chart-turn { fill: none; stroke: #000; stroke-width: 3; stroke-linejoin: round; stroke-linecap: round; }
.chart-turn-case { fill: none; stroke: #fff; stroke-width: 6.5; stroke-linejoin: round; stroke-linecap: round; }
.chart-frame { fill: none; stroke: #1c211b; stroke-width: 1; }
</style>
)svg";

std::string_view fill_class(ChartSide side) {
    switch (side) {
        case ChartSide::driver:
            return "chart-driver";
        case ChartSide::control:
            return "chart-control";
        case ChartSide::either:
            break;
    }
    return "chart-either";
}

std::string rect(std::string_view css_class, double x, double y, double width, double height) {
    return fmt::format("<rect class=\"{}\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>\n", css_class,
                       px(x), px(y), px(width), px(height));
}

std::string label(std::string_view css_class, double x, double y, Anchor anchor, std::string_view text) {
    return text_element(css_class, {{x, y}, anchor}, text);
}

// Columns are lengths, rows landing widths, the widest on top.
class Layout {
  public:
    explicit Layout(const DriverChart& chart)
        : chart_(chart),
          cell_width_((picture_width - left_margin - right_margin) / static_cast<double>(columns())) {}

    std::size_t columns() const { return chart_.lengths_m.size(); }
    std::size_t rows() const { return chart_.widths_m.size(); }
    double cell_width() const { return cell_width_; }
    double height() const { return bottom() + bottom_margin; }
    double bottom() const { return top_margin + cell_height * static_cast<double>(rows()); }
    double left_of(std::size_t column) const {
        return left_margin + cell_width_ * static_cast<double>(column);
    }
    double middle_of(std::size_t column) const { return left_of(column) + 0.5 * cell_width_; }
    double middle_of_row(double row) const { return bottom() - cell_height * (row + 0.5); }
    // The height of a landing width between those of the rows.
    double height_of(double width_m) const {
        const auto wider = std::ranges::lower_bound(chart_.widths_m, width_m);
        const auto row = static_cast<double>(wider - chart_.widths_m.begin());
        if (wider == chart_.widths_m.begin() || wider == chart_.widths_m.end()) return middle_of_row(row);
        return middle_of_row(row - (*wider - width_m) / (*wider - *(wider - 1)));
    }

  private:
    const DriverChart& chart_;
    double cell_width_;
};

std::string cell_ground(const ChartCell& cell, const Layout& layout, std::size_t width, std::size_t length) {
    return rect(fill_class(side_of(cell)), layout.left_of(length),
                layout.middle_of_row(static_cast<double>(width)) - 0.5 * cell_height, layout.cell_width(),
                cell_height);
}

std::string cell_labels(const ChartView& view, const Layout& layout, std::size_t width, std::size_t length) {
    const ChartCell& cell = view.chart.cell(width, length);
    const double middle = layout.middle_of(length);
    const double centre = layout.middle_of_row(static_cast<double>(width));
    if (side_of(cell) == ChartSide::either)
        return label("chart-none", middle, centre, Anchor::middle, "either");
    const auto letters = static_cast<std::size_t>(std::max(3.0, layout.cell_width() / pixels_per_letter));
    return label("chart-name", middle, centre - 7.0, Anchor::middle,
                 shortened(chart_club_text(view, cell), letters)) +
           label("chart-value", middle, centre + 6.5, Anchor::middle, chart_saving_text(cell));
}

// Unbroken over neighbouring lengths whose verdicts turn the same way.
std::string turn_lines(const DriverChart& chart, const Layout& layout) {
    std::string casings, lines;
    std::vector<Point> line;
    const auto finish = [&] {
        if (line.size() == 1) {  // a dash where no neighbour turns
            const Point alone = line.front();
            const double reach = 0.35 * layout.cell_width();
            line = {{alone.x - reach, alone.y}, {alone.x + reach, alone.y}};
        }
        if (!line.empty()) {
            casings += path_element("chart-turn-case", path_data(line, false));
            lines += path_element("chart-turn", path_data(line, false));
        }
        line.clear();
    };
    for (std::size_t i = 0; i < chart.lengths_m.size(); ++i) {
        const std::optional<EvenWidth>& turn = chart.break_evens[i];
        const bool goes_on = i > 0 && turn && chart.break_evens[i - 1] &&
                             turn->driver_pays_beyond == chart.break_evens[i - 1]->driver_pays_beyond;
        if (!goes_on) finish();
        if (turn) line.push_back({layout.middle_of(i), layout.height_of(turn->width_m)});
    }
    finish();
    return casings + lines;
}

std::string axes(const ChartView& view, const Layout& layout) {
    const DriverChart& chart = view.chart;
    std::string svg;
    for (std::size_t width = 0; width < layout.rows(); ++width)
        svg += label("chart-tick", left_margin - 6.0, layout.middle_of_row(static_cast<double>(width)),
                     Anchor::end, length_number(chart.widths_m[width], view.units));
    for (std::size_t length = 0; length < layout.columns(); ++length)
        svg += label("chart-tick", layout.middle_of(length), layout.bottom() + 13.0, Anchor::middle,
                     length_number(chart.lengths_m[length], view.units));
    const double middle = 0.5 * (left_margin + picture_width - right_margin);
    svg += label("chart-title", middle, layout.bottom() + 32.0, Anchor::middle,
                 fmt::format("length of the hole, {}", display_unit(view.units)));
    const double across = 0.5 * (top_margin + layout.bottom());
    svg += fmt::format("<g transform=\"translate(14 {}) rotate(-90)\">\n{}</g>\n", px(across),
                       label("chart-title", 0.0, 0.0, Anchor::middle,
                             fmt::format("landing width, {}", display_unit(view.units))));
    return svg + rect("chart-frame", left_margin, top_margin, picture_width - left_margin - right_margin,
                      layout.bottom() - top_margin);
}

std::string key(bool any_turn) {
    struct Entry {
        ChartSide side;
        const char* text;
        double width;
    };
    std::string svg;
    double x = left_margin;
    for (const Entry& entry : {Entry{ChartSide::driver, "driver pays", 110.0},
                               Entry{ChartSide::control, "control club pays", 145.0},
                               Entry{ChartSide::either, "within the noise", 135.0}}) {
        svg += rect(fill_class(entry.side), x, 9.0, 22.0, 16.0) + rect("chart-frame", x, 9.0, 22.0, 16.0) +
               label("chart-key", x + 28.0, 17.0, Anchor::start, entry.text);
        x += entry.width;
    }
    if (any_turn)
        svg += path_element("chart-turn", path_data({{x, 17.0}, {x + 22.0, 17.0}}, false)) +
               label("chart-key", x + 30.0, 17.0, Anchor::start, "break-even landing width");
    return svg + label("chart-key", picture_width - right_margin, 17.0, Anchor::end,
                       "in each cell: the club to hit and the strokes it saves");
}

}  // namespace

std::string chart_picture(const ChartView& view) {
    const DriverChart& chart = view.chart;
    const Layout layout(chart);
    std::string grounds, labels;
    for (std::size_t width = 0; width < layout.rows(); ++width)
        for (std::size_t length = 0; length < layout.columns(); ++length) {
            grounds += cell_ground(chart.cell(width, length), layout, width, length);
            labels += cell_labels(view, layout, width, length);
        }
    const bool any_turn =
        std::ranges::any_of(chart.break_evens, [](const auto& turn) { return turn.has_value(); });
    const std::string title =
        fmt::format("Driver chart of {}: {}", name_text(view.golfer.name, 80), trouble_words(chart.trouble));
    return fmt::format(
               "<svg class=\"chart-picture\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {} {}\" "
               "style=\"display:block;width:100%;min-width:640px;max-width:{}px;height:auto\" role=\"img\" "
               "aria-label=\"{}\">\n<title>{}</title>\n",
               px(picture_width), px(layout.height()), px(picture_width), escaped(title), escaped(title)) +
           std::string(defs) + grounds + turn_lines(chart, layout) + labels + axes(view, layout) +
           key(any_turn) + "</svg>\n";
}

}  // namespace landwidth
