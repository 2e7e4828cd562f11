// What lies where on a hole, and what is out of bounds.
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

const Hole& only(const Course& course) {
    REQUIRE(course.holes.size() == 1);
    return course.holes.front();
}

Lie lie_at(const Course& course, Point p) {
    return only(course).lies.lie_at(p);
}

auto near(double value, double margin = 0.5) {
    return Catch::Matchers::WithinAbs(value, margin);
}

}  // namespace

TEST_CASE("each tag gives its lie", "[ground]") {
    MapBuilder map = straight_hole();
    const std::vector<std::pair<TagList, Lie>> cases{
        {{{"golf", "fairway"}}, Lie::fairway},
        {{{"golf", "rough"}}, Lie::rough},
        {{{"golf", "bunker"}}, Lie::bunker},
        {{{"golf", "bunker"}, {"natural", "sand"}}, Lie::bunker},
        {{{"natural", "sand"}}, Lie::bunker},
        {{{"golf", "water_hazard"}, {"natural", "water"}}, Lie::penalty_yellow},
        {{{"golf", "lateral_water_hazard"}, {"natural", "water"}}, Lie::penalty_red},
        {{{"natural", "water"}}, Lie::penalty_red},
        {{{"landuse", "reservoir"}}, Lie::penalty_red},
        {{{"natural", "wood"}}, Lie::trees},
        {{{"landuse", "forest"}}, Lie::trees},
        {{{"natural", "scrub"}}, Lie::trees},
        {{{"natural", "heath"}}, Lie::rough},
        {{{"natural", "wetland"}}, Lie::rough},
        {{{"golf", "tee"}}, Lie::teeing_area},
        {{{"golf", "green"}}, Lie::fairway},
        {{{"golf", "driving_range"}}, Lie::rough},
        {{{"building", "yes"}}, Lie::rough},
    };
    double y = 40.0;
    for (const auto& [tags, lie] : cases)
        map.area(rectangle({60, y += 12.0}, 20, 8), tags);
    const Course course = map.assemble();
    y = 40.0;
    for (const auto& [tags, lie] : cases) {
        INFO(tags.front().first << "=" << tags.front().second);
        REQUIRE(lie_at(course, {60, y += 12.0}) == lie);
    }
    REQUIRE(lie_at(course, {0, 300}) == Lie::green);
    REQUIRE(lie_at(course, {0, 0}) == Lie::teeing_area);
    REQUIRE(lie_at(course, {-60, 100}) == Lie::rough);
    REQUIRE(findings_of(course.findings, "water-as-red").size() == 2);
    REQUIRE(findings_of(course.findings, "sand-as-bunker").size() == 1);
    REQUIRE(findings_of(course.findings, "heath-as-rough").size() == 2);
    REQUIRE(only(course).surroundings.size() == 1);
    REQUIRE(only(course).surroundings.front().kind == Surrounding::Kind::building);
}

TEST_CASE("overlaps are settled by the priority of lies", "[ground]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({0, 150}, 200, 200), {{"natural", "wood"}});
    map.area(rectangle({0, 150}, 40, 200), {{"golf", "fairway"}});
    map.area(rectangle({0, 150}, 30, 30), {{"natural", "water"}});
    map.area(rectangle({0, 150}, 20, 20), {{"golf", "water_hazard"}});
    map.area(rectangle({0, 150}, 5, 5), {{"golf", "bunker"}});
    const Course course = map.assemble();
    REQUIRE(lie_at(course, {0, 150}) == Lie::bunker);
    REQUIRE(lie_at(course, {8, 150}) == Lie::penalty_yellow);
    REQUIRE(lie_at(course, {13, 150}) == Lie::penalty_red);
    REQUIRE(lie_at(course, {18, 150}) == Lie::fairway);
    REQUIRE(lie_at(course, {30, 150}) == Lie::trees);
}

