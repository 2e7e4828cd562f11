// How high trees and buildings stand.
#include "courses/reading/tag_reading.hpp"
#include "courses/tags/vocabulary.hpp"
#include "tests/catch.hpp"
#include "tests/courses/conversion.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

auto height(double metres) {
    return Catch::Matchers::WithinAbs(metres, 0.051);
}

}  // namespace

TEST_CASE("heights as mappers type them", "[tall]") {
    const MapAssumptions& a = assumptions();
    const auto of_wood = [&](const Tags& tags) { return tagged_height(Role::trees, tags, a); };
    const auto of_house = [&](const Tags& tags) { return tagged_height(Role::building, tags, a); };
    CHECK(of_wood({{"height", "14"}}).metres == 14.0);
    CHECK(of_wood({{"height", "14.5 m"}}).metres == 14.5);
    CHECK(of_wood({{"height", "14,5"}}).metres == 14.5);
    CHECK_THAT(*of_wood({{"height", "40 ft"}}).metres, height(12.192));
    CHECK_THAT(*of_wood({{"height", "40'"}}).metres, height(12.192));
    CHECK_THAT(*of_wood({{"height", "40'6\""}}).metres, height(12.3444));
    CHECK(of_wood({{"est_height", "9"}}).metres == 9.0);
    CHECK(of_wood({{"height", "8"}, {"est_height", "9"}}).metres == 8.0);
    CHECK(of_wood({{"height", "tall"}, {"est_height", "9"}}).metres == 9.0);
    for (const char* bad : {"tall", "0", "-4", "1e400", "nan", "300", "12-15", ""}) {
        INFO(bad);
        CHECK_FALSE(of_wood({{"height", bad}}).metres);
        CHECK(of_wood({{"height", bad}}).unreadable == std::string("height=") + bad);
    }
    CHECK(of_wood({}).unreadable.empty());
    // Storeys are for buildings.
    CHECK_FALSE(of_wood({{"building:levels", "4"}}).metres);
    CHECK(of_house({{"building:levels", "4"}}).metres == 12.0);
    CHECK(of_house({{"building:levels", "1.5"}}).metres == 4.5);
    CHECK(of_house({{"building:levels", "4"}, {"height", "15"}}).metres == 15.0);
    CHECK(of_house({{"height", "300"}}).metres == 300.0);
    CHECK(of_house({{"building:levels", "four"}}).unreadable == "building:levels=four");
    CHECK_FALSE(of_house({{"building:levels", "0"}}).metres);

    CHECK(assumed_height(Role::trees, {{"natural", "wood"}}, a) == 12.0);
    CHECK(assumed_height(Role::trees, {{"golf", "rough"}, {"natural", "Scrub"}}, a) == 3.0);
    CHECK(assumed_height(Role::tree_row, {{"natural", "tree_row"}}, a) == 12.0);
    CHECK(assumed_height(Role::building, {{"building", "yes"}}, a) == 6.0);
}

TEST_CASE("trees and buildings stand as high as tagged, else as assumed", "[tall]") {
    MapBuilder map = straight_hole();
    const std::vector<std::pair<TagList, double>> cases{
        {{{"natural", "wood"}, {"height", "18"}}, 18.0},
        {{{"landuse", "forest"}, {"height", "60 ft"}}, 18.3},
        {{{"natural", "wood"}}, 12.0},
        {{{"natural", "scrub"}}, 3.0},
        {{{"natural", "scrub"}, {"height", "1.5"}}, 1.5},
        {{{"natural", "wood"}, {"height", "tall"}}, 12.0},
        {{{"building", "yes"}}, 6.0},
        {{{"building", "yes"}, {"building:levels", "3"}}, 9.0},
        {{{"golf", "clubhouse"}, {"building", "yes"}, {"height", "7.5"}}, 7.5},
        {{{"golf", "fairway"}}, 0.0},
    };
    double y = 40.0;
    for (const auto& [tags, metres] : cases)
        map.area(rectangle({60, y += 12.0}, 20, 8), tags);
    map.node({-50, 100}, {{"natural", "tree"}, {"height", "21"}, {"diameter_crown", "12"}});
    map.node({-50, 150}, {{"natural", "tree"}});
    map.line({{-100, 100}, {-100, 200}}, {{"natural", "tree_row"}, {"height", "25 m"}});
    const Course course = map.assemble();
    REQUIRE(course.holes.size() == 1);
    const CanopyRaster& canopy = course.holes.front().canopy;
    y = 40.0;
    for (const auto& [tags, metres] : cases) {
        INFO(tags.front().first << "=" << tags.front().second << ", " << metres);
        CHECK_THAT(canopy.at({60, y += 12.0}), height(metres));
    }
    CHECK_THAT(canopy.at({-55, 100}), height(21.0));
    CHECK_THAT(canopy.at({-52, 150}), height(12.0));
    CHECK_THAT(canopy.at({-97, 150}), height(25.0));
    CHECK(canopy.at({0, 150}) == 0.0);
    CHECK(course.holes.front().surroundings.size() == 3);

    const std::vector<Finding> notes = findings_of(course.findings, "height-assumed");
    REQUIRE(notes.size() == 1);
    CHECK(notes.front().severity == Severity::note);
    CHECK(notes.front().message ==
          "natural=wood has height=tall, which cannot be read as its height; it is taken for 12 m high");
}

