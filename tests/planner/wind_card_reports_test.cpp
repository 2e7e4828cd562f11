// The forms of a wind card, from a card made by hand: no engine has touched its numbers.
#include "planner/reports/wind_card_reports.hpp"

#include <nlohmann/json.hpp>
#include <regex>
#include <sstream>

#include "planner/reports/text_table.hpp"
#include "planner/reports/wind_card_words.hpp"
#include "planner/reports/wind_rose.hpp"
#include "tests/catch.hpp"
#include "tests/planner/page_checks.hpp"
#include "tests/planner/plan_fixture.hpp"

namespace landwidth {
namespace {

using Catch::Matchers::WithinAbs;
using Json = nlohmann::ordered_json;

constexpr double mph = metres_per_second_per_mph;

WindCardVerdict verdict(std::size_t club, std::size_t over, double strokes, double margin, bool toss_up) {
    return {.club = club,
            .aim_bearing = Bearing::from_degrees(2.0),
            .expected_strokes = strokes,
            .margin = margin,
            .over = over,
            .toss_up = toss_up,
            .tail_wind_mps = -3.0 * mph,
            .cross_wind_mps = 4.0 * mph,
            .drift_m = -5.0,
            .carry_m = 200.0};
}

struct CardFixture {
    fixture::PlanFixture plan = fixture::two_holes();
    WindCard card;
    WindCardView view(DisplayUnits units = DisplayUnits::yards) const {
        return {plan.course, plan.golfer, card, units};
    }
};

// Clubs: 0 driver, 1 3-wood, 2 5-iron, 3 6-iron, 4 7-iron.
// Hole 1, played north: the 3-wood; the driver with the wind from N and NE, the 5-iron from S; a toss-up with
// the driver ahead from NW, and one with the 3-wood ahead from E.
// Hole 2, played west: the 7-iron in a toss-up; the 6-iron from W, which settles it and is no flip.
CardFixture two_hole_card() {
    CardFixture made;
    WindCardHole first{.still = verdict(1, 0, 4.61, 0.08, false), .wind_from = {}, .flips = {0, 1, 4}};
    first.wind_from.fill(verdict(1, 0, 4.66, 0.05, false));
    first.wind_from[0] = verdict(0, 1, 4.95, 0.06, false);
    first.wind_from[1] = verdict(0, 1, 4.87, 0.04, false);
    first.wind_from[2] = verdict(1, 0, 4.70, 0.004, true);
    first.wind_from[4] = verdict(2, 1, 4.52, 0.03, false);
    first.wind_from[7] = verdict(0, 1, 4.81, 0.003, true);
    WindCardHole second{.still = verdict(4, 3, 3.42, 0.01, true), .wind_from = {}, .flips = {}};
    second.wind_from.fill(verdict(4, 3, 3.45, 0.05, false));
    second.wind_from[6] = verdict(3, 4, 3.60, 0.12, false);
    made.card = {.speed_mps = 12.0 * mph,
                 .gusts_mps = 18.0 * mph,
                 .holes = {first, second},
                 .still_strokes = 8.03,
                 .strokes = {8.40, 8.32, 8.15, 8.11, 7.97, 8.034, 8.26, 8.26},
                 .conditions = {.fairway = Firmness::firm},
                 .assumptions = default_assumptions(),
                 .warnings = {"most patterns are presets: record shots to be surer"}};
    return made;
}

std::string line_with(const std::string& text, const std::string& start) {
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);)
        if (line.starts_with(start)) return line;
    FAIL("no line starts with " << start);
    return {};
}

std::vector<std::string> words_of(const std::string& line) {
    std::istringstream stream(line);
    return {std::istream_iterator<std::string>(stream), {}};
}

TEST_CASE("directions go round clockwise from north", "[wind_card]") {
    std::string all;
    for (std::size_t i = 0; i < wind_card_directions; ++i)
        all += std::string(wind_card_direction(i)) + " ";
    CHECK(all == "N NE E SE S SW W NW ");
    CHECK_THAT(wind_card_bearing(6).degrees(), WithinAbs(270.0, 1e-9));
}

