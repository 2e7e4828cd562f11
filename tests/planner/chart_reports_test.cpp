// The forms of a driver chart, from a chart made by hand: no engine has touched its numbers.
#include "planner/reports/chart_reports.hpp"

#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "planner/reports/chart_picture.hpp"
#include "planner/reports/chart_words.hpp"
#include "planner/reports/text_table.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

Golfer golfer_named(const std::string& control) {
    Golfer golfer;
    golfer.name = "A. Tester";
    golfer.handicap_index = 9.0;
    for (const auto& [name, kind] :
         {std::pair{std::string("driver"), ClubKind::driver}, std::pair{control, ClubKind::fairway_wood}}) {
        Club club;
        club.name = name;
        club.kind = kind;
        club.pattern = ShotPattern{.usual = {{200.0, 0.0}, 10.0, 15.0, 0.0}};
        golfer.clubs.push_back(club);
    }
    return golfer;
}

ChartCell cell(double driver_saves, double confidence, bool toss_up) {
    return {{0, 4.5, 0.001}, {1, 4.5 + driver_saves, 0.001}, driver_saves, confidence, toss_up};
}

// Three landings of 20, 30 and 40 yd, lengths of 300, 320 and 480 yd: at 300 yd the verdict turns at 30 yd
// (27.4 m), at the other two the control club pays everywhere.
DriverChart small_chart() {
    const auto yd = [](double value) { return Yards{value}.metres(); };
    DriverChart chart{};
    chart.trouble = ChartTrouble::out_left;
    chart.widths_m = {yd(20), yd(30), yd(40)};
    chart.lengths_m = {yd(300), yd(320), yd(480)};
    chart.pars = {4, 4, 5};
    chart.cells = {cell(-0.10, 0.95, false), cell(-0.31, 1.0, false), cell(-0.05, 0.8, false),
                   cell(0.0, 0.5, true),     cell(-0.21, 1.0, false), cell(-0.04, 0.8, false),
                   cell(0.10, 0.9, false),   cell(-0.11, 0.6, true),  cell(-0.004, 0.7, false)};
    chart.break_evens = {EvenWidth{yd(30), true}, std::nullopt, std::nullopt};
    chart.assumptions = default_assumptions();
    chart.warnings = {"2 of 2 clubs are invented"};
    return chart;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

}  // namespace

TEST_CASE("a cell names the club and what it saves, or says either", "[chart]") {
    const Golfer golfer = golfer_named("3-wood");
    const DriverChart chart = small_chart();
    const ChartView view{golfer, chart};
    CHECK(chart_club_text(view, chart.cell(2, 0)) == "driver");
    CHECK(chart_saving_text(chart.cell(2, 0)) == "0.10");
    CHECK(chart_club_text(view, chart.cell(0, 1)) == "3-wood");
    CHECK(chart_saving_text(chart.cell(0, 1)) == "0.31");
    CHECK(chart_club_text(view, chart.cell(1, 0)) == "either");
    // What rounds to nothing is nothing to choose by.
    CHECK(side_of(chart.cell(2, 2)) == ChartSide::either);
}

TEST_CASE("lengths of which the same is to be said are said once", "[chart]") {
    const Golfer golfer = golfer_named("3-wood");
    const DriverChart chart = small_chart();
    const std::vector<TurnWords> words = turn_words({golfer, chart});
    REQUIRE(words.size() == 2);
    CHECK(words[0].lengths == "300 yd");
    CHECK(words[0].pars == "4");
    CHECK(words[0].pays == "from 30 yd");
    CHECK(words[1].lengths == "320 to 480 yd");
    CHECK(words[1].pars == "4 or 5");
    CHECK(words[1].pays == "at no width, or either will do");
    CHECK(turn_words({golfer, chart, DisplayUnits::metres})[0].pays == "from 27 m");
}

TEST_CASE("what the chart says, in sentences", "[chart]") {
    const Golfer golfer = golfer_named("3-wood");
    DriverChart chart = small_chart();
    CHECK(chart_summary({golfer, chart}) ==
          std::vector<std::string>{
              "Of 9 holes, each of one landing width and length, the driver pays on 1, a control club on 5 "
              "(3-wood on 5); on 3 either will do.",
              "Going wider, the verdict turns to the driver at a landing of 30 yd (on a hole of 300 yd).",
              "The driver saves at most 0.10 strokes (a landing of 40 yd on a hole of 300 yd). The control "
              "club saves at most 0.31 (a landing of 20 yd on a hole of 320 yd, the 3-wood)."});
    chart.break_evens[0]->driver_pays_beyond = false;
    CHECK(
        chart_summary({golfer, chart})[1] ==
        "Going wider, the verdict turns from the driver to the control club at a landing of 30 yd (on a hole "
        "of 300 yd).");
    chart.break_evens[0].reset();
    CHECK(chart_summary({golfer, chart})[1] ==
          "At no length does the verdict turn between landings of 20 yd and 40 yd.");
}

