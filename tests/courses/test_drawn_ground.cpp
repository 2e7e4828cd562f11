// Which of two drawings counts where they overlap.
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

struct Drawn {
    std::vector<Point> outline;
    TagList tags;
};

Course course_with(const std::vector<Drawn>& areas) {
    MapBuilder map = straight_hole();
    for (const Drawn& area : areas)
        map.area(area.outline, area.tags);
    return map.assemble();
}

LiePartition lies_of(const Course& course) {
    REQUIRE(course.holes.size() == 1);
    return course.holes.front().lies;
}

const Drawn fairway{rectangle({0, 150}, 40, 200), {{"golf", "fairway"}}};

}  // namespace

TEST_CASE("a copse, a tree and a row of trees drawn on a fairway are trees", "[drawn]") {
    MapBuilder map = straight_hole();
    map.area(fairway.outline, fairway.tags);
    map.area(rectangle({10, 120}, 12, 12), {{"natural", "wood"}});
    map.node({-10, 180}, {{"natural", "tree"}});
    map.line({{-15, 100}, {-15, 130}}, {{"natural", "tree_row"}});
    const Course course = map.assemble();
    const LiePartition& lies = lies_of(course);
    CHECK(lies.lie_at({10, 120}) == Lie::trees);
    CHECK(lies.lie_at({-10, 180}) == Lie::trees);
    CHECK(lies.lie_at({-15, 110}) == Lie::trees);
    CHECK(lies.lie_at({0, 150}) == Lie::fairway);
    CHECK(course.holes.front().canopy.at({10, 120}) > 0.0);
    CHECK(findings_of(course.findings, "overlap-unclear").empty());
}

TEST_CASE("parts of one feature are judged one by one", "[drawn]") {
    MapBuilder map = straight_hole();
    map.area(fairway.outline, fairway.tags);
    const long copse = map.area(rectangle({10, 120}, 12, 12), {});
    const long far = map.area(rectangle({120, 120}, 100, 100), {});
    map.relation({{copse, "outer"}, {far, "outer"}}, {{"type", "multipolygon"}, {"natural", "wood"}});
    CHECK(lies_of(map.assemble()).lie_at({10, 120}) == Lie::trees);
}

TEST_CASE("drawn rough and fairway in an uncut wood are no trees", "[drawn]") {
    const Course course = course_with({{rectangle({0, 150}, 300, 300), {{"natural", "wood"}}},
                                       {rectangle({0, 150}, 80, 240), {{"golf", "rough"}}},
                                       fairway,
                                       {rectangle({30, 100}, 10, 10), {{"landuse", "forest"}}}});
    const LiePartition& lies = lies_of(course);
    CHECK(lies.lie_at({0, 150}) == Lie::fairway);
    CHECK(lies.lie_at({35, 180}) == Lie::rough);
    CHECK(lies.lie_at({30, 100}) == Lie::trees);  // in the rough
    CHECK(lies.lie_at({60, 150}) == Lie::trees);
    CHECK(course.holes.front().canopy.at({35, 180}) == 0.0);
    CHECK(course.holes.front().canopy.at({0, 150}) == 0.0);
}

TEST_CASE("a wood's edge over a fairway leaves the fairway under branches and is told", "[drawn]") {
    const Course course = course_with({fairway, {rectangle({40, 150}, 52, 300), {{"natural", "wood"}}}});
    const LiePartition& lies = lies_of(course);
    CHECK(lies.lie_at({17, 150}) == Lie::fairway);
    CHECK(course.holes.front().canopy.at({17.5, 150.5}) > 0.0);
    CHECK(course.holes.front().canopy.at({0, 150}) == 0.0);
    const std::vector<Finding> told = findings_of(course.findings, "overlap-unclear");
    REQUIRE(told.size() == 1);
    CHECK(told.front().severity == Severity::warning);
    CHECK(told.front().feature.find("way/") != std::string::npos);
    CHECK(told.front().message.find("natural=wood (way/") != std::string::npos);
    CHECK(told.front().message.find("counts as fairway with branches over it") != std::string::npos);
}

TEST_CASE("a slip of the pen is no overlap, and neither is one far from play", "[drawn]") {
    CHECK(findings_of(course_with({fairway, {rectangle({40, 150}, 41, 300), {{"natural", "wood"}}}}).findings,
                      "overlap-unclear")
              .empty());
    CHECK(findings_of(course_with({{rectangle({150, 150}, 40, 100), {{"golf", "fairway"}}},
                                   {rectangle({170, 150}, 30, 300), {{"natural", "wood"}}}})
                          .findings,
                      "overlap-unclear")
              .empty());
}

