// From the drawn line to the line of play: direction, green, pin, tee; par and stroke index.
#include "courses/assembly/hole_refs.hpp"
#include "geometry/error.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

const TagList hole_tags{{"golf", "hole"}, {"ref", "1"}};

LonLat pin_of(const Course& course) {
    const Hole& hole = course.holes.front();
    return hole.frame.to_lonlat(hole.line.pin());
}

double pin_off(const Course& course, const MapBuilder& map, Point expected) {
    return geodesic_distance(pin_of(course), map.lonlat(expected));
}

}  // namespace

TEST_CASE("a line drawn from green to tee is turned round", "[lines]") {
    MapBuilder map;
    map.line({{0, 300}, {20, 150}, {0, 0}}, hole_tags);
    map.area(rectangle({0, 0}, 10, 10), {{"golf", "tee"}});
    map.area(disc({0, 300}, 12), {{"golf", "green"}});
    const Course course = map.assemble();
    REQUIRE(pin_off(course, map, {0, 300}) < 0.01);
    REQUIRE(has(course.findings, "line-turned-round", Severity::warning));

    // Without a tee on the map the green at the start and none at the end say the same.
    MapBuilder bare;
    bare.line({{0, 300}, {0, 0}}, hole_tags);
    bare.area(disc({0, 300}, 12), {{"golf", "green"}});
    REQUIRE(has(bare.assemble().findings, "line-turned-round", Severity::warning));
}

TEST_CASE("a line from tee to green stays, whatever lies beside its ends", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 300}}, hole_tags);
    map.area(rectangle({0, 0}, 10, 10), {{"golf", "tee"}});
    map.area(disc({0, 300}, 12), {{"golf", "green"}});
    map.area(disc({25, -5}, 12), {{"golf", "green"}});          // of the hole before
    map.area(rectangle({20, 310}, 10, 10), {{"golf", "tee"}});  // of the hole after
    REQUIRE(findings_of(map.assemble().findings, "line-turned-round").empty());
    // The tee of this one is not mapped and it starts beside the last green.
    MapBuilder bare;
    bare.line({{0, 0}, {0, 300}}, hole_tags);
    bare.area(disc({0, 300}, 12), {{"golf", "green"}});
    bare.area(disc({18, 0}, 12), {{"golf", "green"}});
    bare.area(rectangle({16, 310}, 10, 10), {{"golf", "tee"}});
    REQUIRE(findings_of(bare.assemble().findings, "line-turned-round").empty());
}

TEST_CASE("the green of a hole", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 270}}, hole_tags);
    map.area(disc({0, 300}, 12), {{"golf", "green"}});
    map.area(disc({0, 240}, 12), {{"golf", "green"}});
    map.area(disc({100, 270}, 12), {{"golf", "green"}});
    const Course course = map.assemble();
    REQUIRE(course.holes.size() == 1);
    // 18 m short of one green and 18 m beyond another, which it crosses: nobody plays across a green.
    REQUIRE(has(course.findings, "line-past-green", Severity::warning));
    REQUIRE(pin_off(course, map, {0, 240}) < 12.0);

    MapBuilder near;
    near.line({{0, 0}, {0, 270}}, hole_tags);
    near.area(disc({0, 300}, 12), {{"golf", "green"}});
    REQUIRE(has(near.assemble().findings, "green-snapped", Severity::note));

    MapBuilder far;
    far.line({{0, 0}, {0, 240}}, hole_tags);
    far.area(disc({0, 300}, 12), {{"golf", "green"}});
    const Course missing = far.assemble();
    REQUIRE(missing.holes.empty());
    REQUIRE(has(missing.findings, "green-missing", Severity::error));

    // A putting green inside a larger one: the smaller that holds the end.
    MapBuilder nested;
    nested.line({{0, 0}, {0, 300}}, hole_tags);
    nested.area(disc({0, 300}, 40), {{"golf", "green"}});
    nested.area(disc({0, 300}, 12), {{"golf", "green"}});
    REQUIRE(nested.assemble().holes.front().lies.region(Lie::green).area() < 500.0);
}

