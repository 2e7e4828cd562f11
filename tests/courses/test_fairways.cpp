// Whose fairway it is, and what a course that lacks something says of itself.
#include "courses/survey/hole_survey.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

std::optional<FairwayCut> fairway_at(const Course& course, const std::string& ref, int station_yd) {
    const HoleSurvey survey = survey_hole(hole_of(course, ref));
    for (const Transect& transect : survey.transects) {
        if (std::abs(transect.station_m - Yards{static_cast<double>(station_yd)}.metres()) < 0.01)
            return transect.fairway;
    }
    FAIL("no such station");
    return std::nullopt;
}

double width_at(const Course& course, const std::string& ref, int station_yd) {
    const auto fairway = fairway_at(course, ref, station_yd);
    REQUIRE(fairway.has_value());
    return fairway->width_m();
}

// Two holes side by side, 80 m apart; the second has a fairway.
MapBuilder two_holes() {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 350});
    map.hole("2", {80, 350}, {80, 0});
    map.area(rectangle({80, 175}, 30, 250), {{"golf", "fairway"}});
    return map;
}

}  // namespace

TEST_CASE("a neighbour's fairway is no landing width", "[fairways]") {
    const Course course = two_holes().assemble();
    REQUIRE_FALSE(fairway_at(course, "1", 200).has_value());
    REQUIRE(std::abs(width_at(course, "2", 200) - 30.0) < 0.01);
    const std::vector<Finding> missing = findings_of(course.findings, "fairway-missing");
    REQUIRE(missing.size() == 1);
    REQUIRE(missing.front().hole == "1");
    REQUIRE(missing.front().severity == Severity::warning);
    // To a ball it is fairway all the same.
    REQUIRE(hole_of(course, "1").lies.lie_at({80, 175}) == Lie::fairway);
}

TEST_CASE("fairways that touch are told apart", "[fairways]") {
    MapBuilder map = two_holes();
    map.area(rectangle({30, 175}, 70, 250), {{"golf", "fairway"}});
    const Course course = map.assemble();
    REQUIRE(std::abs(width_at(course, "1", 200) - 70.0) < 0.01);
    REQUIRE(std::abs(width_at(course, "2", 200) - 30.0) < 0.01);
}

TEST_CASE("a double fairway is both holes'", "[fairways]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 350});
    map.hole("2", {50, 350}, {50, 0});
    map.area(rectangle({25, 175}, 90, 250), {{"golf", "fairway"}});
    const Course course = map.assemble();
    REQUIRE(std::abs(width_at(course, "1", 200) - 90.0) < 0.01);
    REQUIRE(std::abs(width_at(course, "2", 200) - 90.0) < 0.01);
}

TEST_CASE("a fairway no line runs through is the nearest hole's", "[fairways]") {
    MapBuilder map = two_holes();
    map.area(rectangle({20, 175}, 20, 100), {{"golf", "fairway"}});
    const Course course = map.assemble();
    REQUIRE(std::abs(width_at(course, "1", 200) - 20.0) < 0.01);
    const std::vector<Finding> beside = findings_of(course.findings, "fairway-missing");
    REQUIRE(beside.size() == 1);
    REQUIRE(beside.front().message == "the hole's fairway lies beside its line of play all the way");
}

TEST_CASE("a line that cuts a corner does not own the fairway", "[fairways]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 350});
    map.hole("2", {80, 350}, {80, 0});
    // The second hole's fairway has a tongue of 20 m across the first hole's line.
    map.area({{-5, 40}, {95, 40}, {95, 300}, {65, 300}, {65, 60}, {-5, 60}}, {{"golf", "fairway"}});
    REQUIRE_FALSE(fairway_at(map.assemble(), "1", 200).has_value());
}

TEST_CASE("a neighbour's green is no landing width", "[fairways]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 350});
    map.hole("2", {40, 500}, {40, 183});
    const Course course = map.assemble();
    REQUIRE(hole_of(course, "1").lies.lie_at({40, 183}) == Lie::fairway);
    REQUIRE_FALSE(fairway_at(course, "1", 200).has_value());
}

TEST_CASE("a course that lacks bunkers or water says so", "[fairways]") {
    MapBuilder map = two_holes();
    const Course bare = map.assemble();
    REQUIRE(has(bare.findings, "bunkers-missing", Severity::warning));
    REQUIRE(has(bare.findings, "water-missing", Severity::note));
    map.area(rectangle({20, 200}, 8, 8), {{"golf", "bunker"}});
    map.line({{-30, 0}, {-30, 300}}, {{"waterway", "stream"}});
    const Course full = map.assemble();
    REQUIRE(findings_of(full.findings, "bunkers-missing").empty());
    REQUIRE(findings_of(full.findings, "water-missing").empty());
    // A par 3 needs no fairway.
    MapBuilder short_hole;
    short_hole.hole("1", {0, 0}, {0, 150});
    REQUIRE(findings_of(short_hole.assemble().findings, "fairway-missing").empty());
}

TEST_CASE("a map with nothing but lines of holes", "[fairways]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 300}}, {{"golf", "hole"}, {"ref", "1"}});
    map.line({{100, 0}, {100, 300}}, {{"golf", "hole"}, {"ref", "2"}});
    map.area(rectangle({50, 150}, 20, 20), {{"natural", "wood"}});
    const Course course = map.assemble();
    REQUIRE(course.holes.empty());
    REQUIRE(has(course.findings, "ground-missing", Severity::warning));
}

TEST_CASE("a fairway that bears a number is that hole's", "[fairways]") {
    MapBuilder map = two_holes();
    map.area(rectangle({10, 175}, 40, 250), {{"golf", "fairway"}, {"ref", "2"}});
    const Course course = map.assemble();
    REQUIRE_FALSE(fairway_at(course, "1", 200).has_value());
    REQUIRE(has(course.findings, "fairway-missing", Severity::warning));
}
