// The same course in every format, CRS and state of conversion gives the same holes.
#include <ogrsf_frmts.h>

#include <set>

#include "courses/gdal_session.hpp"
#include "tests/catch.hpp"
#include "tests/courses/conversion.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

const std::filesystem::path data = std::filesystem::path(LANDWIDTH_TESTS_DIR) / "courses" / "data";

std::unique_ptr<OGRGeometry> geometry_of(const MapShape& shape) {
    if (const auto* point = std::get_if<LonLat>(&shape))
        return std::make_unique<OGRPoint>(point->lon_deg, point->lat_deg);
    if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&shape)) {
        auto line = std::make_unique<OGRLineString>();
        for (const LonLat& place : paths->front())
            line->addPoint(place.lon_deg, place.lat_deg);
        return line;
    }
    const auto ring_of = [](const LonLatPath& path) {
        auto ring = std::make_unique<OGRLinearRing>();
        for (const LonLat& place : path)
            ring->addPoint(place.lon_deg, place.lat_deg);
        ring->closeRings();
        return ring;
    };
    auto area = std::make_unique<OGRMultiPolygon>();
    for (const LonLatPolygon& polygon : std::get<std::vector<LonLatPolygon>>(shape)) {
        auto part = std::make_unique<OGRPolygon>();
        part->addRingDirectly(ring_of(polygon.outer).release());
        for (const LonLatPath& inner : polygon.inners)
            part->addRingDirectly(ring_of(inner).release());
        area->addGeometryDirectly(part.release());
    }
    return area;
}

enum class Kinds { points, lines, areas, all };

bool is_of(const MapShape& shape, Kinds kinds) {
    return kinds == Kinds::all || shape.index() == static_cast<std::size_t>(kinds);
}

// A layer with one field a tag, as somebody who works with a GIS would have it.
void add_layer(GDALDataset& dataset, const std::string& name, const MapData& map, Kinds kinds,
               const char* crs, const char* const* options = nullptr) {
    OGRSpatialReference wgs84;
    wgs84.SetWellKnownGeogCS("WGS84");
    wgs84.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    OGRSpatialReference target;
    REQUIRE(target.SetFromUserInput(crs) == OGRERR_NONE);
    target.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    const std::unique_ptr<OGRCoordinateTransformation> transformation(
        OGRCreateCoordinateTransformation(&wgs84, &target));
    const OGRwkbGeometryType type = kinds == Kinds::points  ? wkbPoint
                                    : kinds == Kinds::lines ? wkbLineString
                                    : kinds == Kinds::areas ? wkbMultiPolygon
                                                            : wkbUnknown;
    OGRLayer* layer = dataset.CreateLayer(name.c_str(), &target, type, const_cast<char**>(options));
    REQUIRE(layer != nullptr);
    std::set<std::string> keys;
    for (const MapFeature& feature : map.features) {
        for (const auto& [key, value] : feature.tags)
            keys.insert(key);
    }
    std::map<std::string, int> fields;
    for (const std::string& key : keys) {
        OGRFieldDefn field(key.c_str(), OFTString);
        REQUIRE(layer->CreateField(&field) == OGRERR_NONE);
        fields[key] = layer->GetLayerDefn()->GetFieldCount() - 1;
    }
    for (const MapFeature& feature : map.features) {
        if (!is_of(feature.shape, kinds)) continue;
        const OGRFeatureUniquePtr row(OGRFeature::CreateFeature(layer->GetLayerDefn()));
        for (const auto& [key, value] : feature.tags)
            row->SetField(fields.at(key), value.c_str());
        std::unique_ptr<OGRGeometry> geometry = geometry_of(feature.shape);
        REQUIRE(geometry->transform(transformation.get()) == OGRERR_NONE);
        row->SetGeometryDirectly(geometry.release());
        REQUIRE(layer->CreateFeature(row.get()) == OGRERR_NONE);
    }
}

GDALDatasetUniquePtr create(const char* driver, const std::filesystem::path& path) {
    prepare_gdal();
    GDALDriver* found = GetGDALDriverManager()->GetDriverByName(driver);
    REQUIRE(found != nullptr);
    GDALDatasetUniquePtr dataset(found->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr));
    REQUIRE(dataset != nullptr);
    return dataset;
}

std::filesystem::path written(const char* driver, const std::filesystem::path& path, const MapData& map,
                              const char* crs, const char* const* options = nullptr) {
    const GdalMessages quiet;
    const GDALDatasetUniquePtr dataset = create(driver, path);
    add_layer(*dataset, "course", map, Kinds::all, crs, options);
    return path;
}