TEST_CASE("greens merged into one feature are greens of their own", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 300}}, hole_tags);
    map.line({{100, 300}, {100, 0}}, {{"golf", "hole"}, {"ref", "2"}});
    const long a = map.area(disc({0, 300}, 12), {});
    const long b = map.area(disc({100, 0}, 10), {});
    map.relation({{a, "outer"}, {b, "outer"}}, {{"type", "multipolygon"}, {"golf", "green"}});
    const Course course = map.assemble();
    REQUIRE(course.holes.size() == 2);
    // By hand: a disc of 24 corners covers 3.10583 r^2; the other green is fairway on each hole.
    REQUIRE_THAT(hole_of(course, "1").lies.region(Lie::green).area(),
                 Catch::Matchers::WithinAbs(3.10583 * 144, 0.5));
    REQUIRE_THAT(hole_of(course, "1").lies.region(Lie::fairway).area(),
                 Catch::Matchers::WithinAbs(3.10583 * 100, 0.5));
    REQUIRE_THAT(hole_of(course, "2").lies.region(Lie::green).area(),
                 Catch::Matchers::WithinAbs(3.10583 * 100, 0.5));
}

TEST_CASE("the pin", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 300}}, hole_tags);
    map.area(disc({0, 300}, 15), {{"golf", "green"}});
    REQUIRE(pin_off(map.assemble(), map, {0, 300}) < 0.01);
    REQUIRE(has(map.assemble().findings, "pin-inferred", Severity::note));

    MapBuilder cup = map;
    cup.node({6, 305}, {{"golf", "hole"}});
    REQUIRE(pin_off(cup.assemble(), cup, {6, 305}) < 0.01);
    REQUIRE(has(cup.assemble().findings, "pin-inferred", Severity::note));

    MapBuilder pins = map;
    pins.node({30, 300}, {{"golf", "pin"}});  // beside the green
    pins.node({-8, 296}, {{"golf", "pin"}});
    pins.node({5, 300}, {{"golf", "pin"}});  // nearer to the end of the line
    REQUIRE(pin_off(pins.assemble(), pins, {5, 300}) < 0.01);
    REQUIRE(findings_of(pins.assemble().findings, "pin-inferred").empty());
    pins.node({-8, 304}, {{"golf", "pin"}, {"ref", "1"}});  // of this hole by its number
    REQUIRE(pin_off(pins.assemble(), pins, {-8, 304}) < 0.01);

    MapBuilder drawn_small = map;
    drawn_small.area(disc({3, 297}, 0.3), {{"golf", "pin"}});
    REQUIRE(pin_off(drawn_small.assemble(), drawn_small, {3, 297}) < 0.01);

    // The line stops short of the green: the middle of it.
    MapBuilder short_line;
    short_line.line({{0, 0}, {0, 270}}, hole_tags);
    short_line.area(rectangle({4, 300}, 20, 30), {{"golf", "green"}});
    REQUIRE(pin_off(short_line.assemble(), short_line, {4, 300}) < 0.01);

    // A green like a horseshoe: its centroid lies outside, the pin must not.
    MapBuilder horseshoe;
    horseshoe.line({{0, 0}, {0, 275}}, hole_tags);
    horseshoe.area(
        {{-20, 280}, {20, 280}, {20, 320}, {14, 320}, {14, 286}, {-14, 286}, {-14, 320}, {-20, 320}},
        {{"golf", "green"}});
    const Course course = horseshoe.assemble();
    REQUIRE(course.holes.front().lies.lie_at(course.holes.front().line.pin()) == Lie::green);
}

TEST_CASE("corners of the line inside the green are dropped on the way to the pin", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {10, 150}, {0, 295}, {0, 303}}, hole_tags);
    map.area(disc({0, 300}, 15), {{"golf", "green"}});
    map.node({5, 294}, {{"golf", "pin"}});
    REQUIRE(map.assemble().holes.front().line.vertices().size() == 3);
}

