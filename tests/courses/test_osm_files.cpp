// OpenStreetMap files as real exports write them.
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

// A hole of 300 m with tee, green and pin, element by element.
const std::string nodes =
    R"(<node id="1" lat="46" lon="-33"/><node id="2" lat="46.0027" lon="-33"/>
<node id="3" lat="46.00265" lon="-33.0001"/><node id="4" lat="46.00265" lon="-32.9999"/>
<node id="5" lat="46.0028" lon="-32.9999"/><node id="6" lat="46.0028" lon="-33.0001"/>
<node id="7" lat="46.0027" lon="-33"><tag k="golf" v="pin"/></node>
)";
const std::string hole =
    R"(<way id="10"><nd ref="1"/><nd ref="2"/><tag k="golf" v="hole"/><tag k="ref" v="1"/></way>
)";
const std::string green =
    R"(<way id="11"><nd ref="3"/><nd ref="4"/><nd ref="5"/><nd ref="6"/><nd ref="3"/><tag k="golf" v="green"/></way>
)";

std::string osm(const std::string& elements) {
    return "<?xml version=\"1.0\"?><osm version=\"0.6\">" + elements + "</osm>";
}

MapData read(const std::string& text) {
    const TemporaryFolder folder;
    return read_map(folder.write("export.osm", text));
}

void check_whole(const MapData& map) {
    const Course course = assemble_course(map, {}, assumptions());
    REQUIRE(course.holes.size() == 1);
    REQUIRE(course.holes.front().feature == "way/10");
    REQUIRE(course.holes.front().lies.region(Lie::green).area() > 200.0);
    REQUIRE_FALSE(has(course.findings, "pin-inferred", Severity::note));
}

}  // namespace

TEST_CASE("elements in any order, doubled, deleted, with ids of an editor", "[osm]") {
    check_whole(read(osm(nodes + hole + green)));
    check_whole(read(osm(hole + green + nodes)));
    check_whole(read(osm(green + nodes + hole)));
    // Overpass: tags first, then the skeleton of everything once more.
    check_whole(read(osm(nodes + hole + green + nodes)));
    const std::string relation =
        R"(<relation id="20"><member type="way" ref="11" role="outer"/><tag k="type" v="multipolygon"/><tag k="golf" v="fairway"/></relation>)";
    check_whole(read(osm(relation + hole + green + nodes)));

    std::string deleted = hole;
    deleted.replace(deleted.find("id=\"10\""), 7, "id=\"12\" action=\"delete\"");
    const MapData map = read(osm(nodes + hole + green + deleted));
    check_whole(map);
    REQUIRE(has(map.findings, "elements-deleted", Severity::note));

    std::string negative = nodes + hole + green;
    for (const char* key : {"id=\"", "ref=\""}) {
        for (std::size_t at = 0; (at = negative.find(key, at)) != std::string::npos;) {
            at += std::string(key).size();
            negative.insert(at, "-");
        }
    }
    // The ref tag of the hole keeps its value: it is written v="1".
    const Course course = assemble_course(read(osm(negative)), {}, assumptions());
    REQUIRE(course.holes.size() == 1);
    REQUIRE(course.holes.front().feature == "way/-10");
}

TEST_CASE("positions inside the ways, as Overpass writes with out geom", "[osm]") {
    const auto nd = [](const char* ref, const char* lat, const char* lon) {
        return std::string("<nd ") + ref + " lat=\"" + lat + "\" lon=\"" + lon + "\"/>";
    };
    const std::string line =
        R"(<way id="10"><bounds minlat="46" minlon="-33" maxlat="46.0027" maxlon="-33"/>)" +
        nd("ref=\"1\"", "46", "-33") + nd("ref=\"2\"", "46.0027", "-33") +
        R"(<tag k="golf" v="hole"/><tag k="ref" v="1"/></way>)";
    const std::string pin = R"(<node id="7" lat="46.0027" lon="-33"><tag k="golf" v="pin"/></node>)";
    const std::string multipolygon =
        R"(<relation id="20"><member type="way" ref="11" role="outer">)" + nd("", "46.00265", "-33.0001") +
        nd("", "46.00265", "-32.9999") + nd("", "46.0028", "-32.9999") + nd("", "46.0028", "-33.0001") +
        nd("", "46.00265", "-33.0001") +
        R"(</member><tag k="type" v="multipolygon"/><tag k="golf" v="green"/></relation>)";
    check_whole(read(osm(line + pin + multipolygon)));
}