TEST_CASE("islands count in what surrounds them, water in what it lies in", "[drawn]") {
    const LiePartition& lies = lies_of(course_with({{rectangle({0, 150}, 100, 100), {{"natural", "water"}}},
                                                    {rectangle({0, 150}, 30, 30), {{"golf", "fairway"}}},
                                                    {rectangle({10, 150}, 6, 6), {{"golf", "bunker"}}},
                                                    {rectangle({80, 150}, 60, 60), {{"golf", "bunker"}}},
                                                    {rectangle({90, 150}, 10, 10), {{"golf", "rough"}}},
                                                    {rectangle({0, 60}, 60, 40), {{"golf", "fairway"}}},
                                                    {rectangle({0, 60}, 10, 10), {{"natural", "water"}}}}));
    CHECK(lies.lie_at({-10, 150}) == Lie::fairway);
    CHECK(lies.lie_at({10, 150}) == Lie::bunker);
    CHECK(lies.lie_at({40, 150}) == Lie::penalty_red);
    CHECK(lies.lie_at({75, 170}) == Lie::bunker);
    CHECK(lies.lie_at({90, 150}) == Lie::rough);
    CHECK(lies.lie_at({0, 60}) == Lie::penalty_red);
}

TEST_CASE("a bunker in a green counts; water over the edge of a fairway stays water and is told", "[drawn]") {
    const Course course = course_with({{rectangle({4, 300}, 6, 6), {{"golf", "bunker"}}},
                                       fairway,
                                       {rectangle({30, 150}, 40, 100), {{"natural", "water"}}}});
    const LiePartition& lies = lies_of(course);
    CHECK(lies.lie_at({5, 300}) == Lie::bunker);
    CHECK(lies.lie_at({15, 150}) == Lie::penalty_red);
    CHECK(findings_of(course.findings, "overlap-unclear").size() == 1);
}

TEST_CASE("golf ground across a boundary drawn a little inside it is in bounds, and told", "[drawn]") {
    const Course course = course_with({{rectangle({0, 150}, 120, 400), {{"leisure", "golf_course"}}},
                                       {rectangle({50, 150}, 40, 100), {{"golf", "fairway"}}},
                                       {rectangle({66, 60}, 8, 8), {{"golf", "bunker"}}},
                                       {rectangle({110, 60}, 20, 20), {{"golf", "bunker"}}}});
    const LiePartition& lies = lies_of(course);
    CHECK(lies.lie_at({65, 150}) == Lie::fairway);
    CHECK(lies.lie_at({66, 60}) == Lie::bunker);
    CHECK(lies.lie_at({110, 60}) == Lie::out_of_bounds);
    CHECK(lies.lie_at({66, 250}) == Lie::out_of_bounds);
    const std::vector<Finding> told = findings_of(course.findings, "boundary-inside");
    REQUIRE(told.size() == 2);
    CHECK(told.front().message.find("(way/") != std::string::npos);
}

TEST_CASE("a tee beyond the boundary does not switch the boundary off", "[drawn]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({0, 151}, 120, 300), {{"leisure", "golf_course"}});  // begins at the tee's middle
    const Course course = map.assemble();
    CHECK(findings_of(course.findings, "boundary-unused").empty());
    CHECK(lies_of(course).lie_at({70, 150}) == Lie::out_of_bounds);
    CHECK(lies_of(course).lie_at({0, 0}) == Lie::teeing_area);
}

TEST_CASE("a pond in a yellow penalty area is yellow", "[drawn]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({40, 150}, 30, 60), {{"golf", "water_hazard"}});
    map.area(rectangle({40, 150}, 20, 40), {{"natural", "water"}});
    map.area(rectangle({-40, 150}, 20, 40), {{"golf", "water_hazard"}});
    map.area(rectangle({-40, 150}, 20, 40), {{"natural", "water"}});
    const Course course = map.assemble();
    CHECK(course.holes.front().lies.lie_at({40, 150}) == Lie::penalty_yellow);
    CHECK(course.holes.front().lies.lie_at({-40, 150}) == Lie::penalty_yellow);
    CHECK(findings_of(course.findings, "water-as-red").empty());
    CHECK(findings_of(course.findings, "overlap-unclear").empty());
}

TEST_CASE("the same outline as two things is told", "[drawn]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({0, 150}, 30, 60), {{"golf", "fairway"}});
    map.area(rectangle({0, 150}, 30, 60), {{"natural", "water"}});
    map.area(rectangle({50, 150}, 20, 40), {{"natural", "sand"}});
    map.area(rectangle({60, 150}, 20, 40), {{"natural", "water"}});
    CHECK(findings_of(map.assemble().findings, "overlap-unclear").size() == 2);
}

TEST_CASE("an out-of-bounds area over golf ground is told", "[drawn]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({0, 150}, 40, 100), {{"golf", "fairway"}});
    map.area(rectangle({55, 150}, 80, 400), {{"golf", "out_of_bounds"}});
    const std::vector<Finding> told = findings_of(map.assemble().findings, "out-of-bounds-over");
    REQUIRE(told.size() == 1);
    CHECK(told.front().message ==
          "golf=fairway and way/1005 (golf=out_of_bounds) both cover 500 m2; it counts as out of bounds");
}

TEST_CASE("a boundary beside the holes, and none where the map's edge is not known either", "[drawn]") {
    MapBuilder map = straight_hole();
    CHECK(has(map.assemble().findings, "boundary-missing", Severity::warning));
    map.area(rectangle({60, 150}, 100, 400), {{"leisure", "golf_course"}});
    const Course course = map.assemble();
    CHECK(has(course.findings, "boundary-beside", Severity::warning));
    CHECK(findings_of(course.findings, "boundary-missing").empty());
}