TEST_CASE("watercourses are as wide as tagged, else as assumed", "[ground]") {
    const auto area_of = [](const TagList& tags) {
        MapBuilder map = straight_hole();
        map.line({{-400, 150}, {400, 150}}, tags);
        return only(map.assemble()).lies.region(Lie::penalty_red).area();
    };
    // The ground of the hole is 360 m broad: 180 m to either side of its line.
    REQUIRE_THAT(area_of({{"waterway", "stream"}}), near(360.0 * 2.0));
    REQUIRE_THAT(area_of({{"waterway", "ditch"}}), near(360.0 * 1.5));
    REQUIRE_THAT(area_of({{"waterway", "river"}}), near(360.0 * 10.0));
    REQUIRE_THAT(area_of({{"waterway", "stream"}, {"width", "10'"}}), near(360.0 * 3.048));
    REQUIRE_THAT(area_of({{"waterway", "stream"}, {"width", "3 m"}}), near(360.0 * 3.0));
    REQUIRE_THAT(area_of({{"waterway", "stream"}, {"est_width", "6 ft"}}), near(360.0 * 1.8288));
    REQUIRE_THAT(area_of({{"waterway", "stream"}, {"width", "wide"}}), near(360.0 * 2.0));
    REQUIRE_THAT(area_of({{"waterway", "ditch"}, {"golf", "lateral_water_hazard"}}), near(360.0 * 1.5));
    REQUIRE(area_of({{"waterway", "stream"}, {"tunnel", "culvert"}}) == 0.0);
    REQUIRE(area_of({{"waterway", "stream"}, {"tunnel", "no"}}) > 0.0);

    MapBuilder map = straight_hole();
    map.line({{-100, 150}, {100, 150}}, {{"waterway", "stream"}, {"width", "wide"}, {"intermittent", "yes"}});
    map.line({{-100, 170}, {100, 170}}, {{"waterway", "stream"}, {"tunnel", "culvert"}});
    map.line({{-100, 190}, {100, 190}}, {{"waterway", "ditch"}, {"golf", "water_hazard"}, {"width", "2"}});
    const Course course = map.assemble();
    const std::vector<Finding> widths = findings_of(course.findings, "width-assumed");
    REQUIRE(widths.size() == 1);
    REQUIRE(widths.front().message.find("width=wide, which cannot be read; it is taken for 2 m wide") !=
            std::string::npos);
    REQUIRE(has(course.findings, "water-intermittent", Severity::note));
    REQUIRE(has(course.findings, "water-under-ground", Severity::note));
    REQUIRE(lie_at(course, {20, 190}) == Lie::penalty_yellow);
    REQUIRE(lie_at(course, {20, 170}) == Lie::rough);
}

TEST_CASE("trees", "[ground]") {
    MapBuilder map = straight_hole();
    map.node({50, 100}, {{"natural", "tree"}});
    map.node({50, 150}, {{"natural", "tree"}, {"diameter_crown", "12"}});
    map.line({{-60, 100}, {-60, 200}}, {{"natural", "tree_row"}});
    const Course course = map.assemble();
    REQUIRE(lie_at(course, {53, 100}) == Lie::trees);
    REQUIRE(lie_at(course, {55, 100}) == Lie::rough);
    REQUIRE(lie_at(course, {55, 150}) == Lie::trees);
    REQUIRE(lie_at(course, {-57, 150}) == Lie::trees);
    REQUIRE(lie_at(course, {-65, 150}) == Lie::rough);
}

TEST_CASE("a feature of two holes counts for both and is reported once", "[ground]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    map.hole("2", {80, 300}, {80, 0});
    map.line({{-100, 150}, {200, 150}}, {{"waterway", "stream"}});
    map.area({{30, 90}, {50, 90}, {30, 110}, {50, 110}}, {{"golf", "bunker"}});  // a bow tie
    const Course course = map.assemble();
    for (const Hole& hole : course.holes) {
        REQUIRE(hole.lies.region(Lie::penalty_red).area() > 200.0);
        REQUIRE_THAT(hole.lies.region(Lie::bunker).area(), near(200.0));
    }
    REQUIRE(findings_of(course.findings, "width-assumed").size() == 1);
    const std::vector<Finding> repaired = findings_of(course.findings, "ring-repaired");
    REQUIRE(repaired.size() == 1);
    REQUIRE(repaired.front().place.has_value());
    // Each is beside the other.
    for (const Hole& hole : course.holes) {
        REQUIRE(hole.surroundings.size() == 1);
        REQUIRE(hole.surroundings.front().kind == Surrounding::Kind::other_hole);
        REQUIRE(hole.surroundings.front().label == (hole.ref == "1" ? "2" : "1"));
    }
}

