#include "planner/reports/plan_layers.hpp"

#include <cpl_vsi.h>

#include <cmath>
#include <nlohmann/json.hpp>
#include <set>

#include "planner/reports/layer_style.hpp"
#include "planner/reports/plan_reports.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"
#include "tests/planner/vector_reading.hpp"

namespace landwidth {
namespace {

using Catch::Matchers::WithinAbs;
using fixture::DatasetPtr;
using fixture::hostile_names;
using fixture::open_vector;
using fixture::PlanFixture;
using fixture::two_holes;
using Json = nlohmann::ordered_json;

// Polygons of a Polygon or MultiPolygon geometry: rings of positions.
std::vector<Json> polygons_of(const Json& geometry) {
    if (geometry["type"] == "Polygon") return {geometry["coordinates"]};
    if (geometry["type"] == "MultiPolygon") return geometry["coordinates"].get<std::vector<Json>>();
    return {};
}

std::vector<Json> lines_of(const Json& geometry) {
    if (geometry["type"] == "LineString") return {geometry["coordinates"]};
    if (geometry["type"] == "MultiLineString") return geometry["coordinates"].get<std::vector<Json>>();
    return {};
}

// Positive when counterclockwise; about the ring's first point, since the rings are small and far from 0.
double signed_area_deg2(const Json& ring) {
    const double x0 = ring[0][0].get<double>();
    const double y0 = ring[0][1].get<double>();
    double twice = 0.0;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
        const double x1 = ring[i][0].get<double>() - x0, y1 = ring[i][1].get<double>() - y0;
        const double x2 = ring[i + 1][0].get<double>() - x0, y2 = ring[i + 1][1].get<double>() - y0;
        twice += x1 * y2 - x2 * y1;
    }
    return 0.5 * twice;
}

// Area in the hole's plane, from longitudes and latitudes; inner rings taken off.
double area_m2(const PlaneFrame& frame, const Json& geometry) {
    double area = 0.0;
    for (const Json& polygon : polygons_of(geometry)) {
        for (const Json& ring : polygon) {
            double twice = 0.0;
            for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
                const Point a = frame.to_plane({ring[i][0].get<double>(), ring[i][1].get<double>()});
                const Point b = frame.to_plane({ring[i + 1][0].get<double>(), ring[i + 1][1].get<double>()});
                twice += cross(a, b);
            }
            area += 0.5 * twice;  // inner rings run clockwise and are negative
        }
    }
    return area;
}

// What rounding to 1e-8 degrees may cost an area: every corner moves by up to 0.56 mm on each axis (half of
// 1e-8 degrees of latitude, 111.7 km each), which an edge of the extent turns into its length times that.
void check_covers(double area, const Box& extent) {
    const double width = extent.max.x - extent.min.x;
    const double height = extent.max.y - extent.min.y;
    CHECK_THAT(area, WithinAbs(width * height, 2.0 * (width + height) * 0.00056));
}

std::vector<Json> features_of(const Json& collection, const std::string& layer,
                              const std::string& hole = "") {
    std::vector<Json> found;
    for (const Json& feature : collection["features"]) {
        const Json& properties = feature["properties"];
        if (properties["layer"] == layer && (hole.empty() || properties["hole"] == hole))
            found.push_back(feature);
    }
    return found;
}

Json read_geojson(const PlanFixture& fixture) {
    return Json::parse(plan_geojson(fixture.view()));
}

TEST_CASE("a plan has its four layers", "[plan_layers]") {
    const Json plan = read_geojson(two_holes());
    CHECK(plan["type"] == "FeatureCollection");
    CHECK(features_of(plan, "aim_lines").size() == 5);         // 3 and 2 choices
    CHECK(features_of(plan, "landing_ellipses").size() == 8);  // 2 clubs x 2 shares x 2 holes
    CHECK(features_of(plan, "landing_widths").size() == 2);    // two choices with a fairway below
    std::set<std::string> lies;
    for (const Json& feature : features_of(plan, "lies", "1"))
        lies.insert(feature["properties"]["lie"]);
    CHECK(lies == std::set<std::string>{"teeing area", "fairway", "rough", "bunker", "trees", "green",
                                        "red penalty area", "out of bounds"});
}

TEST_CASE("a plan without holes is an empty collection", "[plan_layers]") {
    PlanFixture fixture = two_holes();
    fixture.course.holes.clear();
    fixture.plan.holes.clear();
    CHECK(read_geojson(fixture)["features"] == Json::array());
}

TEST_CASE("rings are closed and right-handed, positions are on the earth", "[plan_layers]") {
    const Json plan = read_geojson(two_holes());
    int inner_rings = 0;
    for (const Json& feature : plan["features"]) {
        for (const Json& polygon : polygons_of(feature["geometry"])) {
            REQUIRE_FALSE(polygon.empty());
            for (std::size_t r = 0; r < polygon.size(); ++r) {
                const Json& ring = polygon[r];
                REQUIRE(ring.size() >= 4);
                CHECK(ring.front() == ring.back());
                CHECK((signed_area_deg2(ring) > 0.0) == (r == 0));
                inner_rings += r > 0 ? 1 : 0;
            }
        }
        for (const Json& line : lines_of(feature["geometry"]))
            CHECK(line.size() >= 2);
    }
    CHECK(inner_rings > 0);  // the rough around everything else
}

