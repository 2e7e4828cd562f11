// Heights from rasters in many forms against a plane and a hill known in the hole's own coordinates.
#include <cmath>
#include <limits>

#include "courses/ground/ground_heights.hpp"
#include "courses/ground/ground_units.hpp"
#include "courses/survey/hole_survey.hpp"
#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"
#include "tests/courses/raster_writing.hpp"

using namespace landwidth;
using namespace landwidth::test;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double not_known = std::numeric_limits<double>::quiet_NaN();
const LonLat origin{-33.0, 46.0};
constexpr Point tee{-60, -150};
constexpr Point pin{60, 200};

Course one_hole(LonLat at = origin) {
    MapBuilder map(at);
    map.hole("3", tee, pin);
    return map.assemble();
}

// Heights over the plane of the map around `at`.
using PlaneHeight = std::function<double(Point)>;

std::function<double(LonLat)> on_earth(const PlaneHeight& height, LonLat at = origin) {
    return [height, frame = PlaneFrame(at)](LonLat place) { return height(frame.to_plane(place)); };
}

double tilted(Point p) {
    return 40.0 + 0.03 * p.x - 0.02 * p.y;
}

// A raster that covers the hole, however it is turned.
RasterRecipe wide(const std::string& crs, double cell) {
    RasterRecipe recipe;
    recipe.crs = crs;
    recipe.cell_width = recipe.cell_height = cell;
    return recipe;
}

// The hole's heights against those of the map's plane, along the line and off it.
void check_heights(const Hole& hole, const PlaneHeight& height, double margin_m, double slope_margin,
                   LonLat at = origin) {
    REQUIRE(hole.heights);
    const PlaneFrame map(at);
    for (double station_m = 0.0; station_m <= hole.line.length(); station_m += 25.0) {
        for (const double offset_m : {-120.0, -30.0, 0.0, 7.0, 90.0}) {
            const Point ahead = hole.line.direction_at(station_m);
            const Point p = hole.line.point_at(station_m) + offset_m * to_the_right(ahead);
            const auto there = [&](Point q) { return height(map.to_plane(hole.frame.to_lonlat(q))); };
            CHECK_THAT(hole.heights->at(p), WithinAbs(there(p), margin_m));
            const Point slope = hole.heights->gradient(p);
            CHECK_THAT(slope.x, WithinAbs(there(p + Point{0.5, 0}) - there(p - Point{0.5, 0}), slope_margin));
            CHECK_THAT(slope.y, WithinAbs(there(p + Point{0, 0.5}) - there(p - Point{0, 0.5}), slope_margin));
        }
    }
}

std::string refusal(const std::filesystem::path& file, Course course) {
    try {
        lay_ground_heights(course, file);
    } catch (const InputError& error) {
        return error.what();
    }
    return {};
}

auto contains(const std::string& text) {
    return Catch::Matchers::Contains(text);
}

}  // namespace

TEST_CASE("a tilted plane comes back from any format and reference system", "[heights]") {
    const TemporaryFolder folder;
    std::vector<std::pair<std::string, RasterRecipe>> cases;
    cases.emplace_back("utm.tif", wide("EPSG:32624", 5.0));
    cases.emplace_back("utm.asc", wide("EPSG:32624", 5.0));
    cases.back().second.driver = "AAIGrid";
    cases.emplace_back("fine.tif", wide("EPSG:32624", 1.0));
    cases.back().second.columns = cases.back().second.rows = 1100;
    cases.emplace_back("lonlat.tif", wide("EPSG:4326", 0.00006));
    cases.emplace_back("latlon_axes.img", wide("EPSG:4258", 0.00006));
    cases.back().second.driver = "HFA";
    cases.emplace_back("mercator.tif", wide("EPSG:3857", 6.0));
    cases.emplace_back("next_zone.tif", wide("EPSG:32625", 5.0));
    cases.emplace_back("equal_area.tif", wide("EPSG:3035", 6.0));
    cases.emplace_back("from_the_south.tif", wide("EPSG:32624", 5.0));
    cases.back().second.cell_height = -5.0;
    cases.emplace_back("turned.tif", wide("EPSG:32624", 5.0));
    cases.back().second.turn_rad = 0.6;
    cases.emplace_back("oblong.tif", wide("EPSG:32624", 4.0));
    cases.back().second.cell_height = 7.0;
    for (const auto& [name, recipe] : cases) {
        INFO(name);
        Course course = one_hole();
        lay_ground_heights(course, write_raster(folder.path() / name, recipe, on_earth(tilted)));
        REQUIRE(course.holes.size() == 1);
        CHECK(findings_of(course.findings, "heights-filled").empty());
        CHECK(findings_of(course.findings, "heights-coarse").empty());
        // Float32 holds these heights to 4e-6 m; the text grid to a micrometre.
        check_heights(course.holes.front(), tilted, 1e-3, 2e-4);
    }
}