TEST_CASE("the text marks changes and toss-ups of a tee, and says the changes in words", "[wind_card]") {
    const CardFixture made = two_hole_card();
    const std::string text = wind_card_text(made.view());
    CHECK(text.starts_with(
        "Wind card for A. Golfer: Example Holm\nWind of 12 mph, gusting 18, from eight directions; firm "
        "fairways.\n"));
    CHECK(words_of(line_with(text, "hole")) == std::vector<std::string>{"hole", "par", "still", "air", "N",
                                                                        "NE", "E", "SE", "S", "SW", "W",
                                                                        "NW"});
    CHECK(words_of(line_with(text, "1 ")) == std::vector<std::string>{"1", "4", "3-wood", "driver", "driver",
                                                                      "~", ".", "5-iron", ".", ".",
                                                                      "~driver"});
    CHECK(words_of(line_with(text, "2 ")) ==
          std::vector<std::string>{"2", "3", "~7-iron", ".", ".", ".", ".", ".", ".", "6-iron", "."});
    CHECK(words_of(line_with(text, "strokes")) == std::vector<std::string>{"strokes", "8.03", "8.40", "8.32",
                                                                           "8.15", "8.11", "7.97", "8.03",
                                                                           "8.26", "8.26"});
    CHECK(words_of(line_with(text, "against still air")) ==
          std::vector<std::string>{"against", "still", "air", "+0.37", "+0.29", "+0.12", "+0.08", "-0.06",
                                   "+0.00", "+0.23", "+0.23"});
    CHECK(holds(text,
                "\nWhere the wind changes the club\n- hole 1: 3-wood in still air, driver with the wind from "
                "N, NE, 5-iron with the wind from S\n"));
    CHECK_FALSE(holds(text, "hole 2:"));
    CHECK(holds(text, "presets"));
    CHECK(holds(text, "thunderstorm"));
    CHECK(holds(text, "Map: holm.osm"));
    CHECK(holds(wind_card_text(made.view(DisplayUnits::metres)), "Wind of 19 km/h, gusting 29,"));
}

TEST_CASE("a card without changes says so", "[wind_card]") {
    CardFixture made = two_hole_card();
    made.card.holes[0].flips.clear();
    made.card.gusts_mps.reset();
    CHECK(holds(wind_card_text(made.view()), "No wind of this card changes the club on a tee"));
    CHECK(holds(wind_card_text(made.view()), "Wind of 12 mph from eight directions"));
    CHECK(holds(wind_card_html(made.view()), "No wind of this card changes the club on a tee"));
}

TEST_CASE("no line is too wide, whatever the clubs are called", "[wind_card]") {
    CardFixture made = two_hole_card();
    made.plan = fixture::hostile_names();
    for (WindCardHole& hole : made.card.holes) {
        hole.wind_from.fill(verdict(3, 1, 4.0, 0.1, false));
        hole.flips = {0, 1, 2, 3, 4, 5, 6, 7};
    }
    std::istringstream lines(wind_card_text(made.view()));
    for (std::string line; std::getline(lines, line);) {
        CAPTURE(line);
        CHECK(display_width(line) <= report_width);
    }
    check_self_contained(wind_card_html(made.view()));
    check_identifiers(wind_card_html(made.view()));
    CHECK_NOTHROW(Json::parse(wind_card_json(made.view())));
}

