// Several courses on a map, loops of nine, numbers of holes.
#include "geometry/error.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

using Strings = std::vector<std::string>;

// `count` parallel holes of 300 m, 150 m apart, from `east` on.
void add_holes(MapBuilder& map, int count, double east, const TagList& more = {}, int first = 1) {
    for (int i = 0; i < count; ++i) {
        const double x = east + 150.0 * i;
        map.hole(std::to_string(first + i), {x, 0}, {x, 300}, more);
    }
}

Strings refs_of(const Course& course) {
    Strings refs;
    for (const Hole& hole : course.holes)
        refs.push_back(hole.ref);
    return refs;
}

std::string error_assembling(const MapBuilder& map, const CourseRequest& request) {
    try {
        map.assemble(request);
    } catch (const InputError& error) {
        return error.what();
    }
    return {};
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("courses by golf:course:name", "[courses]") {
    MapBuilder map;
    add_holes(map, 3, 0, {{"golf:course:name", "Øst Nine"}});
    add_holes(map, 2, 1000, {{"golf:course:name", "West \"Nine\""}});
    const MapData data = map.read();
    const std::vector<CourseOnMap> courses = courses_on(data);
    REQUIRE(courses.size() == 2);
    REQUIRE(courses[0].name == "Øst Nine");
    REQUIRE(courses[0].holes == 3);
    REQUIRE(courses[1].holes == 2);

    const std::string ambiguous = error_assembling(map, {});
    REQUIRE(contains(ambiguous, "built.osm: "));
    REQUIRE(contains(ambiguous, "\"Øst Nine\" (3 holes)"));
    REQUIRE(contains(ambiguous, "(2 holes)"));
    REQUIRE(contains(ambiguous, "--course"));
    REQUIRE(contains(error_assembling(map, {{"North"}, "", {}}), "no course is called \"North\""));

    const Course east = map.assemble({{"  øST nine "}, "", {}});
    REQUIRE(east.name == "Øst Nine");
    REQUIRE(refs_of(east) == Strings{"1", "2", "3"});
}

TEST_CASE("loops of nine are played in the order named and numbered on", "[courses]") {
    MapBuilder map;
    add_holes(map, 9, 0, {{"golf:course:name", "Red"}});
    add_holes(map, 9, 1500, {{"golf:course:name", "White"}});
    add_holes(map, 9, 3000, {{"golf:course:name", "Blue"}});
    const Course round = map.assemble({{"White", "Red"}, "", {}});
    REQUIRE(round.name == "White + Red");
    REQUIRE(round.holes.size() == 18);
    REQUIRE(round.holes.front().ref == "1");
    REQUIRE(round.holes.back().ref == "18");
    // The front nine are those of White, which lies east of Red.
    REQUIRE(round.holes[0].frame.origin().lon_deg > round.holes[9].frame.origin().lon_deg);
    REQUIRE(findings_of(round.findings, "ref-renumbered").size() == 9);
    // One loop twice is a round as well.
    REQUIRE(map.assemble({{"Blue", "Blue"}, "", {}}).holes.size() == 18);
    // Loops with numbers of their own keep them.
    MapBuilder numbered;
    add_holes(numbered, 2, 0, {{"golf:course:name", "Out"}});
    add_holes(numbered, 2, 1500, {{"golf:course:name", "In"}}, 10);
    const Course kept = numbered.assemble({{"Out", "In"}, "", {}});
    REQUIRE(refs_of(kept) == Strings{"1", "2", "10", "11"});
    REQUIRE(findings_of(kept.findings, "ref-renumbered").empty());
    // A wanted hole goes by its number in the round.
    const Course one = map.assemble({{"Red", "Blue"}, "", {"12"}});
    REQUIRE(refs_of(one) == Strings{"12"});
}

TEST_CASE("a hole numbered on is still known by its number on the map", "[courses]") {
    MapBuilder map;
    add_holes(map, 2, 0, {{"golf:course:name", "Out"}});
    add_holes(map, 2, 1500, {{"golf:course:name", "In"}});
    // Too far aside to belong to a hole by where it lies.
    map.area(rectangle({1450, 0}, 6, 6), {{"golf", "tee"}, {"tee", "black"}, {"ref", "1"}});
    // Nearer to the end of the line than its own pin, and another hole's.
    map.node({1503, 300}, {{"golf", "pin"}, {"ref", "1"}});
    map.node({1501, 300}, {{"golf", "pin"}, {"ref", "3"}});
    const Course round = map.assemble({{"Out", "In"}, "black", {}});
    REQUIRE(refs_of(round) == Strings{"1", "2", "3", "4"});
    const Hole& third = hole_of(round, "3");
    CHECK(third.mapped_ref == "1");
    CHECK(third.tee == "black");
    CHECK(distance(third.frame.to_plane(map.lonlat({1450, 0})), {0, 0}) < 0.1);
    CHECK(distance(third.line.pin(), third.frame.to_plane(map.lonlat({1503, 300}))) < 0.1);
    CHECK(hole_of(round, "1").mapped_ref == "1");
    CHECK(hole_of(round, "1").tee != "black");
    // What is asked for and what is told is the number in the round.
    CHECK(refs_of(map.assemble({{"Out", "In"}, "", {"3"}})) == Strings{"3"});
    for (const Finding& told : findings_of(round.findings, "ref-renumbered"))
        CHECK((told.hole == "3" || told.hole == "4"));
}

TEST_CASE("a hole that names no course is told by the number it goes by", "[courses]") {
    MapBuilder map;
    add_holes(map, 2, 0, {{"golf:course:name", "Red"}});
    map.hole("Hole 3", {300, 0}, {300, 300});
    const Course course = map.assemble();
    const std::vector<Finding> inferred = findings_of(course.findings, "course-inferred");
    REQUIRE(inferred.size() == 1);
    CHECK(inferred.front().hole == "3");
    CHECK(hole_of(course, "3").mapped_ref == "Hole 3");
}

TEST_CASE("courses by their area", "[courses]") {
    MapBuilder map;
    add_holes(map, 2, 0);
    add_holes(map, 3, 1000);
    map.area(rectangle({75, 150}, 500, 600), {{"leisure", "golf_course"}, {"name", "Gull"}});
    map.area(rectangle({1150, 150}, 600, 600), {{"leisure", "golf_course"}});
    const std::vector<CourseOnMap> courses = courses_on(map.read());
    REQUIRE(courses.size() == 2);
    REQUIRE(courses[0].name == "Gull");
    REQUIRE(courses[1].name == "way/1017");
    REQUIRE(courses[1].holes == 3);
    REQUIRE(map.assemble({{"gull"}, "", {}}).holes.size() == 2);
    const Course unnamed = map.assemble({{"way/1017"}, "", {}});
    REQUIRE(unnamed.name.empty());
    REQUIRE(unnamed.holes.size() == 3);
}

TEST_CASE("the smaller area counts, and two areas of one name are one course", "[courses]") {
    MapBuilder map;
    add_holes(map, 2, 0);
    add_holes(map, 1, 400);
    map.area(rectangle({200, 150}, 900, 700), {{"leisure", "golf_course"}, {"name", "Club"}});
    map.area(rectangle({400, 150}, 120, 500), {{"leisure", "golf_course"}, {"name", "Short course"}});
    REQUIRE(courses_on(map.read()).size() == 2);
    REQUIRE(map.assemble({{"Short course"}, "", {}}).holes.size() == 1);

    MapBuilder parcels;
    add_holes(parcels, 1, 0);
    add_holes(parcels, 1, 1000, {}, 2);
    parcels.area(rectangle({0, 150}, 300, 500), {{"leisure", "golf_course"}, {"name", "Twin"}});
    parcels.area(rectangle({1000, 150}, 300, 500), {{"leisure", "golf_course"}, {"name", "twin"}});
    REQUIRE(courses_on(parcels.read()).size() == 1);
    REQUIRE(parcels.assemble().holes.size() == 2);
}

TEST_CASE("the name of the area stands for its only loop", "[courses]") {
    MapBuilder map;
    add_holes(map, 2, 0, {{"golf:course:name", "Old"}});
    map.area(rectangle({75, 150}, 500, 600), {{"leisure", "golf_course"}, {"name", "Gull Golf Club"}});
    REQUIRE(map.assemble({{"gull golf club"}, "", {}}).name == "Old");
    REQUIRE(map.assemble().name == "Old");
}

TEST_CASE("a hole that names no course goes with the only one", "[courses]") {
    MapBuilder map;
    add_holes(map, 2, 0, {{"golf:course:name", "Old"}});
    add_holes(map, 1, 300, {}, 3);
    const Course course = map.assemble();
    REQUIRE(refs_of(course) == Strings{"1", "2", "3"});
    REQUIRE(has(course.findings, "course-inferred", Severity::note));
    // Not when its number is taken: then it is another course's.
    MapBuilder other;
    add_holes(other, 2, 0, {{"golf:course:name", "Old"}});
    add_holes(other, 1, 300, {}, 2);
    REQUIRE(courses_on(other.read()).size() == 2);
    REQUIRE(contains(error_assembling(other, {}), "\"unnamed\" (1 hole)"));
    REQUIRE(refs_of(other.assemble({{"unnamed"}, "", {}})) == Strings{"2"});
}

TEST_CASE("a hole of two courses is on both", "[courses]") {
    MapBuilder map;
    add_holes(map, 1, 0, {{"golf:course:name", "Red;White"}});
    add_holes(map, 1, 150, {{"golf:course:name", "White"}}, 2);
    REQUIRE(map.assemble({{"Red"}, "", {}}).holes.size() == 1);
    REQUIRE(map.assemble({{"White"}, "", {}}).holes.size() == 2);
}

TEST_CASE("holes are played in the order of their numbers", "[courses]") {
    MapBuilder map;
    const Strings refs{"10", "2", "Hole 9", "01", "Cup", "7A", "#7"};
    double x = 0;
    for (const std::string& ref : refs) {
        map.hole(ref, {x, 0}, {x, 300});
        x += 150;
    }
    const Course course = map.assemble();
    REQUIRE(refs_of(course) == Strings{"1", "2", "7", "7a", "9", "10", "Cup"});
    REQUIRE(has(course.findings, "ref-unreadable", Severity::warning));
}

TEST_CASE("wanted holes only", "[courses]") {
    MapBuilder map;
    add_holes(map, 3, 0);
    map.line({{900, 0}, {900, 300}}, {{"golf", "hole"}, {"ref", "4"}});
    REQUIRE(has(map.assemble().findings, "green-missing", Severity::error));
    const Course course = map.assemble({{}, "", {"3", "01"}});
    REQUIRE(refs_of(course) == Strings{"1", "3"});
    for (const Finding& finding : course.findings) {
        REQUIRE(finding.severity != Severity::error);
        REQUIRE(finding.hole != "2");
    }
    const std::string message = error_assembling(map, {{}, "", {"12"}});
    REQUIRE(contains(message, "no hole 12"));
    REQUIRE(contains(message, "1, 2, 3 and 4"));
    // A hole that cannot be planned can be asked for: the answer is the error.
    const Course broken = map.assemble({{}, "", {"4"}});
    REQUIRE(broken.holes.empty());
    REQUIRE(broken.findings.front().severity == Severity::error);
    REQUIRE(broken.findings.front().hole == "4");
}

TEST_CASE("refs doubled, missing, listed", "[courses]") {
    MapBuilder map;
    map.hole("7", {0, 0}, {0, 300});
    map.hole("7", {300, 0}, {300, 300});
    map.hole("", {600, 0}, {600, 300});
    map.hole("", {900, 0}, {900, 300}, {{"name", "Hole 5"}});
    map.hole("", {1200, 0}, {1200, 300}, {{"name", "Gull"}});
    const Course course = map.assemble();
    REQUIRE(refs_of(course) == Strings{"1", "2", "5", "7", "7b"});
    REQUIRE(findings_of(course.findings, "ref-doubled").size() == 1);
    REQUIRE(findings_of(course.findings, "ref-missing").size() == 2);
    REQUIRE(has(course.findings, "ref-inferred", Severity::note));
    REQUIRE(hole_of(course, "2").name == "Gull");

    MapBuilder twice;
    twice.hole("1;10", {0, 0}, {0, 400}, {{"par", "4;5"}, {"handicap", "3;12"}});
    twice.hole("2;11", {300, 0}, {300, 150}, {{"par", "3"}});
    const Course round = twice.assemble();
    REQUIRE(refs_of(round) == Strings{"1", "2", "10", "11"});
    REQUIRE(hole_of(round, "1").par == 4);
    REQUIRE(hole_of(round, "10").par == 5);
    REQUIRE(hole_of(round, "10").stroke_index == 12);
    REQUIRE(hole_of(round, "10").mapped_ref == "1;10");
    REQUIRE(hole_of(round, "11").par == 3);
    REQUIRE(findings_of(round.findings, "played-twice").size() == 4);
    // The number of another line is left to it.
    twice.hole("10", {600, 0}, {600, 300});
    REQUIRE(refs_of(twice.assemble()) == Strings{"1", "2", "10", "11"});
    REQUIRE(hole_of(twice.assemble(), "10").feature == "way/1007");
}

TEST_CASE("a hole with lines from several tees", "[courses]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 350});
    map.line({{3, 60}, {0, 350}}, {{"golf", "hole"}, {"ref", "1"}});
    map.area(rectangle({3, 60}, 8, 8), {{"golf", "tee"}, {"tee", "red"}});
    const Course longer = map.assemble();
    REQUIRE(longer.holes.size() == 1);
    REQUIRE_THAT(longer.holes.front().line.length(), Catch::Matchers::WithinAbs(350.0, 0.1));
    REQUIRE(longer.holes.front().tee == "white");
    REQUIRE(has(longer.findings, "alternative-line", Severity::note));
    const Course red = map.assemble({{}, "Red", {}});
    REQUIRE(red.holes.front().feature == "way/1004");
    REQUIRE_THAT(red.holes.front().line.length(), Catch::Matchers::WithinAbs(290.0, 0.1));
}

TEST_CASE("a hole drawn in two pieces", "[courses]") {
    MapBuilder map;
    map.line({{0, 180}, {60, 350}}, {{"golf", "hole"}, {"ref", "1"}});
    map.line({{0, 0}, {0, 180}}, {{"golf", "hole"}, {"ref", "1"}, {"par", "4"}});
    map.area(disc({60, 350}, 12), {{"golf", "green"}});
    const Course course = map.assemble();
    REQUIRE(course.holes.size() == 1);
    REQUIRE(course.holes.front().par == 4);
    REQUIRE_THAT(course.holes.front().line.length(),
                 Catch::Matchers::WithinAbs(180.0 + std::hypot(60.0, 170.0), 0.1));
    REQUIRE(has(course.findings, "line-in-parts", Severity::warning));
}

TEST_CASE("features of no hole are counted in one note", "[courses]") {
    MapBuilder map;
    add_holes(map, 1, 0);
    map.area(disc({2000, 0}, 10), {{"golf", "bunker"}});
    map.area(disc({2000, 100}, 10), {{"golf", "green"}, {"name", "Practice"}});
    map.area(disc({10, 100}, 10), {{"golf", "fringe"}});
    map.node({30, 30}, {{"golf", "hole"}, {"sport", "disc_golf"}});
    const Course course = map.assemble();
    const std::vector<Finding> unused = findings_of(course.findings, "features-unused");
    REQUIRE(unused.size() == 1);
    REQUIRE(contains(unused.front().message, "2 golf features"));
    REQUIRE(contains(findings_of(course.findings, "golf-unknown").front().message, "golf=fringe"));
}

TEST_CASE("a big map's other courses stay out of it", "[courses]") {
    MapBuilder map;
    add_holes(map, 1, 0, {{"golf:course:name", "Here"}});
    add_holes(map, 1, 30000, {{"golf:course:name", "Far"}});
    const Course course = map.assemble({{"Here"}, "", {}});
    REQUIRE(course.holes.size() == 1);
    REQUIRE(course.holes.front().surroundings.empty());
}
