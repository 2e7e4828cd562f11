// Maps cut by the box of an export: what is in reach is built, and nothing is lost without a finding.
#include <set>

#include "courses/reading/cut_areas.hpp"
#include "courses/reading/osm_file.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"
#include "tests/courses/osm_conversion.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

// Two holes within the box (-300..300 across, -100..500 along). A lake comes in from the west, of four ways;
// a wood, whose clearing holds hole 2, reaches beyond three sides; hole 3 runs out to the north; a wood of
// one way and the course's boundary are cut as well.
MapBuilder course_at_the_edge() {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    map.hole("2", {200, 0}, {200, 300});
    map.hole("3", {-100, 300}, {-100, 700});
    const auto line = [&](const std::vector<Point>& points) { return map.line(points, {}); };
    // Ways and relations start in the box: osmium-tool 1.15's strategy "simple" keeps no others.
    const long shore_1 = line({{-120, 160}, {-200, 120}, {-400, 100}});
    const long shore_2 = line({{-120, 160}, {-130, 200}, {-220, 240}, {-420, 260}});
    const long far_1 = line({{-420, 260}, {-900, 300}});
    const long far_2 = line({{-900, 300}, {-900, 90}, {-400, 100}});
    map.relation({{shore_1, "outer"}, {shore_2, "outer"}, {far_1, "outer"}, {far_2, "outer"}},
                 {{"type", "multipolygon"}, {"natural", "water"}, {"name", "Cutwater"}});
    const long edge_1 = line({{95, 200}, {90, 0}, {80, -400}});
    const long edge_2 = line({{95, 200}, {100, 400}, {90, 900}});
    const long edge_3 = line({{90, 900}, {900, 900}, {900, -400}, {80, -400}});
    const long clearing = map.area(rectangle({200, 150}, 100, 400), {});
    map.relation({{edge_1, "outer"}, {edge_2, "outer"}, {edge_3, "outer"}, {clearing, "inner"}},
                 {{"type", "multipolygon"}, {"natural", "wood"}});
    map.area({{-60, -90}, {-40, -300}, {-300, -300}, {-250, -60}}, {{"natural", "scrub"}});
    map.area({{-280, -90}, {280, -90}, {280, 720}, {-280, 720}},
             {{"leisure", "golf_course"}, {"name", "Edge"}});
    return map;
}

std::string box_of(const MapBuilder& map) {
    const LonLat low = map.lonlat({-300, -100});
    const LonLat high = map.lonlat({300, 500});
    const auto text = [](double value) { return std::to_string(value); };
    return text(low.lon_deg) + "," + text(low.lat_deg) + "," + text(high.lon_deg) + "," + text(high.lat_deg);
}

bool covers(const MapData& map, const std::string& id, LonLat place) {
    for (const MapFeature& feature : map.features) {
        if (feature.id != id) continue;
        const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
        if (polygons == nullptr) return false;
        for (const LonLatPolygon& polygon : *polygons) {
            bool in = is_inside(place, polygon.outer);
            for (const LonLatPath& inner : polygon.inners)
                in = in && !is_inside(place, inner);
            if (in) return true;
        }
    }
    return false;
}

std::set<std::string> told(const MapData& map) {
    std::set<std::string> ids;
    for (const Finding& finding : map.findings)
        ids.insert(finding.feature);
    return ids;
}

}  // namespace