TEST_CASE("the JSON holds every verdict with its wind", "[wind_card]") {
    const CardFixture made = two_hole_card();
    const Json card = Json::parse(wind_card_json(made.view(DisplayUnits::metres)));
    CHECK(card["format"] == "landwidth-wind-card/1");
    CHECK(card["wind"] == Json{{"speed_mph", 12.0}, {"gusts_mph", 18.0}});
    CHECK(card["day"]["wind"].is_null());
    CHECK(card["day"]["firmness"]["fairway"] == "firm");
    const Json& first = card["holes"][0];
    CHECK(first["flips"] == Json{"N", "NE", "S"});
    CHECK(first["still"]["club"] == "3-wood");
    CHECK(first["still"]["over"] == "driver");
    REQUIRE(first["wind_from"].size() == 8);
    const Json& south = first["wind_from"][4];
    CHECK(south["from"] == "S");
    CHECK(south["from_deg"] == 180.0);
    CHECK(south["club"] == "5-iron");
    CHECK(south["expected_strokes"] == 4.52);
    CHECK(south["margin_strokes"] == 0.03);
    CHECK(south["toss_up"] == false);
    CHECK(south["tail_wind_mph"] == -3.0);
    CHECK(south["cross_wind_mph"] == 4.0);
    CHECK(south["carry_yd"] == 218.7);
    CHECK(south["drift_yd"] == -5.5);
    CHECK(card["round"]["still"] == 8.03);
    CHECK(card["round"]["wind_from"][4] ==
          Json{{"from", "S"}, {"from_deg", 180.0}, {"expected_strokes", 7.97}});
    CHECK(card["assumptions"].size() > 10);

    CardFixture alone = two_hole_card();
    alone.card.holes[0].still.over = alone.card.holes[0].still.club;
    CHECK(Json::parse(wind_card_json(alone.view()))["holes"][0]["still"]["over"].is_null());
}

TEST_CASE("the page needs nothing from elsewhere and marks changes without colour", "[wind_card]") {
    const CardFixture made = two_hole_card();
    const std::string html = wind_card_html(made.view());
    check_self_contained(html);
    check_identifiers(html);
    CHECK(holds(html,
                "<p class=\"day\">Wind of 12\u00A0mph, gusting 18, from eight directions; firm fairways."));
    CHECK(holds(html, "Hole 1: 3-wood in still air, driver with the wind from N, NE, 5-iron with the wind"));
    CHECK(holds(html, "<td><span class=\"same\">as still</span></td>"));
    CHECK(holds(html, "<td><span class=\"changed\"><bdi>driver</bdi></span></td>"));
    CHECK(holds(html, "8.4 (+0.37)"));
}

// Where the label of a direction stands on a rose, from its centre.
Point label_on(const std::string& rose, const std::string& direction) {
    const std::regex label("<text class=\"wl[^\"]*\" x=\"([-0-9.]+)\" y=\"([-0-9.]+)\" dy=\".35em\">" +
                           direction + "</text>");
    std::smatch found;
    REQUIRE(std::regex_search(rose, found, label));
    return {std::stod(found[1]) - 58.0, std::stod(found[2]) - 58.0};
}

TEST_CASE("a rose is turned as its hole is played", "[wind_card]") {
    const CardFixture made = two_hole_card();
    // Hole 1 is played north: a wind from the north is in the face, at the top.
    const std::string first = wind_rose(made.view(), 0, "r1");
    CHECK_THAT(label_on(first, "N").x, WithinAbs(0.0, 0.1));
    CHECK_THAT(label_on(first, "N").y, WithinAbs(-50.0, 0.1));
    CHECK_THAT(label_on(first, "E").x, WithinAbs(50.0, 0.1));
    // Hole 2 is played west: north is to the right.
    const std::string second = wind_rose(made.view(), 1, "r2");
    CHECK_THAT(label_on(second, "W").y, WithinAbs(-50.0, 0.1));
    CHECK_THAT(label_on(second, "N").x, WithinAbs(50.0, 0.1));
    CHECK_THAT(label_on(second, "S").x, WithinAbs(-50.0, 0.1));
    const auto count = [](const std::string& text, const std::string& part) {
        std::size_t found = 0;
        for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
            ++found;
        return found;
    };
    CHECK(count(first, "class=\"ws changed\"") == 3);
    CHECK(count(first, "class=\"ws either\"") == 2);
    CHECK(count(second, "class=\"ws changed\"") == 0);
    CHECK(count(second, "class=\"ws either\"") == 0);
    CHECK(count(second, "class=\"ws settled\"") == 1);
    CHECK(holds(second, "7-iron in still air, 6-iron with the wind from W"));
    CardFixture calm = two_hole_card();
    calm.card.holes[1].wind_from.fill(calm.card.holes[1].still);
    CHECK(holds(wind_rose(calm.view(), 1, "r2"), "no wind changes the club"));
}

}  // namespace
}  // namespace landwidth