TEST_CASE("roads, paths and houses are surroundings", "[ground]") {
    MapBuilder map = straight_hole();
    map.line({{-500, 100}, {500, 100}}, {{"highway", "residential"}, {"name", "Shore Road"}});
    map.line({{20, 0}, {20, 300}}, {{"golf", "cartpath"}, {"highway", "service"}, {"width", "3"}});
    map.line({{30, 0}, {30, 300}}, {{"highway", "footway"}});
    map.area(rectangle({60, 60}, 10, 10), {{"building", "house"}});
    map.area(rectangle({900, 60}, 10, 10), {{"building", "house"}});
    const Course course = map.assemble();
    const std::vector<Surrounding>& around = only(course).surroundings;
    REQUIRE(around.size() == 4);
    REQUIRE(around[0].kind == Surrounding::Kind::road);
    REQUIRE(around[0].label == "Shore Road");
    REQUIRE(around[1].kind == Surrounding::Kind::path);
    // A band 3 m wide and 300 m long with round ends.
    REQUIRE_THAT(around[1].region.area(), near(900.0 + 3.14159 * 1.5 * 1.5, 1.0));
    REQUIRE(around[2].kind == Surrounding::Kind::path);
    REQUIRE(around[3].kind == Surrounding::Kind::building);
    REQUIRE(lie_at(course, {20, 100}) == Lie::rough);
}

TEST_CASE("points that should be areas are not used", "[ground]") {
    MapBuilder map = straight_hole();
    map.node({30, 100}, {{"golf", "bunker"}});
    map.node({30, 120}, {{"golf", "water_hazard"}});
    const Course course = map.assemble();
    REQUIRE(findings_of(course.findings, "area-missing").size() == 2);
    REQUIRE(lie_at(course, {30, 100}) == Lie::rough);
}

TEST_CASE("outside the boundary is out", "[ground]") {
    MapBuilder map = straight_hole();
    REQUIRE(has(map.assemble().findings, "boundary-missing", Severity::warning));
    map.area(rectangle({0, 150}, 120, 500), {{"leisure", "golf_course"}});
    map.area(rectangle({80, 150}, 20, 20), {{"natural", "water"}});
    const Course course = map.assemble();
    REQUIRE(lie_at(course, {55, 100}) == Lie::rough);
    REQUIRE(lie_at(course, {65, 100}) == Lie::out_of_bounds);
    REQUIRE(lie_at(course, {80, 150}) == Lie::out_of_bounds);
    REQUIRE(only(course).lies.beyond() == Lie::out_of_bounds);

    // A hole that leaves the boundary is played without it; the other one is not.
    map.hole("2", {30, 0}, {100, 300});
    const Course two = map.assemble();
    const std::vector<Finding> unused = findings_of(two.findings, "boundary-unused");
    REQUIRE(unused.size() == 1);
    REQUIRE(unused.front().hole == "2");
    REQUIRE(unused.front().severity == Severity::warning);
    REQUIRE(hole_of(two, "2").lies.region(Lie::out_of_bounds).empty());
    REQUIRE_FALSE(hole_of(two, "1").lies.region(Lie::out_of_bounds).empty());
}

TEST_CASE("a boundary with a gap in it: the hole in a multipolygon is out", "[ground]") {
    MapBuilder map = straight_hole();
    const long outer = map.area(rectangle({0, 150}, 300, 500), {});
    const long garden = map.area(rectangle({60, 150}, 20, 20), {});
    map.relation({{outer, "outer"}, {garden, "inner"}},
                 {{"type", "multipolygon"}, {"leisure", "golf_course"}});
    const Course course = map.assemble();
    REQUIRE(lie_at(course, {60, 150}) == Lie::out_of_bounds);
    REQUIRE(lie_at(course, {90, 150}) == Lie::rough);
}

