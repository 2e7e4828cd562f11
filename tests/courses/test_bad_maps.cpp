// Maps that cannot be used are refused with one line that says where and why. The same files serve the
// program's own corpus test.
#include <fstream>

#include "geometry/error.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

const std::filesystem::path maps = std::filesystem::path(LANDWIDTH_TESTS_DIR) / "corpus" / "maps";

void check_refused(const std::string& file, const std::vector<std::string>& words) {
    const std::string message = error_reading(maps / file);
    INFO(file << ": " << message);
    REQUIRE_FALSE(message.empty());
    REQUIRE(message.find('\n') == std::string::npos);
    for (const std::string& word : words) {
        INFO("expected: " << word);
        REQUIRE(message.find(word) != std::string::npos);
    }
}

}  // namespace

TEST_CASE("not a map at all", "[bad]") {
    check_refused("there_is_none.osm", {"there_is_none.osm", "no such file"});
    check_refused("empty.osm", {"empty.osm", "is empty"});
    check_refused("zero_byte.shp", {"zero_byte.shp", "is empty"});
    check_refused("picture.png", {"picture.png", "is not a map"});
    check_refused("not_geo.json", {"not_geo.json", "not GeoJSON"});
    check_refused("overpass.json", {"overpass.json", "no golf on this map"});
    check_refused("web_page.osm", {"web_page.osm", "starts with <html>"});
    check_refused("changes.osm", {"changes.osm", "change file"});
    check_refused("folder_without_maps", {"folder_without_maps", "without a Shapefile"});
    check_refused("shapefile_without_table/lines.shp", {"lines.shp", "lines.dbf is missing"});
}

TEST_CASE("damaged part way", "[bad]") {
    check_refused("truncated.osm", {"truncated.osm, line ", "damaged"});
    check_refused("truncated.osm.pbf", {"truncated.osm.pbf", "damaged"});
    check_refused("truncated.geojson", {"truncated.geojson, byte ", "damaged"});
    check_refused("truncated.gpkg", {"truncated.gpkg", "damaged"});
    check_refused("truncated.kml", {"truncated.kml", "damaged", "line "});
    check_refused("truncated.fgb", {"truncated.fgb", "damaged"});
}

TEST_CASE("maps without golf", "[bad]") {
    check_refused("no_golf.osm", {"no_golf.osm", "no golf on this map"});
    check_refused("no_golf.geojson", {"no_golf.geojson", "no golf on this map", "fields are"});
    check_refused("disc_golf.osm", {"disc_golf.osm", "no golf on this map", "disc golf"});
    check_refused("no_hole.osm", {"no_hole.osm", "no golf=hole line"});
    check_refused("hole_points.osm", {"hole_points.osm", "points"});
}

TEST_CASE("coordinates that are none", "[bad]") {
    check_refused("nan.osm", {"nan.osm, node/3", "lat=\"NaN\""});
    check_refused("1e308.osm", {"1e308.osm, node/3", "lon=\"1e308\""});
    check_refused("no_position.osm", {"no_position.osm, node/3", "lon=\"\""});
    check_refused("nan.geojson", {"nan.geojson", "feature 1", "nan", "finite"});
    check_refused("1e308.geojson", {"1e308.geojson", "feature 1", "1e+308"});
    check_refused("pin_nan.geojson", {"pin_nan.geojson", "feature 2", "golf=pin"});
    check_refused("text_coordinate.geojson", {"text_coordinate.geojson", "feature 1"});
    check_refused("latitude_95.geojson",
                  {"latitude_95.geojson", "feature 1", "not a longitude and latitude"});
    check_refused("metres_as_degrees.geojson",
                  {"metres_as_degrees.geojson", "not a longitude and latitude", "metres"});
    check_refused("metres_without_crs.csv", {"metres_without_crs.csv", "no coordinate reference system"});
}

TEST_CASE("holes that cannot be planned are left out with an error", "[bad]") {
    const auto course = [](const char* file) {
        return assemble_course(read_map(maps / file), {}, assumptions());
    };
    const auto check_error = [&](const char* file, const char* code, const char* feature) {
        INFO(file);
        const Course result = course(file);
        REQUIRE(result.holes.empty());
        const std::vector<Finding> errors = findings_of(result.findings, code);
        REQUIRE(errors.size() == 1);
        REQUIRE(errors.front().severity == Severity::error);
        REQUIRE(errors.front().feature == feature);
        REQUIRE(errors.front().hole == "1");
        REQUIRE(errors.front().place.has_value());
        REQUIRE_FALSE(errors.front().advice.empty());
        REQUIRE(result.findings.front().severity == Severity::error);
    };
    check_error("one_point_hole.osm", "hole-line-point", "way/10");
    check_error("one_point_hole.geojson", "hole-line-point", "layer one_point_hole, feature 0");
    check_error("no_green.osm", "green-missing", "way/10");
    check_error("wrong_crs.geojson", "hole-length", "layer wrong_crs, feature 0");
    check_error("hole_area.osm", "hole-not-a-line", "way/10");
}

TEST_CASE("self-crossing areas are repaired and reported", "[bad]") {
    const Course course = assemble_course(read_map(maps / "self_crossing.osm"), {}, assumptions());
    REQUIRE(course.holes.size() == 1);
    const std::vector<Finding> repaired = findings_of(course.findings, "ring-repaired");
    REQUIRE(repaired.size() == 1);
    REQUIRE(repaired.front().severity == Severity::warning);
    REQUIRE(repaired.front().feature == "way/12");
    REQUIRE(repaired.front().place.has_value());
    REQUIRE(course.holes.front().lies.region(Lie::fairway).area() > 100.0);
}

TEST_CASE("an unreadable file is refused", "[bad]") {
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.write("locked.osm", "<osm/>");
    std::filesystem::permissions(file, std::filesystem::perms::none);
    // The superuser reads anything.
    if (!std::ifstream(file).is_open())
        REQUIRE(error_reading(file).find("cannot be read") != std::string::npos);
    std::filesystem::permissions(file, std::filesystem::perms::owner_all);
}

TEST_CASE("a damaged part of a folder of Shapefiles is not passed over", "[bad]") {
    const TemporaryFolder folder;
    folder.write("course/holes.shp", "");
    folder.write("course/holes.shx", "");
    folder.write("course/holes.dbf", "");
    const std::string message = error_reading(folder.path() / "course");
    REQUIRE(message.find("holes.shp: is empty") != std::string::npos);
}