TEST_CASE("the lies of a hole cover its ground", "[plan_layers]") {
    const PlanFixture fixture = two_holes();
    const Json plan = read_geojson(fixture);
    for (const Hole& hole : fixture.course.holes) {
        double sum = 0.0;
        for (const Json& feature : features_of(plan, "lies", hole.ref)) {
            sum += area_m2(hole.frame, feature["geometry"]);
        }
        check_covers(sum, hole.lies.extent());
    }
}

TEST_CASE("aim lines run from the tee to the aim point, the best last", "[plan_layers]") {
    const PlanFixture fixture = two_holes();
    const auto aims = features_of(read_geojson(fixture), "aim_lines", "1");
    REQUIRE(aims.size() == 3);
    const Json& best = aims.back();
    const Json& properties = best["properties"];
    CHECK(properties["choice"] == "best");
    CHECK(properties["rank"] == 1);
    CHECK(properties["club"] == "3-wood");
    CHECK(properties["strokes"] == 4.61);
    CHECK(properties["costs_strokes"] == 0.0);
    CHECK(properties["aim_bearing_deg"] == 358.06);
    CHECK(properties["fairway_share"] == 0.58);
    CHECK(properties["trouble_share"] == 0.13);
    CHECK(properties["leave_yd"] == 178.3);
    CHECK(properties["confidence"] == 0.83);
    CHECK(properties["toss_up"] == false);
    CHECK(properties["label"] == "3-wood 4.61");
    CHECK(properties["attribution"] == fixture.course.attribution);
    const PlaneFrame& frame = fixture.course.holes[0].frame;
    const Json& line = best["geometry"]["coordinates"];
    const Point from = frame.to_plane({line[0][0].get<double>(), line[0][1].get<double>()});
    const Point to = frame.to_plane({line[1][0].get<double>(), line[1][1].get<double>()});
    CHECK_THAT(length(from), WithinAbs(0.0, 0.002));
    CHECK_THAT(distance(to, fixture.plan.holes[0].choices[0].aim_point), WithinAbs(0.0, 0.002));

    CHECK(aims[1]["properties"]["choice"] == "second");
    CHECK(aims[1]["properties"]["costs_strokes"] == 0.08);
    CHECK(aims[1]["properties"]["confidence"].is_null());
    CHECK(aims[0]["properties"]["choice"] == "other");
    CHECK(aims[0]["properties"]["rank"] == 3);
}

TEST_CASE("landing ellipses reach as far as the pattern's shares say", "[plan_layers]") {
    const PlanFixture fixture = two_holes();
    const PlaneFrame& frame = fixture.course.holes[0].frame;
    const Point along = along_bearing(-0.0339);
    int checked = 0;
    for (const Json& feature : features_of(read_geojson(fixture), "landing_ellipses", "1")) {
        if (feature["properties"]["club"] != "3-wood") continue;
        const double share = feature["properties"]["share"].get<double>();
        double furthest = 0.0;
        double right = -1e9;
        for (const Json& position : feature["geometry"]["coordinates"][0]) {
            const Point p = frame.to_plane({position[0].get<double>(), position[1].get<double>()});
            furthest = std::max(furthest, dot(p, along));
            right = std::max(right, dot(p, to_the_right(along)));
        }
        // Closed form of the bivariate t: a share within radius r is 1 - (1 + r^2 / v)^(-v / 2), v = 8, of a
        // scale sd sqrt((v - 2) / v); carry 189 m, sd 12 m, side 2 m, sd 15 m.
        const double radius = std::sqrt(8.0 * (std::pow(1.0 - share, -0.25) - 1.0));
        CHECK_THAT(furthest, WithinAbs(189.0 + radius * 12.0 * std::sqrt(0.75), 0.05));
        CHECK_THAT(right, WithinAbs(2.0 + radius * 15.0 * std::sqrt(0.75), 0.05));
        ++checked;
    }
    CHECK(checked == 2);
}