TEST_CASE("what the export left out is reported", "[osm]") {
    const std::string incomplete =
        R"(<relation id="20"><member type="way" ref="99" role="outer"/><tag k="type" v="multipolygon"/><tag k="golf" v="fairway"/></relation>)";
    const MapData map = read(osm(nodes + hole + green + incomplete));
    check_whole(map);
    const std::vector<Finding> relations = findings_of(map.findings, "relation-incomplete");
    REQUIRE(relations.size() == 1);
    REQUIRE(relations.front().severity == Severity::warning);
    REQUIRE(relations.front().feature == "relation/20");
    REQUIRE(relations.front().message.find("way/99") != std::string::npos);

    const std::string open_way = R"(<way id="12"><nd ref="3"/><nd ref="4"/><nd ref="5"/></way>)";
    const std::string open_ring =
        R"(<relation id="20"><member type="way" ref="12" role="outer"/><tag k="type" v="multipolygon"/><tag k="golf" v="fairway"/></relation>)";
    const MapData open = read(osm(nodes + hole + green + open_way + open_ring));
    REQUIRE(findings_of(open.findings, "relation-incomplete").size() == 1);

    std::string clipped = green;
    clipped.replace(clipped.find("<nd ref=\"4\"/>"), 13, "<nd ref=\"77\"/>");
    const MapData short_of_points = read(osm(nodes + hole + clipped));
    const std::vector<Finding> points = findings_of(short_of_points.findings, "points-missing");
    REQUIRE(points.size() == 1);
    REQUIRE(points.front().feature == "way/11");

    const MapData timed_out =
        read(osm(nodes + hole + green + "<remark> runtime error: Query timed out </remark>"));
    const std::vector<Finding> remarks = findings_of(timed_out.findings, "export-incomplete");
    REQUIRE(remarks.size() == 1);
    REQUIRE(remarks.front().message.find("Query timed out") != std::string::npos);
}

TEST_CASE("what a .osm.pbf left out is reported as for any other format", "[osm]") {
    const std::filesystem::path file =
        std::filesystem::path(LANDWIDTH_TESTS_DIR) / "courses" / "data" / "incomplete.osm.pbf";
    const MapData map = read_map(file);
    const auto only = [](const std::vector<Finding>& findings, const char* code) {
        const std::vector<Finding> found = findings_of(findings, code);
        REQUIRE(found.size() == 1);
        return found.front();
    };
    const Finding points = only(map.findings, "points-missing");
    REQUIRE(points.feature == "way/1003");
    REQUIRE(points.severity == Severity::warning);
    REQUIRE(points.message.find("golf=fairway is cut: 1 of its 5 points") != std::string::npos);
    const Finding relation = only(map.findings, "relation-cut");
    REQUIRE(relation.feature == "relation/5001");
    REQUIRE(relation.severity == Severity::warning);
    REQUIRE(relation.message.find("1 of its 2 members") != std::string::npos);
    REQUIRE(relation.place.has_value());
    const Course course = assemble_course(map, {}, assumptions());
    REQUIRE(course.holes.size() == 1);
    const Finding hole_2 = only(course.findings, "hole-line-point");
    REQUIRE(hole_2.feature == "way/1004");
    REQUIRE(hole_2.severity == Severity::error);
}