TEST_CASE("where woods overlap the highest counts, and none stands on a fairway cut out of them", "[tall]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({0, 150}, 200, 200), {{"natural", "wood"}, {"height", "16"}});
    map.area(rectangle({80, 150}, 40, 200), {{"natural", "scrub"}});
    map.node({80, 150}, {{"natural", "tree"}, {"height", "30"}});
    map.area(rectangle({0, 150}, 40, 200), {{"golf", "fairway"}});
    map.node({0, 100}, {{"natural", "tree"}, {"height", "9"}});
    map.area(rectangle({0, 200}, 10, 10), {{"building", "roof"}, {"height", "4"}});
    const Course course = map.assemble();
    REQUIRE(course.holes.size() == 1);
    const CanopyRaster& canopy = course.holes.front().canopy;
    CHECK_THAT(canopy.at({90, 100}), height(16.0));
    CHECK_THAT(canopy.at({80, 150}), height(30.0));
    CHECK(canopy.at({0, 120}) == 0.0);
    CHECK_THAT(canopy.at({0, 200}), height(4.0));
    // A tree that was drawn there stands there, with the highest of what is drawn.
    CHECK_THAT(canopy.at({0, 100}), height(16.0));
    CHECK(course.holes.front().lies.lie_at({0, 100}) == Lie::trees);
}

TEST_CASE("heights arrive through packed tags and through columns", "[tall]") {
    MapBuilder map = straight_hole();
    map.area(rectangle({60, 100}, 30, 30), {{"natural", "wood"}, {"height", "17.5"}});
    map.area(rectangle({60, 200}, 20, 20), {{"building", "yes"}, {"building:levels", "5"}});
    map.node({-60, 100}, {{"natural", "tree"}, {"est_height", "60 ft"}});
    const TemporaryFolder folder;
    const std::filesystem::path source = folder.write("course.osm", map.osm());
    const auto check = [&](const std::filesystem::path& file) {
        INFO(file.filename());
        const Course course = assemble_course(read_map(file), {}, assumptions());
        REQUIRE(course.holes.size() == 1);
        const CanopyRaster& canopy = course.holes.front().canopy;
        CHECK_THAT(canopy.at({60, 100}), height(17.5));
        CHECK_THAT(canopy.at({60, 200}), height(15.0));
        CHECK_THAT(canopy.at({-60, 100}), height(18.3));
    };
    check(source);
    // GDAL's own settings leave height in other_tags.
    check(converted(source, folder.path() / "packed.gpkg", {"-f", "GPKG"}));
    check(converted(source, folder.path() / "shapes",
                    {"-f", "ESRI Shapefile", "points", "lines", "multipolygons"}));

    CHECK(tag_key("building_levels", "5") == "building:levels");
    CHECK(tag_key("building:l", "5") == "building:levels");
    CHECK(tag_key("est_height", "9") == "est_height");
    CHECK(tag_key("Height", "9") == "height");
}

TEST_CASE("a hole without trees and buildings has no canopy", "[tall]") {
    const Course course = straight_hole().assemble();
    REQUIRE(course.holes.size() == 1);
    CHECK(course.holes.front().canopy.empty());
}