TEST_CASE("landing widths lie across the aim", "[plan_layers]") {
    const PlanFixture fixture = two_holes();
    const PlaneFrame& frame = fixture.course.holes[0].frame;
    const auto widths = features_of(read_geojson(fixture), "landing_widths", "1");
    REQUIRE(widths.size() == 2);
    const Json& best = widths.back();
    CHECK(best["properties"]["width_yd"] == 37.2);  // 34 m
    CHECK(best["properties"]["left_yd"] == -12.5);  // 11.4 m
    CHECK(best["properties"]["label"] == "3-wood: 37 yd wide");
    const Json& line = best["geometry"]["coordinates"];
    const Point a = frame.to_plane({line[0][0].get<double>(), line[0][1].get<double>()});
    const Point b = frame.to_plane({line[1][0].get<double>(), line[1][1].get<double>()});
    CHECK_THAT(distance(a, b), WithinAbs(34.0, 0.002));
    CHECK_THAT(dot(b - a, along_bearing(-0.0339)), WithinAbs(0.0, 0.01));
    CHECK(dot(b - a, to_the_right(along_bearing(-0.0339))) > 0.0);
}

TEST_CASE("map viewers without styles of their own find simplestyle properties", "[plan_layers]") {
    const Json plan = read_geojson(two_holes());
    for (const Json& feature : plan["features"]) {
        const Json& properties = feature["properties"];
        CHECK(properties["title"].is_string());
        CHECK(properties["stroke"].get<std::string>().size() == 7);
        CHECK(properties["stroke-width"].is_number());
        const bool area = !polygons_of(feature["geometry"]).empty();
        CHECK(properties.contains("fill") == area);
        CHECK(properties.contains("fill-opacity") == area);
        if (properties["layer"] == "lies") {
            CHECK(properties["fill"] ==
                  category_of(layer_style("lies"), properties["lie"].get<std::string>()).fill);
        }
    }
}

TEST_CASE("what crosses the antimeridian is cut there and loses nothing", "[plan_layers]") {
    const double tee_longitude = GENERATE(180.0, -180.0, 179.9999, -179.9995, 179.0);
    CAPTURE(tee_longitude);
    PlanFixture fixture = two_holes();
    fixture.course.holes[0].frame = PlaneFrame({tee_longitude, -17.0});
    const Hole& hole = fixture.course.holes[0];
    const Json plan = read_geojson(fixture);
    double sum = 0.0;
    for (const Json& feature : features_of(plan, "lies", "1")) {
        sum += area_m2(hole.frame, feature["geometry"]);
        for (const Json& polygon : polygons_of(feature["geometry"])) {
            for (std::size_t r = 0; r < polygon.size(); ++r) {
                double west = 1e9, east = -1e9;
                for (const Json& position : polygon[r]) {
                    west = std::min(west, position[0].get<double>());
                    east = std::max(east, position[0].get<double>());
                }
                CHECK(west >= -180.0);
                CHECK(east <= 180.0);
                CHECK(east - west < 0.01);
                CHECK((signed_area_deg2(polygon[r]) > 0.0) == (r == 0));
            }
        }
    }
    check_covers(sum, hole.lies.extent());
    for (const Json& feature : features_of(plan, "aim_lines", "1")) {
        for (const Json& line : lines_of(feature["geometry"])) {
            for (const Json& position : line)
                CHECK(std::abs(position[0].get<double>()) <= 180.0);
            CHECK(std::abs(line[0][0].get<double>() - line[line.size() - 1][0].get<double>()) < 0.01);
        }
    }
}

TEST_CASE("GDAL reads the GeoJSON back", "[plan_layers]") {
    std::string text = plan_geojson(two_holes().view());
    const char* path = "/vsimem/plan_layers_test.geojson";
    VSIFCloseL(VSIFileFromMemBuffer(path, reinterpret_cast<GByte*>(text.data()), text.size(), FALSE));
    {
        const DatasetPtr collection = open_vector(path);
        REQUIRE(collection);
        REQUIRE(collection->GetLayerCount() == 1);
        OGRLayer* layer = collection->GetLayer(0);
        CHECK(layer->GetFeatureCount() == static_cast<GIntBig>(Json::parse(text)["features"].size()));
        CHECK(std::string(layer->GetSpatialRef()->GetAuthorityCode(nullptr)) == "4326");
        for (auto& feature : *layer)
            CHECK(feature->GetGeometryRef()->IsValid());
    }
    VSIUnlink(path);
}

TEST_CASE("GeoJSON is the same bytes every time, and hostile names stay data", "[plan_layers]") {
    const PlanFixture fixture = hostile_names();
    const std::string text = plan_geojson(fixture.view());
    CHECK(text == plan_geojson(fixture.view()));
    CHECK(Json::parse(text)["features"][0]["properties"]["course"] == fixture.course.name);
}

TEST_CASE("the styles have every value a layer can hold", "[plan_layers]") {
    for (const Lie lie : all_lies)
        CHECK_NOTHROW(category_of(layer_style(lies_layer), lie_name(lie)));
    for (const std::size_t rank : {0U, 1U, 2U, 7U}) {
        CHECK_NOTHROW(category_of(layer_style(aim_lines_layer), choice_word(rank)));
    }
    CHECK_THROWS_AS(layer_style("roads"), std::logic_error);
    CHECK_THROWS_AS(category_of(layer_style(lies_layer), "lava"), std::logic_error);
}

}  // namespace
}  // namespace landwidth