TEST_CASE("multipolygons: inner rings, several outers, tags on the outer way", "[osm]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    const long outer = map.area(rectangle({0, 150}, 40, 100), {});
    const long inner = map.area(rectangle({0, 150}, 10, 10), {});
    const long outer_2 = map.area(rectangle({0, 230}, 40, 40), {});
    map.relation({{outer, "outer"}, {inner, "inner"}, {outer_2, "outer"}},
                 {{"type", "multipolygon"}, {"golf", "fairway"}});
    const Course course = map.assemble();
    // By hand: 40 x 100 - 10 x 10 + 40 x 40.
    REQUIRE_THAT(course.holes.front().lies.region(Lie::fairway).area(),
                 Catch::Matchers::WithinAbs(5500.0, 1.0));

    MapBuilder old;
    old.hole("1", {0, 0}, {0, 300});
    const long tagged = old.area(rectangle({0, 150}, 40, 100), {{"golf", "fairway"}});
    const long hole_in_it = old.area(rectangle({0, 150}, 10, 10), {});
    old.relation({{tagged, "outer"}, {hole_in_it, "inner"}}, {{"type", "multipolygon"}});
    old.area(rectangle({40, 150}, 10, 10), {{"golf", "bunker"}});
    old.area(rectangle({0, 150}, 200, 500), {{"leisure", "golf_course"}});
    const Course old_course = old.assemble();
    REQUIRE_THAT(old_course.holes.front().lies.region(Lie::fairway).area(),
                 Catch::Matchers::WithinAbs(3900.0, 1.0));
    for (const Finding& finding : old_course.findings)
        REQUIRE(finding.severity == Severity::note);
}

TEST_CASE("a closed way is an area where its tags say so, and only there", "[osm]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    for (const char* golf : {"fairway", "bunker", "rough", "water_hazard", "lateral_water_hazard", "tee"})
        map.area(rectangle({60, 100}, 10, 10), {{"golf", golf}, {"name", golf}});
    map.area(rectangle({0, 150}, 200, 200), {{"golf", "cartpath"}, {"highway", "path"}});
    map.area(rectangle({0, 150}, 220, 220), {{"waterway", "ditch"}});
    const MapData data = map.read();
    int areas = 0;
    int lines = 0;
    for (const MapFeature& feature : data.features) {
        if (std::holds_alternative<std::vector<LonLatPolygon>>(feature.shape)) ++areas;
        if (std::holds_alternative<std::vector<LonLatPath>>(feature.shape)) ++lines;
    }
    REQUIRE(areas == 8);  // six, and tee and green of the hole
    REQUIRE(lines == 3);  // the hole, the path, the ditch
}

TEST_CASE("an outline with a small gap is closed, a wide one is left out", "[osm]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    map.line({{-20, 100}, {20, 100}, {20, 200}, {-20, 200}, {-20, 103}}, {{"golf", "fairway"}});
    map.line({{30, 100}, {40, 100}, {40, 200}, {30, 200}}, {{"golf", "fairway"}});
    const Course course = map.assemble();
    REQUIRE_THAT(course.holes.front().lies.region(Lie::fairway).area(),
                 Catch::Matchers::WithinAbs(4000.0, 1.0));
    REQUIRE(has(course.findings, "ring-closed", Severity::warning));
    const std::vector<Finding> open = findings_of(course.findings, "area-open");
    REQUIRE(open.size() == 1);
    REQUIRE(open.front().severity == Severity::warning);
    REQUIRE(open.front().place.has_value());
}

TEST_CASE("the credit of a map is what its head says", "[osm]") {
    const std::string elements = nodes + hole + green + "</osm>";
    REQUIRE(
        read("<osm version=\"0.6\" copyright=\"OpenStreetMap and contributors\">" + elements).attribution ==
        "(c) OpenStreetMap contributors, ODbL");
    REQUIRE(read("<osm version=\"0.6\" copyright=\"invented by its tests\">" + elements).attribution ==
            "invented by its tests");
    REQUIRE(read("<osm version=\"0.6\">" + elements).attribution == "(c) OpenStreetMap contributors, ODbL");

    const TemporaryFolder folder;
    const std::string feature =
        R"("features":[{"type":"Feature","properties":{"golf":"hole"},"geometry":{"type":"LineString","coordinates":[[0,0],[0,0.002]]}}]})";
    REQUIRE(
        read_map(folder.write("a.geojson", R"({"type":"FeatureCollection",)" + feature)).attribution.empty());
    REQUIRE(read_map(folder.write("b.geojson",
                                  R"({"type":"FeatureCollection","copyright":"The committee",)" + feature))
                .attribution == "The committee");
}

TEST_CASE("nothing of a reading stays behind", "[osm]") {
    const TemporaryFolder folder;
    read_map(folder.write("export.osm", osm(hole + green + nodes)));
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
        files += entry.exists() ? 1 : 0;
    REQUIRE(files == 1);
}