void check_same_region(const Hole& expected, const Hole& actual, Lie lie) {
    INFO("hole " << expected.ref << ", " << lie_name(lie));
    const double area = expected.lies.region(lie).area();
    REQUIRE_THAT(actual.lies.region(lie).area(), Catch::Matchers::WithinAbs(area, 0.002 * area + 0.01));
}

void check_same_course(const Course& expected, const Course& actual) {
    REQUIRE(actual.name == expected.name);
    REQUIRE(actual.holes.size() == expected.holes.size());
    for (std::size_t i = 0; i < expected.holes.size(); ++i) {
        const Hole& hole = expected.holes[i];
        const Hole& other = actual.holes[i];
        INFO("hole " << hole.ref);
        REQUIRE(other.ref == hole.ref);
        REQUIRE(other.name == hole.name);
        REQUIRE(other.par == hole.par);
        REQUIRE(other.stroke_index == hole.stroke_index);
        REQUIRE(other.tee == hole.tee);
        REQUIRE(other.line.vertices().size() == hole.line.vertices().size());
        for (std::size_t k = 0; k < hole.line.vertices().size(); ++k) {
            const LonLat a = hole.frame.to_lonlat(hole.line.vertices()[k]);
            const LonLat b = other.frame.to_lonlat(other.line.vertices()[k]);
            REQUIRE(geodesic_distance(a, b) < 0.02);
        }
        for (const Lie lie : all_lies)
            check_same_region(hole, other, lie);
        REQUIRE(other.surroundings.size() == hole.surroundings.size());
    }
}

void check(const std::filesystem::path& file, const Course& expected) {
    INFO(file.filename());
    check_same_course(expected, assemble_course(read_map(file), {}, assumptions()));
}

}  // namespace

TEST_CASE("the fixture is what it is meant to be", "[formats]") {
    const MapData map = read_map(data / "two_holes.osm");
    REQUIRE(map.source == "two_holes.osm");
    REQUIRE(map.attribution == "(c) OpenStreetMap contributors, ODbL");
    const Course course = assemble_course(map, {}, assumptions());
    REQUIRE(course.name == "Skerrymoor Links");
    REQUIRE(course.holes.size() == 2);
    const Hole& first = hole_of(course, "1");
    REQUIRE(first.name == "Låring");
    REQUIRE(first.par == 4);
    REQUIRE_FALSE(first.par_inferred);
    REQUIRE(first.stroke_index == 2);
    REQUIRE(first.tee == "white");
    // By hand: hypot(6, 215) + hypot(76, 130) m.
    REQUIRE_THAT(first.line.length(), Catch::Matchers::WithinAbs(215.0837 + 150.5855, 0.05));
    // By hand: an ellipse of 24 corners has 24/2 sin(15 degrees) half-axis products: 3.10583 a b.
    REQUIRE_THAT(first.lies.region(Lie::green).area(), Catch::Matchers::WithinAbs(3.10583 * 15 * 12, 0.5));
    const Hole& second = hole_of(course, "2");
    REQUIRE(second.par == 3);
    REQUIRE_THAT(second.lies.region(Lie::green).area(), Catch::Matchers::WithinAbs(3.10583 * 13 * 11, 0.5));
    // Inside the boundary the ring of the fairway is cut out by the bunker; nothing is left of the fairway
    // there.
    REQUIRE(first.lies.lie_at(first.frame.to_plane({-31.2 - 2.0 / 82100.0, -42.598073})) == Lie::bunker);
    // Only what is inferred in the ordinary way is reported on a map without faults.
    for (const Finding& finding : course.findings)
        REQUIRE(finding.severity == Severity::note);
}

TEST_CASE(".osm.pbf is read like .osm", "[formats]") {
    const Course expected = assemble_course(read_map(data / "two_holes.osm"), {}, assumptions());
    const MapData map = read_map(data / "two_holes.osm.pbf");
    check_same_course(expected, assemble_course(map, {}, assumptions()));
    REQUIRE(map.attribution == "(c) OpenStreetMap contributors, ODbL");
    // The ids are those of the source.
    std::set<std::string> ids;
    for (const MapFeature& feature : map.features)
        ids.insert(feature.id);
    REQUIRE(ids.contains("way/1002"));
    REQUIRE(ids.contains("relation/5001"));
}

