// One point far away from the others, in every kind of shape and form of file.
#include <cmath>

#include "courses/reading/stray_points.hpp"
#include "tests/catch.hpp"
#include "tests/courses/conversion.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

const TagList hole_tags{{"golf", "hole"}, {"ref", "1"}, {"par", "4"}};

// Metres from the tee; one point of the green is as far off to the east as asked.
MapBuilder hole_with_green(double off_m, std::size_t which = 3) {
    MapBuilder map;
    map.line({{0, 0}, {0, 150}, {0, 300}}, hole_tags);
    std::vector<Point> green = disc({0, 300}, 12);
    green[which].x += off_m;
    map.area(green, {{"golf", "green"}});
    return map;
}

double length_of(const Course& course) {
    REQUIRE(course.holes.size() == 1);
    return course.holes.front().line.length();
}

}  // namespace

TEST_CASE("a point of a green that lies far away is left out, and told", "[stray]") {
    for (const double off_m : {500.0, 5'000.0, 38'000.0, -38'000.0}) {
        INFO(off_m);
        const Course course = hole_with_green(off_m).assemble();
        REQUIRE(std::abs(length_of(course) - 300.0) < 3.0);
        REQUIRE(has(course.findings, "point-stray", Severity::warning));
    }
    REQUIRE(findings_of(hole_with_green(0.0).assemble().findings, "point-stray").empty());
    REQUIRE(findings_of(hole_with_green(30.0).assemble().findings, "point-stray").empty());
}

TEST_CASE("the point where a ring begins and ends may be the stray one", "[stray]") {
    const Course course = hole_with_green(5'000.0, 0).assemble();
    REQUIRE(std::abs(length_of(course) - 300.0) < 3.0);
    REQUIRE(course.holes.front().lies.region(Lie::green).area() > 380.0);
}

TEST_CASE("a stray point in the middle of a hole's line is left out, at its end the hole is refused",
          "[stray]") {
    MapBuilder middle;
    middle.line({{0, 0}, {4'000, 150}, {0, 300}}, hole_tags);
    middle.area(disc({0, 300}, 12), {{"golf", "green"}});
    REQUIRE(std::abs(length_of(middle.assemble()) - 300.0) < 1.0);
    REQUIRE(has(middle.assemble().findings, "point-stray", Severity::warning));

    MapBuilder end;
    end.line({{0, 0}, {0, 150}, {4'000, 300}}, hole_tags);
    end.area(disc({0, 300}, 12), {{"golf", "green"}});
    const Course refused = end.assemble();
    REQUIRE(refused.holes.empty());
    REQUIRE(has(refused.findings, "hole-length", Severity::error));
}

TEST_CASE("a stray point of land cover is told as its loss is", "[stray]") {
    const std::vector<std::pair<TagList, Severity>> kinds{{{{"natural", "water"}}, Severity::warning},
                                                          {{{"natural", "wood"}}, Severity::warning},
                                                          {{{"natural", "sand"}}, Severity::warning},
                                                          {{{"building", "yes"}}, Severity::note}};
    for (const auto& [tags, severity] : kinds) {
        INFO(tags.front().second);
        MapBuilder map = hole_with_green(0.0);
        map.area({{40, 200}, {60, 200}, {60, 240}, {50, 9'000}, {40, 240}}, tags);
        REQUIRE(has(map.assemble().findings, "point-stray", severity));
    }
}

TEST_CASE("a stray point of a lake or wood of any length is found, a large lake's own corner is not",
          "[stray]") {
    // 12 km round: five times that is further than the point lies.
    MapBuilder wood = hole_with_green(0.0);
    std::vector<Point> outline;
    for (int i = 0; i < 600; ++i)
        outline.push_back({2'000 + 1'900 * std::cos(i * 0.01047), 1'900 * std::sin(i * 0.01047)});
    outline[100].y += 9'000;
    wood.area(outline, {{"natural", "wood"}});
    const Course course = wood.assemble();
    REQUIRE(has(course.findings, "point-stray", Severity::warning));

    MapBuilder lake = hole_with_green(0.0);
    lake.area({{300, 0}, {2'000, 400}, {9'000, 450}, {2'000, 500}, {600, 2'500}}, {{"natural", "water"}});
    // A bay that narrows, drawn with points as far apart as everywhere on its shore.
    lake.area({{-300, 0}, {-800, 300}, {-1'900, 320}, {-3'000, 340}, {-1'900, 360}, {-800, 380}, {-400, 900}},
              {{"natural", "water"}});
    REQUIRE(findings_of(lake.assemble().findings, "point-stray").empty());
}

TEST_CASE("long spits of land and dog-legs are believed", "[stray]") {
    MapBuilder map;
    map.line({{0, 0}, {250, 10}, {260, 300}}, hole_tags);
    map.area(disc({260, 300}, 12), {{"golf", "green"}});
    map.area({{0, -100}, {300, -100}, {300, -90}, {900, -85}, {300, -80}, {0, -80}}, {{"natural", "water"}});
    REQUIRE(findings_of(map.assemble().findings, "point-stray").empty());
}

TEST_CASE("the same slip has the same finding in every form of file", "[stray]") {
    const TemporaryFolder folder;
    const std::filesystem::path source = folder.write("course.osm", hole_with_green(38'000.0).osm());
    const MapData original = read_map(source);
    REQUIRE(findings_of(original.findings, "point-stray").size() == 1);
    const std::string told = findings_of(original.findings, "point-stray").front().message;
    const std::vector<std::pair<std::string, std::vector<std::string>>> forms{
        {"course.gpkg", {"-f", "GPKG"}},
        {"course.kml", {"-f", "LIBKML"}},
        {"course.geojson", {"-f", "GeoJSON", "lines"}},
        {"course.fgb", {"-f", "FlatGeobuf", "lines"}},
        {"course.shp", {"-f", "ESRI Shapefile", "lines"}}};
    for (const auto& [name, arguments] : forms) {
        INFO(name);
        const MapData read = read_map(converted(source, folder.path() / name, arguments));
        const std::vector<Finding> stray = findings_of(read.findings, "point-stray");
        REQUIRE(stray.size() == 1);
        REQUIRE(stray.front().message == told);
        REQUIRE(stray.front().severity == Severity::warning);
    }
}
