// What the reports say of the day and the ground, and that they are silent on the reference day.
#include <nlohmann/json.hpp>
#include <regex>

#include "planner/reports/day_words.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/landing_rim.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/wind_words.hpp"
#include "tests/catch.hpp"
#include "tests/planner/page_checks.hpp"
#include "tests/planner/plan_fixture.hpp"
#include "tests/planner/weigh_fixture.hpp"

namespace landwidth {
namespace {

using Catch::Matchers::WithinAbs;
using fixture::own_field;
using fixture::PlanFixture;
using fixture::windy_day;
using Json = nlohmann::ordered_json;

// On one line, the indent of wrapped lines gone.
std::string unwrapped(const std::string& text) {
    return std::regex_replace(text, std::regex("\n *"), " ");
}

constexpr double mph = metres_per_second_per_mph;

TEST_CASE("winds are said by the compass and as they meet the ball", "[day]") {
    CHECK(compass_point(Bearing::from_degrees(0.0)) == "N");
    CHECK(compass_point(Bearing::from_degrees(11.2)) == "N");
    CHECK(compass_point(Bearing::from_degrees(11.3)) == "NNE");
    CHECK(compass_point(Bearing::from_degrees(240.0)) == "WSW");
    CHECK(compass_point(Bearing::from_degrees(359.0)) == "N");
    CHECK(compass_point(Bearing::from_degrees(-90.0)) == "W");

    const Wind steady{12.0 * mph, Bearing::from_degrees(240.0)};
    CHECK(wind_words(steady, DisplayUnits::yards) == "wind 12 mph from 240 (WSW)");
    // 12 mph are 19.3 km/h.
    CHECK(wind_words(steady, DisplayUnits::metres) == "wind 19 km/h from 240 (WSW)");
    const Wind gusty{12.0 * mph, Bearing::from_degrees(359.8), 18.0 * mph};
    CHECK(wind_words(gusty, DisplayUnits::yards) == "wind 12 mph from 0 (N), gusting 18");
    CHECK(wind_label(gusty, DisplayUnits::yards) == "12 mph, gusts 18");

    CHECK(wind_parts_words(-9.0 * mph, 7.0 * mph, DisplayUnits::yards) ==
          "9 mph against, 7 mph from the left");
    CHECK(wind_parts_words(9.0 * mph, -7.0 * mph, DisplayUnits::yards) ==
          "9 mph behind, 7 mph from the right");
    CHECK(wind_parts_words(0.0, -7.0 * mph, DisplayUnits::yards) == "7 mph from the right");
    CHECK(wind_parts_words(0.4 * mph, -0.4 * mph, DisplayUnits::yards).empty());
}

TEST_CASE("a day in words holds what differs from the reference day", "[day]") {
    const auto units = DisplayUnits::yards;
    CHECK(conditions_words({}, units).empty());
    CHECK(day_words({}, false, units).empty());
    CHECK(day_words({}, true, units) == "still air at 15 °C and 1013 hPa; heights of the ground as given");
    // 8 C, 1002 hPa, 60 %: dry air by the gas law 100200 / (287.05 x 281.15) = 1.2416 kg/m3; the vapour (643
    // Pa of 1072 Pa, tables) takes 0.378 x 643 / 100200 of it off: 1.239. ISO 2533 at sea level: 1.225.
    CHECK(day_words(windy_day().plan.conditions, false, units) ==
          "wind 12 mph from 240 (WSW), gusting 18; 8 °C, 1002 hPa, humidity 60 %: air of 1.24 kg/m³, 1 % "
          "heavier than the reference; soft fairways; level ground");
    Conditions high{.weather = standard_weather(1609.344)};
    // ISO 2533 at 1609 m: density 1.0476 kg/m3.
    CHECK(conditions_words(high, units) ==
          "5 °C, 834 hPa: air of 1.05 kg/m³, 15 % lighter than the reference");
    CHECK(conditions_words({.fairway = Firmness::firm, .rough = Firmness::soft}, units) ==
          "firm fairways, soft rough");
    CHECK(conditions_words({.fairway = Firmness::firm, .rough = Firmness::firm}, units) ==
          "firm fairways and rough");
    CHECK(conditions_words({.rough = Firmness::firm}, units) == "firm rough");
}

TEST_CASE("a hole says what it plays as, a club where its ball comes down", "[day]") {
    const PlanFixture made = windy_day();
    CHECK(plays_as_words(made.view(), 0) ==
          "plays as 396 yd (406 on the card), 6 yd up, wind 6 mph behind, 10 mph from the left");
    CHECK(plays_as_words(made.view(), 1) ==
          "plays as 173 yd (160 on the card), level, wind 10 mph against, 6 mph from the left");
    CHECK(plays_as_words(made.view(DisplayUnits::metres), 1) ==
          "plays as 158 m (146 on the card), level, wind 17 km/h against, 10 km/h from the left");
    CHECK(plays_as_words(own_field().view(), 0).empty());
    const auto& choices = made.plan.holes[0].choices;
    CHECK(flight_words(choices[0].day, DisplayUnits::yards) ==
          "carries 212 yd, drifts 9 right, runs 12; 3 % of the balls are stopped by trees or buildings on "
          "their way");
    CHECK(flight_cell(choices[0].day, DisplayUnits::yards) == "212, 9R; 3 % stopped");
    // 0.9 % is not worth a word, nor is a drift of a foot.
    CHECK(flight_cell(choices[1].day, DisplayUnits::yards) == "231, 10R");
    CHECK(flight_cell(made.plan.holes[1].choices[1].day, DisplayUnits::yards) == "151");
    CHECK(flight_cell({.carry_m = 150.0, .drift_m = -4.0}, DisplayUnits::metres) == "150, 4L");
}

TEST_CASE("the text tells the day at its head and the flight on every tee", "[day]") {
    const std::string text = plan_text(windy_day().view());
    CHECK(holds(text, "\nWind 12 mph from 240 (WSW), gusting 18; 8 °C, 1002 hPa"));
    CHECK(holds(text, "plays as 396 yd (406 on the card), 6 yd up"));
    CHECK(holds(text, "plays as 173 yd"));
    CHECK(holds(text, "carries 142 yd, drifts 5 right, runs 2\n"));
    CHECK(holds(unwrapped(text), "on the day and the ground given"));
    CHECK_FALSE(holds(text, "still air"));
}

TEST_CASE("the page tells the day, and points the wind's way on every map", "[day]") {
    const std::string html = plan_html(windy_day().view());
    check_self_contained(html);
    check_identifiers(html);
    CHECK(holds(html, "<p class=\"day\">Wind 12\u00A0mph from 240 (WSW), gusting 18;"));
    CHECK(holds(html, "<p class=\"plays\">Plays as 396\u00A0yd (406 on the card), 6\u00A0yd up"));
    CHECK(holds(html, "<td>212, 9R; 3\u00A0% stopped</td>"));
    CHECK(holds(html, ">wind 12 mph, gusts 18</text>"));
    CHECK(holds(html, "the way the wind blows"));
    CHECK(holds(html, "to the right (R) or left (L)"));
}

// The step from the tail of a map's wind arrow to its tip, from its path: see wind_arrow. The path starts in
// the notch of the tail; the tip is its fifth point.
Point arrow_on_map(const std::string& html, int hole) {
    auto from = html.find("id=\"hole-" + std::to_string(hole) + "\"");
    REQUIRE(from != std::string::npos);
    from = html.find("class=\"wind\" d=\"M", from);
    REQUIRE(from != std::string::npos);
    const std::string path = html.substr(from, html.find("z\"", from) - from);
    const std::regex number("-?[0-9]*\\.?[0-9]+");
    std::vector<double> values;
    for (auto i = std::sregex_iterator(path.begin(), path.end(), number); i != std::sregex_iterator(); ++i)
        values.push_back(std::stod(i->str()));
    REQUIRE(values.size() == 16);
    Point step{0.0, 0.0};
    for (std::size_t i = 1; i <= 4; ++i)
        step = step + Point{values[2 * i], values[2 * i + 1]};
    return step;
}

TEST_CASE("the wind arrow turns with the map", "[day]") {
    PlanFixture made = windy_day();
    // Hole 2 plays west and is drawn upwards: a wind from the west blows down the sheet, one from the north
    // to the left: south is to the left of west.
    made.plan.conditions.wind->from = Bearing::from_degrees(270.0);
    Point arrow = arrow_on_map(plan_html(made.view()), 2);
    CHECK_THAT(arrow.x, WithinAbs(0.0, 0.3));
    CHECK_THAT(arrow.y, WithinAbs(22.0, 0.3));
    made.plan.conditions.wind->from = Bearing::from_degrees(0.0);
    arrow = arrow_on_map(plan_html(made.view()), 2);
    CHECK_THAT(arrow.x, WithinAbs(-22.0, 0.3));
    CHECK_THAT(arrow.y, WithinAbs(0.0, 0.3));
}

TEST_CASE("the ellipses on the map lie where the balls of the day come down", "[day]") {
    const auto centre = [](const Ring& ring) {
        Point sum{0.0, 0.0};
        for (const Point p : ring)
            sum = sum + p;
        return (1.0 / static_cast<double>(ring.size())) * sum;
    };
    const PlanFixture made = windy_day();
    TeeChoice choice = made.plan.holes[0].choices[0];
    choice.aim = 0.0;
    // The 3-wood carries 189 m, 2 m right, in the profile.
    const Point moved = centre(landing_rims(made.view(), {0.0, 0.0}, choice, 0.5, 36).at(0));
    CHECK_THAT(moved.x, WithinAbs(2.0 + 8.2, 1e-9));
    CHECK_THAT(moved.y, WithinAbs(194.0, 1e-9));
    const Point before = centre(landing_rims(own_field().view(), {0.0, 0.0}, choice, 0.5, 36).at(0));
    CHECK_THAT(before.x, WithinAbs(2.0, 1e-9));
    CHECK_THAT(before.y, WithinAbs(189.0, 1e-9));
}

TEST_CASE("the JSON has the day in SI or with units in the names, reference day or not", "[day]") {
    const Json plan = Json::parse(plan_json(windy_day().view(DisplayUnits::metres)));
    const Json& day = plan["day"];
    CHECK(day["wind"] == Json{{"speed_mph", 12.0}, {"from_deg", 240.0}, {"gusts_mph", 18.0}});
    CHECK(day["temperature_c"] == 8.0);
    CHECK(day["pressure_hpa"] == 1002.0);
    CHECK(day["humidity_share"] == 0.6);
    CHECK_THAT(day["air_density_kg_per_m3"].get<double>(), WithinAbs(1.2386, 0.001));
    CHECK(day["firmness"] == Json{{"fairway", "soft"}, {"rough", "ordinary"}});
    CHECK(plan["has_heights"] == true);
    const Json& hole = plan["holes"][0];
    CHECK(hole["plays_as_yd"] == 396.0);
    CHECK(hole["rise_yd"] == 6.0);
    CHECK(hole["tail_wind_mph"] == 6.0);
    CHECK(hole["cross_wind_mph"] == 10.4);
    const Json& choice = hole["choices"][0];
    CHECK(choice["carry_yd"] == 212.2);
    CHECK(choice["drift_yd"] == 9.0);
    CHECK(choice["run_yd"] == 12.0);
    CHECK(choice["peak_yd"] == 26.2);
    CHECK(choice["landing_angle_deg"] == 40.1);
    CHECK(choice["stopped_share"] == 0.031);

    const Json still = Json::parse(plan_json(own_field().view()));
    CHECK(still["day"]["wind"].is_null());
    CHECK(still["day"]["temperature_c"] == 15.0);
    CHECK(still["day"]["air_density_kg_per_m3"] == 1.225);
    CHECK(still["has_heights"] == false);
}

TEST_CASE("nothing is said of the reference day", "[day]") {
    const PlanFixture made = own_field();
    CHECK_FALSE(shows_day(made.plan));
    for (const std::string& out : {plan_text(made.view()), plan_html(made.view())}) {
        for (const char* word :
             {"plays as", "Plays as", "drift", "class=\"day\"", ".wind {", "Carries", "km/h"}) {
            INFO(word);
            CHECK_FALSE(holds(out, word));
        }
        CHECK(holds(out, "in still air on level"));
    }
    PlanFixture calm = own_field();
    calm.plan.conditions.wind = Wind{0.0, Bearing::from_degrees(10.0)};
    CHECK_FALSE(shows_day(calm.plan));
    PlanFixture hilly = own_field();
    hilly.plan.has_heights = true;
    CHECK(shows_day(hilly.plan));
    CHECK(holds(unwrapped(plan_text(hilly.view())), "in still air on the ground as given"));
}

TEST_CASE("weighing tells its day too", "[day]") {
    fixture::WeighFixture made = fixture::two_changes();
    made.weighing.conditions = windy_day().plan.conditions;
    CHECK(holds(weigh_text(made.view()), "\nWind 12 mph from 240 (WSW), gusting 18;"));
    CHECK(holds(weigh_html(made.view()), "Wind 12\u00A0mph from 240 (WSW), gusting 18;"));
    const Json json = Json::parse(weigh_json(made.view()));
    CHECK(json["day"]["wind"]["from_deg"] == 240.0);
    CHECK(json["has_heights"] == false);
}

}  // namespace
}  // namespace landwidth