TEST_CASE("the tee played from", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 350}}, hole_tags);
    map.area(disc({0, 350}, 12), {{"golf", "green"}});
    REQUIRE(has(map.assemble().findings, "tee-unmapped", Severity::note));

    map.area(rectangle({0, 12}, 8, 8), {{"golf", "tee"}, {"tee", "white;blue"}});
    map.area(rectangle({0, 60}, 8, 8), {{"golf", "tee"}, {"colour", "Red"}});
    map.area(rectangle({5, -40}, 8, 8), {{"golf", "tee"}, {"name", "Black tee"}, {"ref", "1"}});
    const Course snapped = map.assemble();
    REQUIRE(has(snapped.findings, "tee-snapped", Severity::note));
    REQUIRE(snapped.holes.front().tee == "white;blue");
    REQUIRE_THAT(snapped.holes.front().line.length(), Catch::Matchers::WithinAbs(338.0, 0.1));
    // The frame starts at the tee.
    REQUIRE(length(snapped.holes.front().line.tee()) < 0.01);

    const auto length_from = [&map](const char* tee) {
        return map.assemble({{}, tee, {}}).holes.front().line.length();
    };
    REQUIRE_THAT(length_from("BLUE"), Catch::Matchers::WithinAbs(338.0, 0.1));
    REQUIRE_THAT(length_from("red"), Catch::Matchers::WithinAbs(290.0, 0.1));
    REQUIRE_THAT(length_from("black"), Catch::Matchers::WithinAbs(std::hypot(5.0, 390.0), 0.1));
    REQUIRE(map.assemble({{}, "red", {}}).holes.front().tee == "red");
    try {
        map.assemble({{}, "gold", {}});
        FAIL("a tee that no hole has must be refused");
    } catch (const InputError& error) {
        const std::string message = error.what();
        REQUIRE(message.find("no hole has a tee called \"gold\"") != std::string::npos);
        REQUIRE(message.find("white, blue, Red and Black tee") != std::string::npos);
    }
}

TEST_CASE("a hole without the tee asked for is played from the start of its line", "[lines]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 350});
    map.hole("2", {200, 0}, {200, 350});
    map.area(rectangle({200, 50}, 8, 8), {{"golf", "tee"}, {"tee", "red"}});
    const Course course = map.assemble({{}, "red", {}});
    REQUIRE_THAT(hole_of(course, "1").line.length(), Catch::Matchers::WithinAbs(350.0, 0.1));
    REQUIRE_THAT(hole_of(course, "2").line.length(), Catch::Matchers::WithinAbs(300.0, 0.1));
    const std::vector<Finding> missing = findings_of(course.findings, "tee-missing");
    REQUIRE(missing.size() == 1);
    REQUIRE(missing.front().hole == "1");
    REQUIRE(missing.front().severity == Severity::warning);
    // The par does not change with the tee.
    MapBuilder par;
    par.hole("1", {0, 0}, {0, 250});
    par.area(rectangle({0, 60}, 8, 8), {{"golf", "tee"}, {"tee", "red"}});
    REQUIRE(par.assemble().holes.front().par == 4);
    REQUIRE(par.assemble({{}, "red", {}}).holes.front().par == 4);
}

