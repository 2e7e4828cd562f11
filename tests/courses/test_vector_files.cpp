// Vector files as other programs write them: ids, nested tags, odd geometries, missing reference systems.
#include <gdal_priv.h>
#include <ogrsf_frmts.h>

#include "courses/gdal_session.hpp"
#include "tests/catch.hpp"
#include "tests/courses/conversion.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

std::string collection(const std::string& features) {
    return R"({"type":"FeatureCollection","features":[)" + features + "]}";
}

std::string feature(const std::string& properties, const std::string& geometry, const std::string& id = "") {
    return R"({"type":"Feature",)" + (id.empty() ? "" : "\"id\":\"" + id + "\",") + R"("properties":{)" +
           properties + R"(},"geometry":)" + geometry + "}";
}

const std::string line = R"({"type":"LineString","coordinates":[[-33,46],[-33,46.0027]]})";
const std::string ring =
    "[[-33.0001,46.00265],[-32.9999,46.00265],[-32.9999,46.0028],[-33.0001,46.0028],[-33.0001,46.00265]]";
const std::string square = R"({"type":"Polygon","coordinates":[)" + ring + "]}";
const std::string hole = feature(R"("golf":"hole","ref":"1")", line);
const std::string green = feature(R"("golf":"green")", square);

MapData read(const std::string& geojson) {
    const TemporaryFolder folder;
    return read_map(folder.write("course.geojson", geojson));
}

Course assembled(const std::string& features) {
    return assemble_course(read(collection(features)), {}, assumptions());
}

}  // namespace

TEST_CASE("ids of OpenStreetMap survive other programs", "[vector]") {
    const auto id_of = [](const std::string& properties, const std::string& id = "") {
        return read(collection(feature(R"("golf":"hole")" + properties, line, id))).features.front().id;
    };
    REQUIRE(id_of(R"(,"@id":"way/12")") == "way/12");
    REQUIRE(id_of("", "way/12") == "way/12");
    REQUIRE(id_of(R"(,"full_id":"w12","osm_id":"12","osm_type":"way")") == "way/12");
    REQUIRE(id_of(R"(,"osm_id":"12","osm_type":"relation")") == "relation/12");
    REQUIRE(id_of(R"(,"osm_id":12)") == "way/12");
    REQUIRE(id_of("") == "feature 0");
    REQUIRE(id_of(R"(,"id":"holes-12")") == "feature 0");
    const MapFeature plain = read(collection(feature(R"("golf":"hole")", line))).features.front();
    REQUIRE(plain.label() == "layer course, feature 0");
    REQUIRE(plain.where() == "course.geojson, layer course, feature 0");
    // Data with such fields keeps its credit.
    REQUIRE(read(collection(feature(R"("golf":"hole","@id":"way/12")", line))).attribution ==
            "(c) OpenStreetMap contributors, ODbL");
}