TEST_CASE("cuts of every strategy lose nothing without a word", "[osm]") {
    const TemporaryFolder folder;
    const MapBuilder builder = course_at_the_edge();
    const std::filesystem::path source = folder.write("whole.osm", builder.osm());
    const MapData whole = read_map(source);
    REQUIRE(whole.findings.empty());
    const auto at = [&](double x, double y) { return builder.lonlat({x, y}); };

    for (const char* strategy : {"simple", "complete_ways", "smart"}) {
        const std::string name = std::string(strategy) + ".osm";
        run_osmium(std::string("extract -s ") + strategy + " -b " + box_of(builder) + " --set-bounds " +
                   source.string() + " -o " + (folder.path() / name).string());
        const OsmElements elements = read_osm_file(OsmFormat::xml, (folder.path() / name).string(), name);
        REQUIRE(elements.box.has_value());
        run_osmium("cat " + (folder.path() / name).string() + " -o " +
                   (folder.path() / (name + ".pbf")).string());
        folder.write(name + ".json", osm_json(elements, JsonStyle::nodes));
        folder.write(name + ".positions.json", osm_json(elements, JsonStyle::positions));

        std::vector<std::string> first;
        for (const char* ending : {"", ".pbf", ".json", ".positions.json"}) {
            INFO(name << ending);
            const MapData cut = read_map(folder.path() / (name + ending));
            // The lake, the wood around hole 2 and the wood of one way lie where they lie, up to the box.
            const std::string lake = "relation/5001";
            CHECK(covers(cut, lake, at(-180, 180)));
            CHECK(covers(cut, lake, at(-290, 180)));
            CHECK_FALSE(covers(cut, lake, at(-100, 180)));
            CHECK_FALSE(covers(cut, lake, at(-290, 50)));
            CHECK_FALSE(covers(cut, lake, at(-290, 320)));
            const std::string wood = "relation/5002";
            CHECK(covers(cut, wood, at(120, 200)));
            CHECK(covers(cut, wood, at(290, 450)));
            CHECK(covers(cut, wood, at(290, -90)));
            CHECK_FALSE(covers(cut, wood, at(200, 150)));
            CHECK_FALSE(covers(cut, wood, at(0, 150)));
            CHECK_FALSE(covers(cut, wood, at(-290, 450)));
            // Whatever was in the box and is not as it was has a finding.
            std::map<std::string, const MapFeature*> there;
            for (const MapFeature& feature : cut.features)
                there.emplace(feature.id, &feature);
            const std::set<std::string> named = told(cut);
            for (const MapFeature& feature : whole.features) {
                INFO(feature.id);
                const auto found = there.find(feature.id);
                if (found != there.end() && found->second->shape.index() == feature.shape.index() &&
                    found->second->points_missing == 0) {
                    bool same = true;
                    if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape)) {
                        const auto& others = std::get<std::vector<LonLatPolygon>>(found->second->shape);
                        same = others.size() == polygons->size() &&
                               others.front().outer.size() == polygons->front().outer.size();
                    }
                    CHECK((same || named.contains(feature.id)));
                } else if (found != there.end()) {
                    CHECK((found->second->points_missing > 0 || named.contains(feature.id)));
                } else {
                    const std::optional<LonLat> place = place_of(feature.shape);
                    CHECK((named.contains(feature.id) || !elements.box->contains(*place)));
                }
            }
            // The same, whatever the format.
            std::vector<std::string> findings;
            for (const Finding& finding : cut.findings)
                findings.push_back(finding.code + " " + std::string(severity_name(finding.severity)) + " " +
                                   finding.feature + " " + finding.message);
            if (first.empty()) first = findings;
            CHECK(findings == first);

            const Course course = assemble_course(cut, {}, assumptions());
            if (strategy == std::string("simple")) {
                CHECK(has(cut.findings, "relation-cut", Severity::warning));
                CHECK(has(cut.findings, "boundary-cut", Severity::warning));
                CHECK(has(cut.findings, "points-missing", Severity::warning));
                const std::vector<Finding> errors = findings_of(course.findings, "hole-points-missing");
                REQUIRE(errors.size() == 1);
                CHECK(errors.front().severity == Severity::error);
                CHECK(errors.front().hole == "3");
                CHECK(course.holes.size() == 2);
            }
        }
    }
}

TEST_CASE("a cut that does not say its box", "[osm]") {
    const TemporaryFolder folder;
    const MapBuilder builder = course_at_the_edge();
    const std::filesystem::path source = folder.write("whole.osm", builder.osm());
    const auto at = [&](double x, double y) { return builder.lonlat({x, y}); };
    for (const char* strategy : {"simple", "complete_ways"}) {
        INFO(strategy);
        const std::filesystem::path file = folder.path() / (std::string(strategy) + ".osm.pbf");
        run_osmium(std::string("extract -s ") + strategy + " -b " + box_of(builder) + " " + source.string() +
                   " -o " + file.string());
        const MapData cut = read_map(file);
        REQUIRE_FALSE(cut.extent->stated);
        CHECK(findings_of(cut.findings, "relation-cut").size() == 2);
        CHECK(covers(cut, "relation/5001", at(-180, 180)));
        CHECK_FALSE(covers(cut, "relation/5001", at(-100, 180)));
        CHECK(covers(cut, "relation/5002", at(120, 200)));
        CHECK_FALSE(covers(cut, "relation/5002", at(200, 150)));
        CHECK_FALSE(covers(cut, "relation/5002", at(0, 150)));
    }
}

