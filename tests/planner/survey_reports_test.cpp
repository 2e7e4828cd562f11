#include "planner/reports/survey_reports.hpp"

#include <nlohmann/json.hpp>
#include <sstream>
#include <stdexcept>

#include "planner/reports/text_table.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

namespace landwidth {
namespace {

using fixture::hostile_names;
using fixture::PlanFixture;
using fixture::two_holes;
using Json = nlohmann::ordered_json;
using Keys = std::vector<std::string>;

// Hole 1: two transects, one of them without fairway; hole 2 is too short for any.
std::vector<HoleSurvey> surveys() {
    Transect wide;
    wide.station_m = Yards{150.0}.metres();
    wide.fairway = FairwayCut{Yards{-17.0}.metres(), Yards{15.0}.metres()};
    wide.left = Trouble{Yards{22.0}.metres(), Lie::penalty_red};
    Transect bare;
    bare.station_m = Yards{160.0}.metres();
    bare.left = Trouble{0.0, Lie::bunker};
    bare.right = Trouble{Yards{31.4}.metres(), Lie::out_of_bounds};
    return {{371.5, {wide, bare}}, {146.0, {}}};
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::string line_with(const std::string& text, const std::string& part) {
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        if (has(line, part)) return line;
    }
    return "";
}

Keys keys(const Json& object) {
    Keys names;
    for (const auto& item : object.items())
        names.push_back(item.key());
    return names;
}

TEST_CASE("a survey needs an entry a hole", "[survey_reports]") {
    const PlanFixture fixture = two_holes();
    CHECK_THROWS_AS(survey_text(fixture.course, {}, DisplayUnits::yards), std::logic_error);
    CHECK_THROWS_AS(survey_json(fixture.course, {}), std::logic_error);
}

TEST_CASE("a course without holes is still reported", "[survey_reports]") {
    PlanFixture fixture = two_holes();
    fixture.course.holes.clear();
    fixture.course.findings.clear();
    const std::string text = survey_text(fixture.course, {}, DisplayUnits::yards);
    CHECK(has(text, "No findings."));
    CHECK(has(text, "0 holes, par 0, 0 yd; 0 errors, 0 warnings, 0 notes."));
    CHECK(Json::parse(survey_json(fixture.course, {}))["holes"] == Json::array());
}

TEST_CASE("holes with their transects", "[survey_reports]") {
    const PlanFixture fixture = two_holes();
    const std::string text = survey_text(fixture.course, surveys(), DisplayUnits::yards);
    CHECK(has(text, "Hole 1, Long Ness: par 4, 406 yd, tee white, stroke index 5\n"));
    CHECK(has(text, "Hole 2: par 3 (inferred from the length), 160 yd, tee white\n"));
    const std::string wide = line_with(text, " 150 ");
    CHECK(has(wide, " 32 "));
    CHECK(has(wide, "17 left"));
    CHECK(has(wide, "15 right"));
    CHECK(has(wide, "22 red penalty area"));
    CHECK(wide.ends_with("  -"));
    const std::string bare = line_with(text, " 160 ");
    CHECK(has(bare, "no fairway"));
    CHECK(has(bare, "on the line: bunker"));
    CHECK(bare.ends_with("31 out of bounds"));
    CHECK(has(text, "shorter than 150 yd: nothing to measure"));
}

TEST_CASE("the same transects in metres", "[survey_reports]") {
    const PlanFixture fixture = two_holes();
    const std::string text = survey_text(fixture.course, surveys(), DisplayUnits::metres);
    CHECK(has(text, "par 4, 372 m"));
    const std::string wide = line_with(text, " 137 ");  // 150 yd = 137.16 m
    CHECK(has(wide, " 29 "));                           // 32 yd = 29.26 m
    CHECK(has(wide, "16 left"));
    CHECK(has(wide, "20 red penalty area"));
    CHECK(has(text, "shorter than 137 m"));
}

TEST_CASE("heights and slopes, where the ground is known", "[survey_reports]") {
    const PlanFixture fixture = two_holes();
    CHECK_FALSE(has(survey_text(fixture.course, surveys(), DisplayUnits::yards), "pin lies"));
    std::vector<HoleSurvey> known = surveys();
    known[0].rise_m = 3.66;
    known[0].ground = {{-2.4, 0.034, -0.0049}, {0.1, -0.02, 0.031}};
    known[1].rise_m = -0.1;
    const std::string text = survey_text(fixture.course, known, DisplayUnits::yards);
    CHECK(has(text, "  The pin lies 12 ft above the tee.\n"));
    CHECK(has(text, "  The pin lies level with the tee.\n"));
    CHECK(has(text, "  150  8 ft below    3 % up          level\n"));
    CHECK(has(text, "  160  level         2 % down        3 % down to the left\n"));
    CHECK(has(survey_text(fixture.course, known, DisplayUnits::metres), "The pin lies 4 m above the tee."));

    const Json survey = Json::parse(survey_json(fixture.course, known));
    CHECK(survey["holes"][0]["rise_ft"] == 12.0);
    CHECK(survey["holes"][0]["transects"][0]["ground"] ==
          Json{{"over_tee_ft", -7.9}, {"rise_along_percent", 3.4}, {"rise_to_right_percent", -0.5}});
    CHECK(survey["holes"][1]["rise_ft"] == -0.3);
}

TEST_CASE("findings say what, where and what to do, then a summary", "[survey_reports]") {
    PlanFixture fixture = two_holes();
    fixture.course.findings[0].place = LonLat{-20.5, -47.25};
    const std::string text = survey_text(fixture.course, surveys(), DisplayUnits::yards);
    CHECK(
        has(text,
            "warning  ring-repaired, hole 1, way/77, at 47.25000 S 20.50000 W: the outline of the bunker "));
    CHECK(has(text, "         To do: redraw it in the map.\n"));
    CHECK(has(text, "note     par-inferred, hole 2, way/102: the hole has no par;"));
    CHECK(has(text, "2 holes, par 7, 566 yd; 0 errors, 1 warning, 1 note.\n"));  // 517.5 m
    CHECK(has(text, "Map: holm.osm, invented data of the Landwidth tests\n"));
}

TEST_CASE("no line of a survey is wider than 100 columns", "[survey_reports]") {
    PlanFixture fixture = hostile_names();
    Finding finding;
    finding.message = std::string(300, 'm') + " \u00e9\u6f22\xff\x1b[0m";
    finding.feature = std::string(150, 'f');
    finding.advice = "one\ntwo";
    fixture.course.findings.push_back(finding);
    std::istringstream stream(survey_text(fixture.course, surveys(), DisplayUnits::metres));
    for (std::string line; std::getline(stream, line);) {
        CAPTURE(line);
        CHECK(display_width(line) <= 100);
        CHECK(line.find('\x1b') == std::string::npos);
    }
}

TEST_CASE("the survey as JSON", "[survey_reports]") {
    const PlanFixture fixture = two_holes();
    const std::string text = survey_json(fixture.course, surveys());
    CHECK(text == survey_json(fixture.course, surveys()));
    const Json survey = Json::parse(text);
    CHECK(keys(survey) == Keys{"format", "course", "summary", "holes", "findings"});
    CHECK(survey["format"] == "landwidth-survey/1");
    CHECK(survey["summary"] ==
          Json{{"holes", 2}, {"par", 7}, {"length_yd", 565.9}, {"errors", 0}, {"warnings", 1}, {"notes", 1}});
    const Json& hole = survey["holes"][0];
    CHECK(keys(hole) == Keys{"ref", "name", "feature", "par", "par_inferred", "stroke_index", "length_yd",
                             "tee", "transects"});
    CHECK(hole["length_yd"] == 406.3);
    CHECK(hole["transects"][0] == Json{{"station_yd", 150.0},
                                       {"landing_width_yd", 32.0},
                                       {"edges_yd", {{"left", -17.0}, {"right", 15.0}}},
                                       {"trouble_left", {{"lie", "penalty_red"}, {"distance_yd", 22.0}}},
                                       {"trouble_right", nullptr}});
    CHECK(hole["transects"][1] == Json{{"station_yd", 160.0},
                                       {"landing_width_yd", nullptr},
                                       {"edges_yd", nullptr},
                                       {"trouble_left", {{"lie", "bunker"}, {"distance_yd", 0.0}}},
                                       {"trouble_right", {{"lie", "out_of_bounds"}, {"distance_yd", 31.4}}}});
    CHECK(survey["holes"][1]["stroke_index"].is_null());
    CHECK(survey["holes"][1]["transects"] == Json::array());
    CHECK(keys(survey["findings"][0]) ==
          Keys{"severity", "code", "feature", "hole", "place", "message", "advice"});
    CHECK(survey["findings"][0]["place"] == Json{-20.0, 47.0});
    CHECK(survey["findings"][1]["place"].is_null());
    CHECK_NOTHROW(Json::parse(survey_json(hostile_names().course, surveys())));
}

}  // namespace
}  // namespace landwidth