TEST_CASE("a hill is as round as cells of its raster allow", "[heights]") {
    // Between cells of 5 m a parabola of this curvature is misread by c * 2.5^2 / 2 at most, twice over in
    // two directions and again between posts.
    constexpr double curvature = 0.001;
    const auto hill = [](Point p) { return 20.0 - 0.5 * curvature * dot(p, p); };
    const TemporaryFolder folder;
    Course course = one_hole();
    lay_ground_heights(course,
                       write_raster(folder.path() / "hill.tif", wide("EPSG:32624", 5.0), on_earth(hill)));
    check_heights(course.holes.front(), hill, 4.0 * curvature * 6.25 / 2.0, curvature * 5.0);
}

TEST_CASE("units, scale and offset make metres", "[heights]") {
    const TemporaryFolder folder;
    struct Case {
        std::string unit;
        double metres;
    };
    for (const Case& unit :
         std::vector<Case>{{"", 1.0}, {"m", 1.0}, {"ft", 0.3048}, {"US survey foot", 1200.0 / 3937.0}}) {
        INFO(unit.unit);
        RasterRecipe recipe = wide("EPSG:32624", 5.0);
        recipe.unit = unit.unit;
        Course course = one_hole();
        const auto raw = [&](Point p) { return tilted(p) / unit.metres; };
        lay_ground_heights(course, write_raster(folder.path() / "unit.tif", recipe, on_earth(raw)));
        check_heights(course.holes.front(), tilted, 1e-3, 2e-4);
    }
    // Decimetres over 20 m in whole feet: raw counts of a tenth of a foot.
    RasterRecipe recipe = wide("EPSG:32624", 5.0);
    recipe.unit = "ft";
    recipe.type = "Int16";
    recipe.scale = 0.1;
    recipe.offset = 60.0;
    Course course = one_hole();
    const auto raw = [&](Point p) { return std::round((tilted(p) / 0.3048 - 60.0) / 0.1); };
    lay_ground_heights(course, write_raster(folder.path() / "scaled.tif", recipe, on_earth(raw)));
    check_heights(course.holes.front(), tilted, 0.05 * 0.3048 + 1e-3, 0.012);

    CHECK(metres_per_height_unit("US_survey_foot") == 1200.0 / 3937.0);
    CHECK(metres_per_height_unit("Metre") == 1.0);
    CHECK_FALSE(metres_per_height_unit("degree"));
    CHECK_FALSE(metres_per_height_unit(""));
    recipe.unit = "degree";
    CHECK_THAT(refusal(write_raster(folder.path() / "degrees.tif", recipe, on_earth(raw)), one_hole()),
               contains("degrees.tif: its heights are in \"degree\", not in metres or feet"));
}

TEST_CASE("gaps beside the line are filled from the nearest known height and told once", "[heights]") {
    const TemporaryFolder folder;
    for (const bool declared : {true, false}) {
        INFO(declared);
        RasterRecipe recipe = wide("EPSG:32624", 5.0);
        if (declared) recipe.no_data = -9999.0;
        const auto gap = [&](Point p) { return p.x > 120.0 ? (declared ? -9999.0 : not_known) : 0.5 * p.x; };
        MapBuilder map(origin);
        map.hole("3", tee, pin);
        map.hole("4", {80, 200}, {-80, -150});
        Course course = map.assemble();
        lay_ground_heights(course, write_raster(folder.path() / "gap.tif", recipe, on_earth(gap)));
        REQUIRE(course.holes.size() == 2);
        const std::vector<Finding> filled = findings_of(course.findings, "heights-filled");
        REQUIRE(filled.size() == 1);
        CHECK(filled.front().severity == Severity::warning);
        CHECK(filled.front().feature == "gap.tif");
        CHECK_THAT(filled.front().message, contains("2 holes"));
        const PlaneFrame frame(origin);
        for (const Hole& hole : course.holes) {
            const auto at = [&](Point p) {
                return hole.heights->at(hole.frame.to_plane(frame.to_lonlat(p)));
            };
            CHECK_THAT(at({100, 50}), WithinAbs(50.0, 0.01));
            CHECK_THAT(at({200, 50}), WithinAbs(60.0, 2.0));
        }
    }
}

