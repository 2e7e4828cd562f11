// A hole is the same hole wherever on earth it lies; surveys and findings.
#include "courses/survey/hole_survey.hpp"
#include "geometry/units.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

MapBuilder dogleg_at(LonLat origin) {
    MapBuilder map(origin);
    map.line({{0, 0}, {20, 210}, {120, 330}}, {{"golf", "hole"}, {"ref", "1"}, {"par", "4"}});
    map.area(rectangle({0, 0}, 10, 10), {{"golf", "tee"}, {"tee", "white"}});
    map.area(disc({120, 330}, 13), {{"golf", "green"}});
    map.node({118, 332}, {{"golf", "pin"}});
    map.area({{0, 100}, {35, 100}, {45, 215}, {110, 290}, {85, 305}, {10, 230}}, {{"golf", "fairway"}});
    map.area(disc({-30, 180}, 20), {{"natural", "water"}});
    map.line({{60, 0}, {70, 200}}, {{"golf", "out_of_bounds"}});
    map.line({{-200, 150}, {200, 160}}, {{"waterway", "stream"}});
    map.area(rectangle({50, 150}, 400, 600), {{"leisure", "golf_course"}});
    return map;
}

}  // namespace

TEST_CASE("the same hole anywhere on earth", "[places]") {
    const Course expected = dogleg_at({-33.0, 46.0}).assemble();
    const std::vector<LonLat> places{{-150.0, 0.0},   {0.0, -0.001},   {20.0, -47.0},
                                     {-140.0, -35.0}, {179.999, 15.0}, {-179.9995, -20.0},
                                     {180.0, 50.0},   {-33.0, 78.0},   {100.0, -65.0}};
    for (const LonLat place : places) {
        INFO(place.lon_deg << ", " << place.lat_deg);
        const Course course = dogleg_at(place).assemble();
        REQUIRE(course.holes.size() == 1);
        const Hole& a = expected.holes.front();
        const Hole& b = course.holes.front();
        // The file keeps positions to 1e-9 degrees: a tenth of a millimetre.
        REQUIRE_THAT(b.line.length(), Catch::Matchers::WithinAbs(a.line.length(), 0.01));
        for (std::size_t i = 0; i < a.line.vertices().size(); ++i)
            REQUIRE(distance(a.line.vertices()[i], b.line.vertices()[i]) < 0.02);
        for (const Lie lie : all_lies) {
            INFO(lie_name(lie));
            const double area = a.lies.region(lie).area();
            REQUIRE_THAT(b.lies.region(lie).area(), Catch::Matchers::WithinAbs(area, 0.002 * area + 0.5));
        }
        REQUIRE(course.findings.size() == expected.findings.size());
    }
}

TEST_CASE("longitudes beyond 180 degrees", "[places]") {
    const TemporaryFolder folder;
    const std::string text =
        R"({"type":"FeatureCollection","features":[
{"type":"Feature","properties":{"golf":"hole","ref":"1"},"geometry":{"type":"LineString","coordinates":[[179.999,10],[180.002,10]]}},
{"type":"Feature","properties":{"golf":"green"},"geometry":{"type":"Polygon","coordinates":[[[-179.9981,9.9999],[-179.9979,9.9999],[-179.9979,10.0001],[-179.9981,10.0001],[-179.9981,9.9999]]]}}]})";
    const Course course =
        assemble_course(read_map(folder.write("dateline.geojson", text)), {}, assumptions());
    REQUIRE(course.holes.size() == 1);
    // 0.003 degrees of longitude at 10 degrees north, on the ellipsoid: GeographicLib.
    REQUIRE_THAT(course.holes.front().line.length(),
                 Catch::Matchers::WithinAbs(geodesic_distance({179.999, 10}, {-179.998, 10}), 0.01));
}

TEST_CASE("a survey every 10 yd from 150 to 320 yd", "[survey]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 400});
    map.hole("2", {600, 0}, {600, 120});
    map.hole("3", {1200, 0}, {1200, 200});
    map.area(rectangle({5, 220}, 30, 300), {{"golf", "fairway"}});
    map.area(rectangle({40, 220}, 20, 300), {{"natural", "water"}});
    const Course course = map.assemble();
    const HoleSurvey survey = survey_hole(hole_of(course, "1"));
    REQUIRE_THAT(survey.length_m, Catch::Matchers::WithinAbs(400.0, 0.01));
    REQUIRE(survey.transects.size() == 18);
    REQUIRE_THAT(survey.transects.front().station_m, Catch::Matchers::WithinAbs(Yards{150}.metres(), 1e-9));
    REQUIRE_THAT(survey.transects.back().station_m, Catch::Matchers::WithinAbs(Yards{320}.metres(), 1e-9));
    for (const Transect& transect : survey.transects) {
        REQUIRE(transect.fairway.has_value());
        REQUIRE_THAT(transect.fairway->left_m, Catch::Matchers::WithinAbs(-10.0, 0.01));
        REQUIRE_THAT(transect.fairway->right_m, Catch::Matchers::WithinAbs(20.0, 0.01));
        REQUIRE_FALSE(transect.left.has_value());
        REQUIRE(transect.right.has_value());
        REQUIRE(transect.right->lie == Lie::penalty_red);
        REQUIRE_THAT(transect.right->offset_m, Catch::Matchers::WithinAbs(30.0, 0.01));
    }
    REQUIRE(survey_hole(hole_of(course, "2")).transects.empty());
    // 200 m are 218.7 yd: 150, 160, ..., 210.
    REQUIRE(survey_hole(hole_of(course, "3")).transects.size() == 7);
}

TEST_CASE("findings come worst first, then hole by hole", "[survey]") {
    const auto finding = [](Severity severity, const char* hole, const char* code) {
        return Finding{severity, code, "", hole, std::nullopt, "", ""};
    };
    std::vector<Finding> none;
    sort_findings(none);
    REQUIRE(none.empty());
    std::vector<Finding> findings{finding(Severity::note, "2", "a"), finding(Severity::warning, "1", "b"),
                                  finding(Severity::note, "1", "c"), finding(Severity::error, "1", "d"),
                                  finding(Severity::note, "2", "e"), finding(Severity::warning, "2", "f")};
    sort_findings(findings);
    std::string order;
    for (const Finding& one : findings)
        order += one.code;
    REQUIRE(order == "dfbaec");
}
