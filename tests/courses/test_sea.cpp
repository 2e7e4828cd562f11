// The sea from coastlines: land on the left of the line, water on its right.
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

const TagList coast{{"natural", "coastline"}};

Lie lie_at(const Course& course, Point p) {
    REQUIRE(course.holes.size() == 1);
    return course.holes.front().lies.lie_at(p);
}

std::vector<Point> reversed(std::vector<Point> path) {
    return {path.rbegin(), path.rend()};
}

std::vector<Point> closed(std::vector<Point> ring) {
    ring.push_back(ring.front());
    return ring;
}

// The map with an edge of its own, in metres of the plane.
Course with_edge(const MapBuilder& map, Point south_west, Point north_east) {
    MapData data = map.read();
    const LonLat a = map.lonlat(south_west);
    const LonLat b = map.lonlat(north_east);
    data.extent = MapExtent{a.lon_deg, a.lat_deg, b.lon_deg, b.lat_deg, true};
    return assemble_course(data, {}, assumptions());
}

}  // namespace

TEST_CASE("the sea lies to the right of a coastline", "[sea]") {
    MapBuilder map = straight_hole();
    map.line({{60, -2000}, {60, 2000}}, coast);
    const Course course = map.assemble();
    REQUIRE(lie_at(course, {59, 150}) == Lie::rough);
    REQUIRE(lie_at(course, {61, 150}) == Lie::penalty_red);
    REQUIRE(lie_at(course, {0, 150}) == Lie::rough);
    REQUIRE(has(course.findings, "sea-as-red", Severity::note));
    REQUIRE(findings_of(course.findings, "coastline-ends").empty());
    // Far away it changes nothing.
    MapBuilder inland = straight_hole();
    inland.line({{2000, -2000}, {2000, 2000}}, coast);
    REQUIRE(findings_of(inland.assemble().findings, "sea-as-red").empty());
}

TEST_CASE("a coastline the wrong way round is turned", "[sea]") {
    MapBuilder map = straight_hole();
    map.line({{60, 2000}, {60, -2000}}, coast);
    const Course course = map.assemble();
    REQUIRE(lie_at(course, {61, 150}) == Lie::penalty_red);
    REQUIRE(lie_at(course, {0, 150}) == Lie::rough);
    REQUIRE(has(course.findings, "coastline-turned-round", Severity::warning));
}

TEST_CASE("a coastline cut at the edge of the map", "[sea]") {
    MapBuilder map = straight_hole();
    map.line({{60, -50}, {60, 350}}, coast);
    const Course told = with_edge(map, {-100, -50}, {100, 350});
    REQUIRE(lie_at(told, {80, 340}) == Lie::penalty_red);
    // Nobody knows what is beyond the edge.
    REQUIRE(lie_at(told, {80, 360}) == Lie::rough);
    REQUIRE(findings_of(told.findings, "coastline-ends").empty());

    // Without an edge the coastline goes on straight, which is said.
    const Course untold = map.assemble();
    REQUIRE(lie_at(untold, {80, 360}) == Lie::penalty_red);
    REQUIRE(lie_at(untold, {40, 360}) == Lie::rough);
    REQUIRE(has(untold.findings, "coastline-ends", Severity::warning));
}

TEST_CASE("two islands with a sound between them", "[sea]") {
    MapBuilder map = straight_hole();
    // Closed counterclockwise: the land inside.
    map.line(closed({{-400, -400}, {400, -400}, {400, 140}, {-400, 140}}), coast);
    map.line(closed({{-400, 160}, {400, 160}, {400, 700}, {-400, 700}}), coast);
    const Course course = map.assemble();
    REQUIRE(lie_at(course, {0, 100}) == Lie::rough);
    REQUIRE(lie_at(course, {0, 150}) == Lie::penalty_red);
    REQUIRE(lie_at(course, {0, 200}) == Lie::rough);
    REQUIRE(findings_of(course.findings, "coastline-contradicts").empty());

    // One of them drawn the wrong way: the shores contradict each other.
    MapBuilder slip = straight_hole();
    slip.line(closed({{-400, -400}, {400, -400}, {400, 140}, {-400, 140}}), coast);
    slip.line(reversed(closed({{-400, 160}, {400, 160}, {400, 700}, {-400, 700}})), coast);
    const Course wrong = slip.assemble();
    REQUIRE(has(wrong.findings, "coastline-contradicts", Severity::warning));
    REQUIRE(has(wrong.findings, "hole-in-the-sea", Severity::warning));
}