TEST_CASE("cells averaged between posts leave out those without data", "[heights]") {
    const TemporaryFolder folder;
    RasterRecipe recipe = wide("EPSG:32624", 0.5);
    recipe.columns = recipe.rows = 900;
    recipe.no_data = -9999.0;
    // A speck without data every 3 m, of one cell.
    const auto specked = [](Point p) {
        const bool speck = std::fmod(std::abs(p.x), 3.0) < 0.5 && std::fmod(std::abs(p.y), 3.0) < 0.5;
        return speck ? -9999.0 : 12.0;
    };
    Course course = one_hole();
    lay_ground_heights(course, write_raster(folder.path() / "specked.tif", recipe, on_earth(specked)));
    const Hole& hole = course.holes.front();
    for (double station_m = 0.0; station_m <= hole.line.length(); station_m += 1.7)
        CHECK_THAT(hole.heights->at(hole.line.point_at(station_m)), WithinAbs(12.0, 1e-5));
}

TEST_CASE("no data under the line of play, or no raster there, is refused", "[heights]") {
    const TemporaryFolder folder;
    RasterRecipe recipe = wide("EPSG:32624", 5.0);
    recipe.no_data = 0.0;
    const auto gap_around = [&](Point middle) {
        return write_raster(folder.path() / "gap.tif", recipe,
                            on_earth([middle](Point p) { return distance(p, middle) < 15.0 ? 0.0 : 9.0; }));
    };
    CHECK_THAT(refusal(gap_around(tee), one_hole()), contains("gap.tif: no data under the tee of hole 3"));
    CHECK_THAT(refusal(gap_around(pin), one_hole()), contains("of hole 3"));
    CHECK_THAT(refusal(gap_around(0.5 * (tee + pin)), one_hole()),
               contains("no data under the line of play 1"));
    RasterRecipe elsewhere = recipe;
    elsewhere.centre = {-32.0, 45.5};
    CHECK_THAT(refusal(write_raster(folder.path() / "far.tif", elsewhere, on_earth(tilted)), one_hole()),
               contains("far.tif: does not cover the tee of hole 3"));
    RasterRecipe other_side = wide("EPSG:32632", 5.0);
    other_side.centre = {9.0, 46.0};
    CHECK_THAT(
        refusal(write_raster(folder.path() / "zone.tif", other_side, [](LonLat) { return 5.0; }), one_hole()),
        contains("zone.tif: does not cover the tee of hole 3"));
    RasterRecipe small = recipe;
    small.rows = 50;
    CHECK_THAT(refusal(write_raster(folder.path() / "small.tif", small, on_earth(tilted)), one_hole()),
               contains("small.tif: does not cover"));
}