TEST_CASE("tags in any type of field, nested or in any case", "[vector]") {
    const std::string numbers =
        feature(R"("GOLF":"Hole","Ref":7,"par":4.0,"handicap":12,"lit":true,"list":["a","b"])", line);
    const Course course = assembled(numbers + "," + green);
    REQUIRE(course.holes.front().ref == "7");
    REQUIRE(course.holes.front().par == 4);
    REQUIRE(course.holes.front().stroke_index == 12);

    const std::string nested =
        feature(R"("tags":{"golf":"hole","ref":"3","golf:course:name":"Nested"},"meta":1)", line);
    const Course unpacked = assembled(nested + "," + feature(R"("tags":{"golf":"green"})", square));
    REQUIRE(unpacked.name == "Nested");
    REQUIRE(unpacked.holes.front().ref == "3");
    // A field of its own goes before the packed one.
    const MapData both = read(
        collection(feature(R"("golf":"hole","ref":"5","other_tags":"\"ref\"=>\"6\",\"par\"=>\"3\"")", line)));
    REQUIRE(both.features.front().tag("ref") == "5");
    REQUIRE(both.features.front().tag("par") == "3");
}

TEST_CASE("heights, collections and rings that do not close", "[vector]") {
    const std::string high = R"({"type":"LineString","coordinates":[[-33,46,12],[-33,46.0027,15.5]]})";
    REQUIRE(assembled(feature(R"("golf":"hole","ref":"1")", high) + "," + green).holes.size() == 1);

    const std::string bag = R"({"type":"GeometryCollection","geometries":[)" + square +
                            R"(,{"type":"Point","coordinates":[-33,46.001]}]})";
    const Course mixed = assembled(hole + "," + feature(R"("golf":"green")", bag));
    REQUIRE(mixed.holes.size() == 1);
    REQUIRE(has(mixed.findings, "area-missing", Severity::warning));

    const std::string open =
        R"({"type":"Polygon","coordinates":[[[-33.0001,46.00265],[-32.9999,46.00265],[-32.9999,46.0028],[-33.0001,46.0028]]]})";
    const Course closed = assembled(hole + "," + feature(R"("golf":"green")", open));
    REQUIRE(closed.holes.size() == 1);
    REQUIRE(has(closed.findings, "ring-closed", Severity::note));

    const std::string thin =
        R"({"type":"Polygon","coordinates":[[[-33,46.001],[-33,46.0012],[-33,46.001]]]})";
    const Course dropped = assembled(hole + "," + green + "," + feature(R"("golf":"bunker")", thin));
    REQUIRE(has(dropped.findings, "ring-thin", Severity::warning));

    const std::string parts =
        R"({"type":"MultiLineString","coordinates":[[[-33,46.001],[-33,46.0027]],[[-33,46],[-33,46.001]]]})";
    const Course joined = assembled(feature(R"("golf":"hole","ref":"1")", parts) + "," + green);
    REQUIRE_THAT(joined.holes.front().line.length(),
                 Catch::Matchers::WithinAbs(geodesic_distance({-33, 46}, {-33, 46.0027}), 0.01));
    REQUIRE(findings_of(joined.findings, "line-in-parts").empty());
    const std::string apart =
        R"({"type":"MultiLineString","coordinates":[[[-33,46.002],[-33,46.0027]],[[-33,46],[-33,46.001]]]})";
    REQUIRE(has(assembled(feature(R"("golf":"hole","ref":"1")", apart) + "," + green).findings,
                "line-in-parts", Severity::error));

    const Course shapeless = assembled(hole + "," + green + "," + feature(R"("golf":"bunker")", "null"));
    REQUIRE(has(shapeless.findings, "shape-missing", Severity::warning));
}

TEST_CASE("a hole without a shape spoils no other", "[vector]") {
    const Course course =
        assembled(feature(R"("golf":"hole","ref":"2")", "null") + "," +
                  feature(R"("golf":"hole","ref":"3")", R"({"type":"LineString","coordinates":[]})") + "," +
                  hole + "," + green);
    REQUIRE(course.holes.size() == 1);
    REQUIRE_THAT(course.holes.front().line.length(),
                 Catch::Matchers::WithinAbs(geodesic_distance({-33, 46}, {-33, 46.0027}), 0.01));
    REQUIRE(findings_of(course.findings, "hole-line-point").size() == 2);
}

TEST_CASE("an area with a misplaced point is left out", "[vector]") {
    const std::string stray =
        R"({"type":"Polygon","coordinates":[[[-33.0001,46.001],[0,0],[-32.9999,46.0015],[-33.0001,46.001]]]})";
    const Course course = assembled(hole + "," + green + "," + feature(R"("golf":"fairway")", stray));
    REQUIRE(has(course.findings, "shape-huge", Severity::warning));
    REQUIRE(course.holes.front().lies.region(Lie::fairway).empty());
}

TEST_CASE("curves are made linear", "[vector]") {
    prepare_gdal();
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "curves.gpkg";
    {
        const GDALDatasetUniquePtr dataset(GetGDALDriverManager()->GetDriverByName("GPKG")->Create(
            file.c_str(), 0, 0, 0, GDT_Unknown, nullptr));
        OGRSpatialReference crs;
        crs.SetFromUserInput("EPSG:32625");
        crs.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
        OGRLayer* layer = dataset->CreateLayer("course", &crs, wkbUnknown, nullptr);
        for (const char* key : {"golf", "ref"}) {
            OGRFieldDefn field(key, OFTString);
            layer->CreateField(&field);
        }
        const auto add = [&](const char* golf, const char* wkt) {
            const OGRFeatureUniquePtr row(OGRFeature::CreateFeature(layer->GetLayerDefn()));
            row->SetField("golf", golf);
            OGRGeometry* geometry = nullptr;
            REQUIRE(OGRGeometryFactory::createFromWkt(wkt, nullptr, &geometry) == OGRERR_NONE);
            row->SetGeometryDirectly(geometry);
            REQUIRE(layer->CreateFeature(row.get()) == OGRERR_NONE);
        };
        add("hole", "LINESTRING (500000 5000000, 500000 5000300)");
        add("green", "CURVEPOLYGON (CIRCULARSTRING (499980 5000300, 500020 5000300, 499980 5000300))");
    }
    const Course course = assemble_course(read_map(file), {}, assumptions());
    // A disc of 20 m radius; on the central meridian UTM is 0.04 % too small.
    REQUIRE_THAT(course.holes.front().lies.region(Lie::green).area(),
                 Catch::Matchers::WithinAbs(1256.6 / (0.9996 * 0.9996), 3.0));
}

TEST_CASE("a layer without a reference system", "[vector]") {
    const TemporaryFolder folder;
    const std::string table =
        "golf,ref,WKT\nhole,1,\"LINESTRING (-33 46, -33 46.0027)\"\n"
        "green,,\"POLYGON ((-33.0001 46.00265, -32.9999 46.00265, -32.9999 46.0028, -33.0001 "
        "46.0028, -33.0001 46.00265))\"\n";
    const Course course = assemble_course(read_map(folder.write("course.csv", table)), {}, assumptions());
    REQUIRE(course.holes.size() == 1);
    const std::vector<Finding> missing = findings_of(course.findings, "crs-missing");
    REQUIRE(missing.size() == 1);
    REQUIRE(missing.front().severity == Severity::warning);
    REQUIRE(missing.front().feature == "layer course");
}

TEST_CASE("tags that a Shapefile cut off are reported", "[vector]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    map.area(rectangle({30, 100}, 10, 10), {{"golf", "bunker"}, {"description", std::string(300, 'x')}});
    const TemporaryFolder folder;
    const std::filesystem::path shapes =
        converted(folder.write("built.osm", map.osm()), folder.path() / "shapes",
                  {"-f", "ESRI Shapefile", "points", "lines", "multipolygons"});
    const MapData data = read_map(shapes);
    REQUIRE(has(data.findings, "tags-cut-off", Severity::warning));
    REQUIRE(assemble_course(data, {}, assumptions()).holes.front().lies.region(Lie::bunker).area() > 90.0);
}

TEST_CASE("GDAL's default settings split an old multipolygon in two; it is put together again", "[vector]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    const long outer = map.area(rectangle({0, 150}, 40, 100), {{"golf", "fairway"}});
    const long inner = map.area(rectangle({0, 150}, 10, 10), {});
    map.relation({{outer, "outer"}, {inner, "inner"}}, {{"type", "multipolygon"}});
    const TemporaryFolder folder;
    const std::filesystem::path file =
        converted(folder.write("built.osm", map.osm()), folder.path() / "default.gpkg", {"-f", "GPKG"});
    const Course course = assemble_course(read_map(file), {}, assumptions());
    REQUIRE_THAT(course.holes.front().lies.region(Lie::fairway).area(),
                 Catch::Matchers::WithinAbs(3900.0, 1.0));
}

TEST_CASE("the same thing twice counts once", "[vector]") {
    const Course course = assembled(hole + "," + hole + "," + green + "," + green);
    REQUIRE(course.holes.size() == 1);
    REQUIRE(findings_of(course.findings, "drawn-twice").size() == 2);
    REQUIRE(findings_of(course.findings, "alternative-line").empty());  // it is not from another tee
    // One outline for two tees is two tees.
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    map.area(rectangle({0, 40}, 10, 10), {{"golf", "tee"}, {"tee", "red"}});
    map.area(rectangle({0, 40}, 10, 10), {{"golf", "tee"}, {"tee", "green"}});
    REQUIRE(map.assemble({{}, "red", {}}).holes.front().line.length() < 261.0);
    REQUIRE(map.assemble({{}, "green", {}}).holes.front().line.length() < 261.0);
}

TEST_CASE("a hole drawn as a point beside holes drawn as lines", "[vector]") {
    const std::string point = R"({"type":"Point","coordinates":[-33.002,46.001]})";
    const Course missing = assembled(hole + "," + green + "," + feature(R"("golf":"hole","ref":"2")", point));
    REQUIRE(missing.holes.size() == 1);
    const std::vector<Finding> errors = findings_of(missing.findings, "hole-not-a-line");
    REQUIRE(errors.size() == 1);
    REQUIRE(errors.front().severity == Severity::error);
    REQUIRE(errors.front().hole == "2");
    // Hole 1 has its line: the point beside it is only a mark.
    const Course marked = assembled(hole + "," + green + "," + feature(R"("golf":"hole","ref":"1")", point));
    REQUIRE(has(marked.findings, "hole-not-a-line", Severity::note));
}

TEST_CASE("relations that are bags of members are not taken for areas", "[vector]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    const long loop = map.area(rectangle({0, 500}, 40, 100), {});
    map.relation({{loop, "outer"}}, {{"type", "site"}, {"leisure", "golf_course"}, {"name", "Gull"}});
    const Course course = map.assemble();
    REQUIRE(course.name.empty());
    REQUIRE(has(course.findings, "relation-unused", Severity::note));
    REQUIRE(has(course.findings, "boundary-missing", Severity::warning));
}
