#include <utility>

#include "planner/reports/chart_reports.hpp"
#include "planner/reports/chart_words.hpp"
#include "planner/reports/json_assumptions.hpp"
#include "planner/reports/json_pieces.hpp"
#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

Json json_club(const ChartView& view, const ChartClub& club) {
    return {{"club", view.golfer.clubs.at(club.club).name},
            {"expected_strokes", rounded(club.expected_strokes, stroke_decimals)},
            {"standard_error", rounded(club.standard_error, stroke_decimals)}};
}

Json json_cells(const ChartView& view) {
    const DriverChart& chart = view.chart;
    Json cells = Json::array();
    for (std::size_t width = 0; width < chart.widths_m.size(); ++width)
        for (std::size_t length = 0; length < chart.lengths_m.size(); ++length) {
            const ChartCell& cell = chart.cell(width, length);
            cells.push_back({{"landing_width_yd", json_yards(chart.widths_m[width])},
                             {"length_yd", json_yards(chart.lengths_m[length])},
                             {"driver", json_club(view, cell.driver)},
                             {"control", json_club(view, cell.control)},
                             {"driver_saves_strokes", rounded(cell.driver_saves, stroke_decimals)},
                             {"confidence", rounded(cell.confidence, 3)},
                             {"toss_up", cell.toss_up}});
        }
    return cells;
}

// Where there is no turn one side pays at every width.
Json json_break_evens(const DriverChart& chart) {
    Json lengths = Json::array();
    for (std::size_t length = 0; length < chart.lengths_m.size(); ++length) {
        const std::optional<EvenWidth>& turn = chart.break_evens[length];
        const bool beyond = turn ? turn->driver_pays_beyond : chart.cell(0, length).driver_saves >= 0.0;
        lengths.push_back({{"length_yd", json_yards(chart.lengths_m[length])},
                           {"par", chart.pars[length]},
                           {"landing_width_yd", turn ? Json(json_yards(turn->width_m)) : Json(nullptr)},
                           {"pays_beyond", beyond ? "driver" : "control"}});
    }
    return lengths;
}

}  // namespace

std::string chart_json(const ChartView& view) {
    const DriverChart& chart = view.chart;
    const Json json{
        {"format", "landwidth-chart/1"},
        {"golfer", {{"name", view.golfer.name}}},
        {"trouble", std::string(chart_trouble_name(chart.trouble))},
        {"field", "personal"},
        {"assumptions", json_assumptions(list_assumptions(chart.assumptions))},
        {"warnings", chart.warnings},
        {"cells", json_cells(view)},
        {"break_evens", json_break_evens(chart)},
        {"summary", chart_summary(view)},
        {"grounds", chart_grounds(view)},
        {"cautions", chart_cautions()},
    };
    return json_text(json);
}

}  // namespace landwidth
