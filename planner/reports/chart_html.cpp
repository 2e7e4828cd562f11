#include <fmt/format.h>

#include "planner/reports/chart_picture.hpp"
#include "planner/reports/chart_reports.hpp"
#include "planner/reports/chart_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_parts.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

std::string page_header(const ChartView& view) {
    return fmt::format(
        "<header>\n<h1>Driver or not, whatever the course</h1>\n<p class=\"sub\">Driver chart of {}, "
        "handicap "
        "index {:.1f}, {}-handed. Beside the fairway: {}. Lengths in {}.</p>\n</header>\n",
        isolated(name_text(view.golfer.name, 80)), view.golfer.handicap_index,
        view.golfer.hand == Hand::left ? "left" : "right", trouble_words(view.chart.trouble),
        view.units == DisplayUnits::yards ? "yards" : "metres");
}

std::string section(std::string_view heading, const std::string& inside) {
    return fmt::format("<section class=\"part\">\n<h2>{}</h2>\n{}</section>\n", heading, inside);
}

std::string cell_html(const ChartView& view, const ChartCell& cell) {
    if (side_of(cell) == ChartSide::either) return "<span class=\"tossup\">either</span>";
    return fmt::format("{}<br/>{}, {}", isolated(name_text(chart_club_text(view, cell), 16)),
                       chart_saving_text(cell), sentence(share_text(cell.confidence)));
}

std::string cells_table(const ChartView& view) {
    const DriverChart& chart = view.chart;
    std::vector<HtmlColumn> columns{{"Landing"}};
    for (const double length_m : chart.lengths_m)
        columns.push_back({sentence(length_text(length_m, view.units))});
    HtmlTable table("chart-cells", std::move(columns));
    for (std::size_t width = 0; width < chart.widths_m.size(); ++width) {
        std::vector<std::string> row{sentence(length_text(chart.widths_m[width], view.units))};
        for (std::size_t length = 0; length < chart.lengths_m.size(); ++length)
            row.push_back(cell_html(view, chart.cell(width, length)));
        table.add_row(row);
    }
    return table.html();
}

std::string turns_table(const ChartView& view) {
    HtmlTable table("totals", {{"Length of the hole"}, {"Par", true}, {"The driver pays on landings"}});
    for (const TurnWords& words : turn_words(view))
        table.add_row({sentence(words.lengths), sentence(words.pars), sentence(words.pays)});
    return table.html();
}

}  // namespace

std::string chart_html(const ChartView& view) {
    const DriverChart& chart = view.chart;
    std::string said;
    for (const std::string& words : chart_summary(view))
        said += fmt::format("{}{}", said.empty() ? "" : " ", sentence(words));
    std::string html = page_head("Driver chart: " + name_text(view.golfer.name, 80)) + "<body>\n" +
                       page_header(view) + "<main>\n";
    html += fmt::format(
        "<p class=\"verdict\">{}</p>\n<figure class=\"scroll\" style=\"margin:1rem 0\">\n{}</figure>\n", said,
        chart_picture(view));
    html += section("Break-even landing widths", turns_table(view));
    html += section("What it rests on", bullet_list(chart_grounds(view)));
    if (!chart.warnings.empty()) html += section("Warnings", bullet_list(chart.warnings));
    html += section("Before you swing", bullet_list(chart_cautions()));
    html +=
        section("Every cell",
                "<p class=\"note\">The club to hit, the strokes it saves over the best club of the other "
                "side, and the share of the plausible patterns in which that side stays the better.</p>\n" +
                    cells_table(view));
    html += patterns_details(view.golfer, view.units) +
            details("Assumptions", assumptions_table(chart.assumptions));
    return html + "</main>\n" + page_footer({}) + "</body>\n</html>\n";
}

}  // namespace landwidth