TEST_CASE("a tee belongs to the hole it serves", "[lines]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 350});
    map.hole("2", {40, 380}, {40, 30});  // back beside the first: its green is by the first tee
    map.area(rectangle({12, 55}, 8, 8), {{"golf", "tee"}, {"tee", "red"}});
    map.area(rectangle({30, 330}, 8, 8), {{"golf", "tee"}, {"tee", "red"}});
    const Course course = map.assemble({{}, "red", {}});
    REQUIRE_THAT(hole_of(course, "1").line.length(),
                 Catch::Matchers::WithinAbs(std::hypot(12.0, 295.0), 0.1));
    REQUIRE_THAT(hole_of(course, "2").line.length(),
                 Catch::Matchers::WithinAbs(std::hypot(10.0, 300.0), 0.1));
    // The tees of a driving range are no tees of a hole.
    MapBuilder range;
    range.hole("1", {0, 0}, {0, 350});
    range.area(rectangle({20, 30}, 20, 30), {{"golf", "driving_range"}});
    range.area(rectangle({20, 30}, 8, 8), {{"golf", "tee"}, {"tee", "red"}});
    REQUIRE_THROWS_AS(range.assemble({{}, "red", {}}), InputError);
}

TEST_CASE("tees drawn as points and lines", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 350}}, hole_tags);
    map.area(disc({0, 350}, 12), {{"golf", "green"}});
    map.node({0, 0}, {{"golf", "tee"}, {"tee", "white"}});
    map.line({{-5, 60}, {5, 60}}, {{"golf", "tee"}, {"tee", "red"}});
    const Course course = map.assemble();
    REQUIRE(course.holes.front().tee == "white");
    REQUIRE(findings_of(course.findings, "tee-not-an-area").size() == 2);
    REQUIRE(course.holes.front().lies.lie_at({0, 0}) == Lie::teeing_area);
    const Course red = map.assemble({{}, "red", {}});
    REQUIRE_THAT(red.holes.front().line.length(), Catch::Matchers::WithinAbs(290.0, 0.1));
}

TEST_CASE("par and stroke index", "[lines]") {
    const auto course_of = [](double length, const TagList& tags) {
        MapBuilder map;
        map.hole("1", {0, 0}, {0, length}, tags);
        return map.assemble();
    };
    const auto par = [&](double length, const char* value) {
        return course_of(length, {{"par", value}}).holes.front().par;
    };
    // Thresholds of the test's assumptions: 250, 470 and 690 yd.
    REQUIRE(course_of(228.0, {}).holes.front().par == 3);
    REQUIRE(course_of(229.0, {}).holes.front().par == 4);
    REQUIRE(course_of(431.0, {}).holes.front().par == 5);
    REQUIRE(course_of(632.0, {}).holes.front().par == 6);
    const Course inferred = course_of(350.0, {});
    REQUIRE(inferred.holes.front().par_inferred);
    REQUIRE(has(inferred.findings, "par-inferred", Severity::note));

    REQUIRE(par(350, "4") == 4);
    REQUIRE(par(350, "4.0") == 4);
    REQUIRE(par(350, "Par 4") == 4);
    REQUIRE(par(350, "4;5") == 4);
    for (const char* value : {"abc", "0", "7", "-4", "4.5", "4 m"}) {
        const Course course = course_of(350.0, {{"par", value}});
        REQUIRE(course.holes.front().par == 4);
        REQUIRE(course.holes.front().par_inferred);
        REQUIRE(has(course.findings, "par-unreadable", Severity::warning));
    }
    const Course doubtful = course_of(500.0, {{"par", "3"}});
    REQUIRE(doubtful.holes.front().par == 3);
    REQUIRE(has(doubtful.findings, "par-doubtful", Severity::warning));
    REQUIRE(has(course_of(140.0, {{"par", "5"}}).findings, "par-doubtful", Severity::warning));
    // A short par 4 that can be driven is nothing to wonder about.
    REQUIRE(findings_of(course_of(230.0, {{"par", "4"}}).findings, "par-doubtful").empty());

    REQUIRE(course_of(350.0, {{"handicap", "18"}}).holes.front().stroke_index == 18);
    REQUIRE_FALSE(course_of(350.0, {}).holes.front().stroke_index);
    for (const char* value : {"0", "19", "hard", "-1"}) {
        const Course course = course_of(350.0, {{"handicap", value}});
        REQUIRE_FALSE(course.holes.front().stroke_index);
        REQUIRE(has(course.findings, "handicap-unreadable", Severity::warning));
    }
}