TEST_CASE("the side of a cut area is the one without golf", "[osm]") {
    const MapExtent box{0.0, 0.0, 0.1, 0.1, true};
    const OutlinePart shore{{{0.05, -0.02}, {0.05, 0.05}, {0.06, 0.12}}, RingRole::outer};
    const auto west_or_east = [&](const std::vector<LonLat>& golf) {
        const CutArea area = cut_area({shore}, box, golf);
        REQUIRE(area.along_box);
        REQUIRE(area.polygons.size() == 1);
        const bool west = is_inside({0.01, 0.05}, area.polygons.front().outer);
        REQUIRE(west != is_inside({0.09, 0.05}, area.polygons.front().outer));
        return west ? "west" : "east";
    };
    REQUIRE(west_or_east({{0.02, 0.02}}) == std::string("east"));
    REQUIRE(west_or_east({{0.08, 0.02}}) == std::string("west"));
    REQUIRE(west_or_east({{0.08, 0.02}, {0.02, 0.02}, {0.09, 0.09}}) == std::string("west"));
    // Without golf an inner ring tells, then the smaller side is taken.
    REQUIRE(west_or_east({}) == std::string("east"));
    const OutlinePart island{{{0.01, 0.01}, {0.02, 0.01}, {0.02, 0.02}, {0.01, 0.01}}, RingRole::inner};
    const CutArea with_island = cut_area({shore, island}, box, {});
    REQUIRE(is_inside({0.01, 0.05}, with_island.polygons.front().outer));
    REQUIRE(with_island.polygons.front().inners.size() == 1);
}

TEST_CASE("areas cut by no box, and by a box on all sides", "[osm]") {
    // Two of four sides of a square, apart: closed the shortest way.
    const OutlinePart left{{{0.0, 0.0}, {0.0, 0.01}}, RingRole::outer};
    const OutlinePart right{{{0.02, 0.01}, {0.02, 0.0}}, RingRole::outer};
    const CutArea square = cut_area({left, right}, std::nullopt, {});
    REQUIRE_FALSE(square.along_box);
    REQUIRE(square.polygons.size() == 1);
    REQUIRE_THAT(degree_area(square.polygons.front().outer), Catch::Matchers::WithinRel(0.0002, 1e-9));
    // Nothing of the outer ring is there: the box lies within it, unless golf says otherwise.
    const MapExtent box{0.0, 0.0, 0.1, 0.1, true};
    const OutlinePart clearing{{{0.04, 0.04}, {0.06, 0.04}, {0.06, 0.06}, {0.04, 0.06}, {0.04, 0.04}},
                               RingRole::inner};
    const CutArea around = cut_area({clearing}, box, {{0.05, 0.05}});
    REQUIRE(around.polygons.size() == 1);
    REQUIRE(around.polygons.front().inners.size() == 1);
    REQUIRE(cut_area({clearing}, box, {{0.01, 0.01}}).polygons.empty());
    // A corner of the box within the area, and two stretches through it.
    const OutlinePart corner{{{-0.01, 0.03}, {0.03, -0.01}}, RingRole::outer};
    const OutlinePart other{{{0.11, 0.07}, {0.07, 0.11}}, RingRole::outer};
    const CutArea corners = cut_area({corner, other}, box, {{0.05, 0.05}});
    REQUIRE(corners.polygons.size() == 2);
    REQUIRE(is_inside({0.005, 0.005}, corners.polygons[0].outer) !=
            is_inside({0.005, 0.005}, corners.polygons[1].outer));
    REQUIRE(cut_area({corner, other}, box, {{0.001, 0.001}, {0.099, 0.099}}).polygons.size() == 1);
    // A gap in the middle of the box is bridged, not led to its edge.
    const OutlinePart gap{{{0.05, 0.05}, {0.06, 0.05}, {0.06, 0.06}, {0.0501, 0.0502}}, RingRole::unsaid};
    const CutArea bridged = cut_area({gap}, box, {});
    REQUIRE_FALSE(bridged.along_box);
    REQUIRE(bridged.polygons.front().outer.size() == 5);
    REQUIRE(cut_area({}, box, {}).polygons.empty());
}