TEST_CASE("rasters that cannot be ground heights are refused in one line", "[heights]") {
    const TemporaryFolder folder;
    const auto file = [&](const char* name, const RasterRecipe& recipe, double raw) {
        return write_raster(folder.path() / name, recipe, [raw](LonLat) { return raw; });
    };
    RasterRecipe recipe = wide("EPSG:32624", 5.0);
    RasterRecipe unplaced = recipe;
    unplaced.crs.clear();
    CHECK_THAT(refusal(file("nowhere.tif", unplaced, 5.0), one_hole()),
               contains("nowhere.tif: has no reference system"));
    CHECK_THAT(refusal(file("nan.tif", recipe, not_known), one_hole()), contains("no data under the tee"));
    CHECK_THAT(refusal(file("infinite.tif", recipe, HUGE_VAL), one_hole()),
               contains("no data under the tee"));
    CHECK_THAT(refusal(file("missing_value.tif", recipe, -9999.0), one_hole()),
               contains("heights from -9999 to -9999 m on hole 3 are not those of a golf hole"));
    const auto steep =
        write_raster(folder.path() / "steep.tif", recipe, on_earth([](Point p) { return 100.0 + p.x; }));
    CHECK_THAT(refusal(steep, one_hole()), contains("check the unit of the raster"));
    CHECK_THAT(refusal(folder.path() / "none.tif", one_hole()), contains("there is no such file"));
    CHECK_THAT(refusal(folder.write("note.tif", "not a raster"), one_hole()),
               contains("note.tif: is no raster of heights that can be opened"));
    CHECK_THAT(
        refusal(folder.write("shapes.geojson", R"({"type":"FeatureCollection","features":[]})"), one_hole()),
        contains("shapes.geojson: is a file of shapes"));
    RasterRecipe picture = recipe;
    picture.bands = 3;
    picture.type = "Byte";
    picture.driver = "PNG";
    CHECK_THAT(refusal(file("picture.png", picture, 5.0), one_hole()), contains("picture.png: is a picture"));
    for (const std::string& message :
         {refusal(file("nowhere.tif", unplaced, 5.0), one_hole()), refusal(steep, one_hole())})
        CHECK(message.find('\n') == std::string::npos);
}

TEST_CASE("coarse rasters and further bands are told", "[heights]") {
    const TemporaryFolder folder;
    RasterRecipe recipe = wide("EPSG:32624", 90.0);
    recipe.columns = recipe.rows = 20;
    recipe.bands = 2;
    Course course = one_hole();
    lay_ground_heights(course, write_raster(folder.path() / "coarse.tif", recipe, on_earth(tilted)));
    check_heights(course.holes.front(), tilted, 0.01, 1e-3);
    REQUIRE(has(course.findings, "heights-coarse", Severity::warning));
    CHECK_THAT(findings_of(course.findings, "heights-coarse").front().message, contains("90 m long"));
    CHECK(has(course.findings, "heights-several-bands", Severity::warning));
}

TEST_CASE("a raster across the antimeridian", "[heights]") {
    const TemporaryFolder folder;
    const LonLat seam{180.0, 46.0};
    RasterRecipe recipe = wide("EPSG:4326", 0.00006);
    // Longitudes run on past 180: the same place twice named.
    recipe.centre = seam;
    Course course = one_hole(seam);
    REQUIRE(course.holes.size() == 1);
    lay_ground_heights(course, write_raster(folder.path() / "seam.tif", recipe, on_earth(tilted, seam)));
    check_heights(course.holes.front(), tilted, 1e-3, 2e-4, seam);
}

TEST_CASE("a survey reads rises and slopes as the player meets them", "[heights]") {
    const TemporaryFolder folder;
    // A hole to the south-west up a plane that rises 3 % to the south and 1 % to the east.
    MapBuilder map(origin);
    map.hole("1", {150, 150}, {-150, -150});
    Course course = map.assemble();
    const auto plane = [](Point p) { return 30.0 + 0.01 * p.x - 0.03 * p.y; };
    lay_ground_heights(course,
                       write_raster(folder.path() / "plane.tif", wide("EPSG:32624", 5.0), on_earth(plane)));
    const HoleSurvey survey = survey_hole(course.holes.front());
    REQUIRE(survey.rise_m);
    CHECK_THAT(*survey.rise_m, WithinAbs(300.0 * 0.03 - 300.0 * 0.01, 0.02));
    REQUIRE(survey.ground.size() == survey.transects.size());
    REQUIRE_FALSE(survey.ground.empty());
    for (std::size_t i = 0; i < survey.ground.size(); ++i) {
        // South-west: half the square root of two of each; to the right is the north-west.
        const double along = std::sqrt(0.5) * (0.03 - 0.01);
        CHECK_THAT(survey.ground[i].rise_along, WithinAbs(along, 2e-4));
        CHECK_THAT(survey.ground[i].rise_to_right, WithinAbs(std::sqrt(0.5) * (-0.03 - 0.01), 2e-4));
        CHECK_THAT(survey.ground[i].over_tee_m, WithinAbs(along * survey.transects[i].station_m, 0.02));
    }
    const HoleSurvey flat = survey_hole(one_hole().holes.front());
    CHECK_FALSE(flat.rise_m);
    CHECK(flat.ground.empty());
}