TEST_CASE("formats with a field for every tag, in several reference systems", "[formats]") {
    const MapData map = read_map(data / "two_holes.osm");
    const Course expected = assemble_course(map, {}, assumptions());
    const TemporaryFolder folder;
    for (const char* crs : {"EPSG:4326", "EPSG:32725", "EPSG:3857"}) {
        INFO(crs);
        const std::string name = std::string(crs).substr(5);
        check(written("GPKG", folder.path() / (name + ".gpkg"), map, crs), expected);
        check(written("FlatGeobuf", folder.path() / (name + ".fgb"), map, crs), expected);
        const std::filesystem::path shapes = folder.path() / (name + "-shapes");
        {
            const GdalMessages quiet;
            const GDALDatasetUniquePtr dataset = create("ESRI Shapefile", shapes);
            add_layer(*dataset, "points", map, Kinds::points, crs);
            add_layer(*dataset, "lines", map, Kinds::lines, crs);
            add_layer(*dataset, "areas", map, Kinds::areas, crs);
        }
        check(shapes, expected);
    }
    check(written("GeoJSON", folder.path() / "course.geojson", map, "EPSG:4326"), expected);
    check(written("LIBKML", folder.path() / "course.kml", map, "EPSG:4326"), expected);
    check(written("LIBKML", folder.path() / "course.kmz", map, "EPSG:4326"), expected);
    check(written("KML", folder.path() / "plain.kml", map, "EPSG:4326"), expected);
}

TEST_CASE("files converted with GDAL's default settings", "[formats]") {
    const std::filesystem::path source = data / "two_holes.osm";
    const Course expected = assemble_course(read_map(source), {}, assumptions());
    const TemporaryFolder folder;
    check(converted(source, folder.path() / "default.gpkg", {"-f", "GPKG"}), expected);
    check(converted(source, folder.path() / "utm.gpkg", {"-f", "GPKG", "-t_srs", "EPSG:32725"}), expected);
    check(converted(source, folder.path() / "shapes",
                    {"-f", "ESRI Shapefile", "points", "lines", "multipolygons"}),
          expected);
    check(converted(source, folder.path() / "default.kml", {"-f", "LIBKML"}), expected);
    REQUIRE(read_map(folder.path() / "default.gpkg").attribution == "(c) OpenStreetMap contributors, ODbL");
}

TEST_CASE("one Shapefile of lines holds a hole with its areas", "[formats]") {
    const TemporaryFolder folder;
    const std::filesystem::path file =
        converted(data / "two_holes.osm", folder.path() / "lines.shp", {"-f", "ESRI Shapefile", "lines"});
    const Course course = assemble_course(read_map(file), {}, assumptions());
    REQUIRE(course.holes.size() == 2);
    REQUIRE(hole_of(course, "2").lies.region(Lie::green).area() > 400.0);
    REQUIRE(has(course.findings, "pin-inferred", Severity::note));
    REQUIRE(has(course.findings, "boundary-missing", Severity::warning));
}

TEST_CASE("packed files are opened", "[formats]") {
    prepare_gdal();
    const TemporaryFolder folder;
    const std::filesystem::path source = data / "two_holes.osm";
    const Course expected = assemble_course(read_map(source), {}, assumptions());
    const std::string packed = "/vsigzip/" + (folder.path() / "two_holes.osm.gz").string();
    REQUIRE(CPLCopyFile(packed.c_str(), source.c_str()) == 0);
    check(folder.path() / "two_holes.osm.gz", expected);
    const std::string zipped = "/vsizip/" + (folder.path() / "two_holes.zip").string() + "/two_holes.osm";
    REQUIRE(CPLCopyFile(zipped.c_str(), source.c_str()) == 0);
    check(folder.path() / "two_holes.zip", expected);
}

TEST_CASE("degrees on another datum and axes the other way round are still the same place", "[formats]") {
    const MapData map = read_map(data / "two_holes.osm");
    const Course expected = assemble_course(map, {}, assumptions());
    const TemporaryFolder folder;
    // GML keeps the authority's axis order, latitude first.
    check(converted(written("GPKG", folder.path() / "a.gpkg", map, "EPSG:4326"), folder.path() / "a.gml",
                    {"-f", "GML", "-dsco", "FORMAT=GML3.2"}),
          expected);
    // A transverse Mercator of a committee's own, in feet.
    check(written("GPKG", folder.path() / "feet.gpkg", map,
                  "+proj=tmerc +lat_0=-42 +lon_0=-31 +k=0.9999 +x_0=50000 +y_0=9000 +ellps=WGS84 "
                  "+units=ft +no_defs"),
          expected);
}
