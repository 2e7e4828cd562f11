// Which green is a hole's own where lines and greens of several holes lie together.
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

void hole_line(MapBuilder& map, const std::string& ref, const std::vector<Point>& path) {
    map.line(path, {{"golf", "hole"}, {"ref", ref}, {"par", "4"}});
}

void green(MapBuilder& map, Point at) {
    map.area(disc(at, 12), {{"golf", "green"}});
}

void tee(MapBuilder& map, Point at) {
    map.area(rectangle(at, 10, 10), {{"golf", "tee"}});
}

std::string errors_of(const Course& course) {
    std::string codes;
    for (const Finding& finding : course.findings)
        if (finding.severity == Severity::error) codes += finding.code + " " + finding.hole + ";";
    return codes;
}

}  // namespace

TEST_CASE("a hole without its green is not turned round to a green behind its tee", "[ends]") {
    MapBuilder map;
    hole_line(map, "1", {{0, 0}, {0, 360}});
    tee(map, {0, 0});
    green(map, {0, -20});
    CHECK(errors_of(map.assemble()) == "green-missing 1;");
    // Drawn the other way it has a tee at its end, and is turned.
    MapBuilder turned;
    hole_line(turned, "1", {{0, 360}, {0, 0}});
    tee(turned, {0, 0});
    green(turned, {0, 360});
    CHECK(has(turned.assemble().findings, "line-turned-round", Severity::warning));
}

TEST_CASE("a hole without its green is not turned round to the green of the hole before", "[ends]") {
    MapBuilder map;
    hole_line(map, "1", {{0, 0}, {0, 360}});
    hole_line(map, "2", {{20, 375}, {20, 750}});
    green(map, {0, 360});
    const Course course = map.assemble();
    CHECK(errors_of(course) == "green-missing 2;");
    REQUIRE(course.holes.size() == 1);
}

TEST_CASE("a hole is played across another's green to its own", "[ends]") {
    MapBuilder map;
    hole_line(map, "1", {{0, 0}, {0, 360}});
    hole_line(map, "2", {{150, 220}, {0, 220}});
    green(map, {0, 360});
    green(map, {0, 220});
    const Course course = map.assemble();
    CHECK(hole_of(course, "1").line.length() > 355.0);
    CHECK(findings_of(course.findings, "line-past-green").empty());
}

TEST_CASE("two lines that point against each other are one hole", "[ends]") {
    MapBuilder map;
    hole_line(map, "1", {{0, 0}, {0, 200}});
    hole_line(map, "1", {{0, 360}, {0, 200}});
    tee(map, {0, 0});
    green(map, {0, 360});
    const Course course = map.assemble();
    CHECK(errors_of(course).empty());
    REQUIRE(course.holes.size() == 1);
    CHECK(course.holes.front().line.length() > 355.0);
    CHECK(has(course.findings, "line-in-parts", Severity::warning));
}