TEST_CASE("a coastline in parts is one", "[sea]") {
    MapBuilder map = straight_hole();
    map.line({{60, -2000}, {60, 100}}, coast);
    map.line({{60, 100}, {70, 120}, {60, 2000}}, coast);
    const Course course = map.assemble();
    REQUIRE(lie_at(course, {64, 120}) == Lie::rough);
    REQUIRE(lie_at(course, {80, 120}) == Lie::penalty_red);
    REQUIRE(findings_of(course.findings, "coastline-ends").empty());
}

TEST_CASE("beaches, fences, walls and hedges in play are told", "[sea]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({40, 100}, 20, 20), {{"natural", "beach"}});
    map.line({{30, 0}, {30, 300}}, {{"barrier", "fence"}});
    map.line({{-30, 0}, {-30, 300}}, {{"barrier", "wall"}});
    map.area(rectangle({0, 200}, 10, 2), {{"barrier", "hedge"}});
    map.line({{130, 0}, {130, 300}}, {{"barrier", "fence"}});
    map.line({{20, 0}, {20, 300}}, {{"barrier", "kerb"}});
    const Course course = map.assemble();
    const std::vector<Finding> told = findings_of(course.findings, "in-play");
    REQUIRE(told.size() == 4);
    for (const Finding& finding : told)
        REQUIRE(finding.severity == Severity::note);
    REQUIRE(lie_at(course, {40, 100}) == Lie::rough);
}

TEST_CASE("a map's own edge is read where it says so", "[sea]") {
    const TemporaryFolder folder;
    MapBuilder map = straight_hole();
    std::string osm = map.osm();
    const auto box_of = [&folder](const std::string& name, const std::string& text) {
        return read_map(folder.write(name, text)).stated_extent();
    };
    REQUIRE_FALSE(box_of("bare.osm", osm).has_value());
    const std::size_t first = osm.find("<node");
    osm.insert(first, R"(<bounds minlat="45.9" minlon='-33.1' maxlat="46.1" maxlon="-32.9"/>)");
    const std::optional<MapExtent> box = box_of("edge.osm", osm);
    REQUIRE(box.has_value());
    REQUIRE(box->west == -33.1);
    REQUIRE(box->south == 45.9);
    REQUIRE(box->east == -32.9);
    REQUIRE(box->north == 46.1);
    const std::string feature =
        R"({"type":"Feature","properties":{"golf":"hole"},"geometry":{"type":"LineString","coordinates":[[-33,46],[-33,46.003]]}})";
    const auto geojson = [&feature](const std::string& head) {
        return R"({"type":"FeatureCollection",)" + head + R"("features":[)" + feature + "]}";
    };
    REQUIRE(box_of("edge.geojson", geojson(R"("bbox":[-33.1, 45.9, -32.9, 46.1],)"))->north == 46.1);
    // One that makes no sense is none.
    for (const char* head : {"", R"("bbox":[1,2,3],)", R"("bbox":[5,6,5,6],)", R"("bbox":[0,0,999,1],)"})
        REQUIRE_FALSE(box_of("odd.geojson", geojson(head)).has_value());
}

TEST_CASE("ground in reach beyond the edge of the map is told, unless it is out of bounds", "[sea]") {
    MapBuilder map = straight_hole();
    REQUIRE(findings_of(map.assemble().findings, "map-edge").empty());
    REQUIRE(findings_of(with_edge(map, {-200, -200}, {200, 500}).findings, "map-edge").empty());
    const std::vector<Finding> told =
        findings_of(with_edge(map, {-200, -200}, {40, 500}).findings, "map-edge");
    REQUIRE(told.size() == 1);
    REQUIRE(told.front().severity == Severity::warning);
    REQUIRE(told.front().message.find("the map ends 40 m beside") == 0);
    map.area(rectangle({0, 150}, 70, 400), {{"leisure", "golf_course"}});
    REQUIRE(findings_of(with_edge(map, {-200, -200}, {40, 500}).findings, "map-edge").empty());
}

TEST_CASE("golf ground that reaches into the sea is told", "[sea]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({0, 150}, 60, 100), {{"golf", "fairway"}});
    map.line({{20, -2000}, {20, 2000}}, coast);
    const std::vector<Finding> told = findings_of(map.assemble().findings, "overlap-unclear");
    REQUIRE(told.size() == 1);
    CHECK(told.front().message.find("golf=fairway reaches over the coastline") == 0);
}