TEST_CASE("beyond an out-of-bounds line is out, as deep as assumed", "[ground]") {
    for (const bool northward : {true, false}) {
        for (const double x : {50.0, -50.0}) {
            MapBuilder map = straight_hole();
            const Point south{x, -300};
            const Point north{x, 600};
            map.line(northward ? std::vector<Point>{south, north} : std::vector<Point>{north, south},
                     {{"golf", "out_of_bounds"}});
            const Course course = map.assemble();
            const double side = x > 0 ? 1.0 : -1.0;
            REQUIRE(lie_at(course, {x - side, 150}) == Lie::rough);
            REQUIRE(lie_at(course, {x + side, 150}) == Lie::out_of_bounds);
            REQUIRE(lie_at(course, {x + 129 * side, 150}) == Lie::out_of_bounds);
            REQUIRE(lie_at(course, {-(x + side), 150}) == Lie::rough);
        }
    }
    // A line round the corner of a dogleg, on the inside.
    MapBuilder dogleg;
    dogleg.line({{0, 0}, {0, 200}, {150, 250}}, {{"golf", "hole"}, {"ref", "1"}});
    dogleg.area(disc({150, 250}, 12), {{"golf", "green"}});
    dogleg.line({{40, 0}, {40, 170}, {150, 205}}, {{"golf", "out_of_bounds"}});
    const Course course = dogleg.assemble();
    REQUIRE(lie_at(course, {60, 100}) == Lie::out_of_bounds);
    REQUIRE(lie_at(course, {30, 100}) == Lie::rough);
    REQUIRE(lie_at(course, {80, 215}) == Lie::rough);
    REQUIRE(only(course).lies.stretches({0, 0}, {0, 200}).size() <= 2);
}

TEST_CASE("internal out of bounds between two holes is out for each from its own side", "[ground]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    map.hole("2", {80, 300}, {80, 0});
    map.line({{40, -50}, {40, 350}}, {{"golf", "out_of_bounds"}});
    const Course course = map.assemble();
    const Hole& first = hole_of(course, "1");
    const Hole& second = hole_of(course, "2");
    REQUIRE(first.lies.lie_at({60, 150}) == Lie::out_of_bounds);
    REQUIRE(first.lies.lie_at({20, 150}) == Lie::rough);
    // The frame of the second hole starts at its own tee.
    REQUIRE(second.lies.lie_at(second.frame.to_plane(map.lonlat({20, 150}))) == Lie::out_of_bounds);
    REQUIRE(second.lies.lie_at(second.frame.to_plane(map.lonlat({60, 150}))) == Lie::rough);
}

TEST_CASE("an out-of-bounds line all round the hole never puts the hole out", "[ground]") {
    MapBuilder map = straight_hole();
    // Not closed: begins and ends 30 m apart behind the tee.
    map.line({{15, -60}, {60, -60}, {60, 360}, {-60, 360}, {-60, -60}, {-15, -60}},
             {{"golf", "out_of_bounds"}});
    const Course course = map.assemble();
    for (double y = 0.0; y <= 300.0; y += 10.0)
        REQUIRE(lie_at(course, {0, y}) != Lie::out_of_bounds);
    REQUIRE(lie_at(course, {80, 150}) == Lie::out_of_bounds);
    REQUIRE(lie_at(course, {-80, 150}) == Lie::out_of_bounds);
    REQUIRE(lie_at(course, {0, 400}) == Lie::out_of_bounds);
}

TEST_CASE("a closed out-of-bounds line: inside is out, unless the hole is inside", "[ground]") {
    MapBuilder garden = straight_hole();
    garden.area(rectangle({70, 150}, 40, 80), {{"golf", "out_of_bounds"}});
    const Course beside = garden.assemble();
    REQUIRE(lie_at(beside, {70, 150}) == Lie::out_of_bounds);
    REQUIRE(lie_at(beside, {100, 150}) == Lie::rough);

    MapBuilder fence = straight_hole();
    fence.area(rectangle({0, 150}, 160, 400), {{"golf", "out_of_bounds"}});
    const Course within = fence.assemble();
    REQUIRE(lie_at(within, {70, 150}) == Lie::rough);
    REQUIRE(lie_at(within, {90, 150}) == Lie::out_of_bounds);
}

TEST_CASE("out-of-bounds marks that tell no side are left out with a warning", "[ground]") {
    MapBuilder crossing = straight_hole();
    crossing.line({{-50, 100}, {50, 120}}, {{"golf", "out_of_bounds"}});
    const Course course = crossing.assemble();
    REQUIRE(has(course.findings, "out-of-bounds-unclear", Severity::warning));
    REQUIRE(only(course).lies.region(Lie::out_of_bounds).empty());

    MapBuilder half = straight_hole();
    half.area(rectangle({0, 0}, 60, 60), {{"golf", "out_of_bounds"}});
    REQUIRE(has(half.assemble().findings, "out-of-bounds-unclear", Severity::warning));
}