TEST_CASE("a line through its own green to a practice green ends in its own", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 280}, {10, 360}}, hole_tags);
    map.area(disc({0, 300}, 12), {{"golf", "green"}});
    map.area(disc({10, 360}, 12), {{"golf", "green"}});
    REQUIRE(pin_off(map.assemble(), map, {0, 300}) < 12.0);
    REQUIRE(has(map.assemble().findings, "line-past-green", Severity::warning));

    // Named as one, it is none at all, even where it is the only one at the end.
    MapBuilder named;
    named.line({{0, 0}, {0, 300}}, hole_tags);
    named.area(disc({0, 300}, 12), {{"golf", "green"}, {"name", "Putting green"}});
    REQUIRE(has(named.assemble().findings, "green-missing", Severity::error));
}

TEST_CASE("the number on a green decides between two, and is told where it contradicts", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 280}}, hole_tags);
    map.area(disc({15, 300}, 12), {{"golf", "green"}, {"ref", "1"}});
    map.area(disc({-14, 298}, 12), {{"golf", "green"}, {"ref", "4"}});
    REQUIRE(pin_off(map.assemble(), map, {15, 300}) < 12.0);

    MapBuilder far;
    far.line({{0, 0}, {0, 220}}, hole_tags);
    far.area(disc({0, 300}, 12), {{"golf", "green"}, {"ref", "1"}});
    REQUIRE(pin_off(far.assemble(), far, {0, 300}) < 12.0);
    REQUIRE(has(far.assemble().findings, "green-snapped", Severity::warning));

    MapBuilder other;
    other.line({{0, 0}, {0, 300}}, hole_tags);
    other.area(disc({0, 300}, 12), {{"golf", "green"}, {"ref", "9"}});
    REQUIRE(other.assemble().holes.size() == 1);
    REQUIRE(has(other.assemble().findings, "green-of-another", Severity::warning));
}

TEST_CASE("a tee that lists two holes, and tees of a hole played twice, belong to both", "[lines]") {
    MapBuilder map;
    map.line({{0, 0}, {0, 300}}, hole_tags);
    map.line({{8, 0}, {150, 250}}, {{"golf", "hole"}, {"ref", "10"}});
    map.area(disc({0, 300}, 12), {{"golf", "green"}});
    map.area(disc({150, 250}, 12), {{"golf", "green"}});
    map.area(rectangle({2, -30}, 6, 6), {{"golf", "tee"}, {"tee", "black"}, {"ref", "1;10"}});
    CourseRequest black;
    black.tee = "black";
    const Course course = map.assemble(black);
    REQUIRE(findings_of(course.findings, "tee-missing").empty());
    for (const char* ref : {"1", "10"})
        REQUIRE(distance(hole_of(course, ref).frame.to_plane(map.lonlat({2, -30})), {0, 0}) < 0.1);
}

TEST_CASE("numbers in names", "[lines]") {
    for (const auto& [name, number] :
         std::vector<std::pair<const char*, const char*>>{{"Hole 3 - The Pond", "3"},
                                                          {"3", "3"},
                                                          {"3. The Pond", "3"},
                                                          {"No 12", "12"},
                                                          {"no. 7: Long", "7"},
                                                          {"3rd", "3"},
                                                          {"3rd hole", "3"},
                                                          {"3rd hole, The Pond", "3"},
                                                          {"#5 (Pond)", "5"},
                                                          {"HOLE 09", "9"},
                                                          {"Hole 4 The Pond", "4"},
                                                          {"14 \xe2\x80\x93 Home", "14"}}) {
        INFO(name);
        REQUIRE(number_in_name(name) == std::optional<std::string>(number));
    }
    for (const char* name : {"3 Oaks", "The 3 Oaks", "19th Hole Bar", "", "Hole", "0", "Hole 100", "2019"}) {
        INFO(name);
        REQUIRE(number_in_name(name) == std::nullopt);
    }
}