TEST_CASE("the chart as text", "[chart]") {
    const Golfer golfer = golfer_named("3-wood");
    const DriverChart chart = small_chart();
    const std::string text = chart_text({golfer, chart});
    CHECK(has(text, "Driver chart of A. Tester: out of bounds on the left\n"));
    CHECK(has(text, "landing  300 yd       320 yd       480 yd\n"));
    CHECK(has(text, "  20 yd  3-wood 0.10  3-wood 0.31  3-wood 0.05\n"));
    CHECK(has(text, "  40 yd  driver 0.10  either       either\n"));
    CHECK(has(text, "- 2 of 2 clubs are invented\n"));
    CHECK(has(text, "Nobody may be within reach of the shot"));
    CHECK(has(chart_text({golfer, chart, DisplayUnits::metres}), "   18 m  3-wood 0.10"));
}

TEST_CASE("a chart of long names and many lengths stays within the width of a report", "[chart]") {
    const Golfer golfer = golfer_named("the five-wood of a long-winded uncle");
    DriverChart chart = small_chart();
    chart.lengths_m.clear();
    chart.cells.clear();
    for (int i = 0; i < 26; ++i)
        chart.lengths_m.push_back(Yards{200.0 + 20.0 * i}.metres());
    chart.pars.assign(26, 4);
    chart.break_evens.assign(26, std::nullopt);
    chart.cells.assign(26 * 3, cell(-0.12, 0.9, false));
    std::istringstream lines(chart_text({golfer, chart}));
    for (std::string line; std::getline(lines, line);)
        CHECK(display_width(line) <= report_width);
}

TEST_CASE("the chart as JSON", "[chart]") {
    const Golfer golfer = golfer_named("3-wood");
    const DriverChart chart = small_chart();
    const std::string text = chart_json({golfer, chart, DisplayUnits::metres});
    const auto json = nlohmann::json::parse(text);
    CHECK(json["format"] == "landwidth-chart/1");
    CHECK(json["trouble"] == "out-left");
    REQUIRE(json["cells"].size() == 9);
    const auto& first = json["cells"][0];
    CHECK_THAT(first["landing_width_yd"].get<double>(), WithinAbs(20.0, 1e-9));
    CHECK_THAT(first["length_yd"].get<double>(), WithinAbs(300.0, 1e-9));
    CHECK(first["driver"]["club"] == "driver");
    CHECK(first["control"]["club"] == "3-wood");
    CHECK_THAT(first["driver_saves_strokes"].get<double>(), WithinAbs(-0.1, 1e-9));
    CHECK(json["cells"][3]["toss_up"] == true);
    REQUIRE(json["break_evens"].size() == 3);
    CHECK_THAT(json["break_evens"][0]["landing_width_yd"].get<double>(), WithinAbs(30.0, 1e-9));
    CHECK(json["break_evens"][0]["pays_beyond"] == "driver");
    CHECK(json["break_evens"][1]["landing_width_yd"].is_null());
    CHECK(json["break_evens"][1]["pays_beyond"] == "control");
    CHECK(json["assumptions"]["chart_trouble_from_edge"]["source"] == "assumption");
}

TEST_CASE("the picture tells its ground apart without colours", "[chart]") {
    const Golfer golfer = golfer_named("3-wood");
    const DriverChart chart = small_chart();
    const std::string svg = chart_picture({golfer, chart});
    // One rectangle a cell and one in the key.
    CHECK(count_of(svg, "<rect class=\"chart-driver\"") == 1 + 1);
    CHECK(count_of(svg, "<rect class=\"chart-control\"") == 5 + 1);
    CHECK(count_of(svg, "<rect class=\"chart-either\"") == 3 + 1);
    CHECK(has(svg, "fill: url(#chart-hatch)"));
    CHECK(count_of(svg, ">3-wood</text>") == 5);
    CHECK(count_of(svg, ">either</text>") == 3);
    CHECK(has(svg, ">0.31</text>"));
    // The break-even at 30 yd lies at the middle of the second row from below: 40 + 1.5 x 33.
    CHECK(has(svg, " 89.5l"));
    CHECK(has(svg, ">break-even landing width</text>"));
}

TEST_CASE("the page of a chart stands alone and survives any name", "[chart]") {
    const DriverChart chart = small_chart();
    const Golfer golfer = golfer_named("<b>3 & \"wood\"</b>\xff");
    const std::string html = chart_html({golfer, chart});
    CHECK(html.starts_with("<!DOCTYPE html>"));
    CHECK(!has(html, "<b>"));
    CHECK(!has(html, "<script"));
    CHECK(!has(html, "src="));
    // The one address is the name of SVG itself.
    CHECK(count_of(html, "http") == count_of(html, "http://www.w3.org/2000/svg"));
    CHECK(has(html, "<svg class=\"chart-picture\""));
    CHECK(has(html, "2 of 2 clubs are invented"));
    const std::string json = chart_json({golfer, chart});
    CHECK(nlohmann::json::parse(json)["cells"].size() == 9);
}
