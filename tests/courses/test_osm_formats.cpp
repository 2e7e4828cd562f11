// The same OpenStreetMap data through every format of its own: same features, same findings.
#include <fstream>

#include "courses/reading/osm_binary.hpp"
#include "courses/reading/osm_file.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"
#include "tests/courses/osm_conversion.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

void check_same_path(const LonLatPath& a, const LonLatPath& b) {
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        // A step of the data: positions of more digits are rounded by whoever writes them.
        REQUIRE(std::abs(a[i].lon_deg - b[i].lon_deg) < 1.5e-7);
        REQUIRE(std::abs(a[i].lat_deg - b[i].lat_deg) < 1.5e-7);
    }
}

void check_same_shape(const MapShape& a, const MapShape& b) {
    REQUIRE(a.index() == b.index());
    if (const auto* point = std::get_if<LonLat>(&a)) {
        check_same_path({*point}, {std::get<LonLat>(b)});
    } else if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&a)) {
        const auto& others = std::get<std::vector<LonLatPath>>(b);
        REQUIRE(paths->size() == others.size());
        for (std::size_t i = 0; i < paths->size(); ++i)
            check_same_path((*paths)[i], others[i]);
    } else {
        const auto& polygons = std::get<std::vector<LonLatPolygon>>(a);
        const auto& others = std::get<std::vector<LonLatPolygon>>(b);
        REQUIRE(polygons.size() == others.size());
        for (std::size_t i = 0; i < polygons.size(); ++i) {
            check_same_path(polygons[i].outer, others[i].outer);
            REQUIRE(polygons[i].inners.size() == others[i].inners.size());
            for (std::size_t k = 0; k < polygons[i].inners.size(); ++k)
                check_same_path(polygons[i].inners[k], others[i].inners[k]);
        }
    }
}

void check_same(const MapData& expected, const MapData& actual) {
    REQUIRE(actual.attribution == expected.attribution);
    REQUIRE(actual.features.size() == expected.features.size());
    for (std::size_t i = 0; i < expected.features.size(); ++i) {
        INFO(expected.features[i].id);
        REQUIRE(actual.features[i].id == expected.features[i].id);
        REQUIRE(actual.features[i].tags == expected.features[i].tags);
        REQUIRE(actual.features[i].points_missing == expected.features[i].points_missing);
        check_same_shape(expected.features[i].shape, actual.features[i].shape);
    }
    REQUIRE(actual.findings.size() == expected.findings.size());
    for (std::size_t i = 0; i < expected.findings.size(); ++i) {
        REQUIRE(actual.findings[i].code == expected.findings[i].code);
        REQUIRE(actual.findings[i].severity == expected.findings[i].severity);
        REQUIRE(actual.findings[i].feature == expected.findings[i].feature);
        REQUIRE(actual.findings[i].message == expected.findings[i].message);
        REQUIRE(actual.findings[i].place.has_value() == expected.findings[i].place.has_value());
    }
}

// Everything a relation can be, whole and with losses.
MapBuilder many_things() {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    map.hole("2", {100, 0}, {100, 350}, {{"name", "Low \"Road\" & Ditch"}});
    map.area(rectangle({0, 150}, 40, 100), {{"golf", "fairway"}});
    map.line({{-60, 0}, {-60, 400}}, {{"waterway", "stream"}});
    const long west = map.line({{-90, 0}, {-120, 100}, {-90, 200}}, {});
    const long east = map.line({{-90, 200}, {-70, 100}, {-90, 0}}, {});
    const long island = map.area(rectangle({-95, 100}, 10, 10), {});
    map.relation({{west, "outer"}, {east, "outer"}, {island, "inner"}},
                 {{"type", "multipolygon"}, {"natural", "water"}});
    const long open = map.line({{200, 0}, {230, 0}, {230, 100}}, {});
    map.relation({{open, "outer"}}, {{"type", "multipolygon"}, {"natural", "wood"}});
    map.relation({{west, "outer"}, {4711, "outer"}}, {{"type", "multipolygon"}, {"natural", "scrub"}});
    map.relation({{4712, "outer"}}, {{"type", "multipolygon"}, {"golf", "rough"}});
    const long crossing = map.area({{150, 0}, {180, 40}, {180, 0}, {150, 40}}, {});
    map.relation({{crossing, "outer"}}, {{"type", "multipolygon"}, {"golf", "bunker"}});
    const long old = map.area(rectangle({0, 280}, 60, 20), {{"golf", "rough"}});
    const long in_it = map.area(rectangle({20, 280}, 5, 5), {});
    map.relation({{old, "outer"}, {in_it, "inner"}}, {{"type", "multipolygon"}});
    map.relation({{west, ""}}, {{"type", "site"}, {"leisure", "golf_course"}});
    return map;
}

}  // namespace

TEST_CASE("the same map through every OpenStreetMap format", "[osm]") {
    const TemporaryFolder folder;
    const std::filesystem::path source = folder.write("map.osm", many_things().osm());
    const MapData expected = read_map(source);
    for (const char* code : {"relation-cut", "relation-incomplete", "relation-crossing", "relation-unused"})
        REQUIRE(findings_of(expected.findings, code).size() >= 1);

    const auto check = [&](const std::string& name) {
        INFO(name);
        check_same(expected, read_map(folder.path() / name));
    };
    const auto written = [&](const std::string& name, const std::string& format = "") {
        run_osmium("cat " + source.string() + " --overwrite -o " + (folder.path() / name).string() +
                   (format.empty() ? "" : " -f " + format));
        check(name);
    };
    written("map.osm.gz");
    written("map.osm.bz2");
    written("map.osm.pbf");
    written("plain.osm.pbf", "pbf,pbf_compression=none");
    written("lz4.osm.pbf", "pbf,pbf_compression=lz4");
    written("sparse.osm.pbf", "pbf,pbf_dense_nodes=false");
    // Told by what is in them, not by the name.
    written("packed", "osm.bz2");
    written("also_packed.txt", "osm.gz");
    written("binary", "pbf");

    // Nodes without tags are gone from it: the positions are in the ways.
    run_osmium("add-locations-to-ways --ignore-missing-nodes " + source.string() + " -o " +
               (folder.path() / "ways.osm.pbf").string());
    check("ways.osm.pbf");

    const OsmElements elements = read_osm_file(OsmFormat::xml, source.string(), "map.osm");
    folder.write("nodes.json", osm_json(elements, JsonStyle::nodes));
    check("nodes.json");
    folder.write("positions.json", osm_json(elements, JsonStyle::positions));
    check("positions.json");
}

TEST_CASE("JSON: middles only, a remark, deleted and doubled elements", "[osm]") {
    const TemporaryFolder folder;
    const std::string hole =
        R"({"type":"node","id":1,"lat":46,"lon":-33},{"type":"node","id":2,"lat":46.0027,"lon":-33},
{"type":"way","id":10,"nodes":[1,2],"tags":{"golf":"hole","ref":"1","par":4}})";
    const auto read = [&](const std::string& elements, const std::string& more = "") {
        return read_map(
            folder.write("query.json", "{\"version\":0.6," + more + "\"elements\":[" + elements + "]}"));
    };
    const MapData middles =
        read(hole + R"(,{"type":"way","id":11,"center":{"lat":46.0027,"lon":-33},"tags":{"golf":"green"}},
{"type":"relation","id":12,"bounds":{"minlat":46.001,"minlon":-33.002,"maxlat":46.002,"maxlon":-33.001},"tags":{"type":"multipolygon","natural":"water"}})",
             R"("remark":"runtime error: Query timed out","osm3s":{"copyright":"The committee"},)");
    REQUIRE(middles.attribution == "The committee");
    REQUIRE(has(middles.findings, "export-incomplete", Severity::warning));
    const std::vector<Finding> missing = findings_of(middles.findings, "area-missing");
    REQUIRE(missing.size() == 2);
    REQUIRE(missing[0].feature == "way/11");
    REQUIRE(missing[1].feature == "relation/12");
    REQUIRE_THAT(missing[1].place->lat_deg, Catch::Matchers::WithinAbs(46.0015, 1e-9));
    REQUIRE(middles.features.front().tag("par") == "4");

    // Nodes named and not there, but a middle.
    const MapData named = read(
        hole +
        R"(,{"type":"way","id":11,"nodes":[7,8,9,7],"center":{"lat":46.0027,"lon":-33},"tags":{"golf":"green"}})");
    REQUIRE(findings_of(named.findings, "area-missing").size() == 1);

    const MapData twice =
        read(hole + "," + hole + R"(,{"type":"way","id":11,"visible":false,"tags":{"golf":"green"}})");
    REQUIRE(findings_of(twice.findings, "elements-doubled").front().message.find("3 elements") == 0);
    REQUIRE(has(twice.findings, "elements-deleted", Severity::note));
    REQUIRE(twice.features.size() == 1);

    // A null is a point outside the box asked for.
    const MapData clipped = read(
        R"({"type":"way","id":10,"nodes":[1,2,3],"geometry":[{"lat":46,"lon":-33},{"lat":46.002,"lon":-33},null],"tags":{"golf":"hole","ref":"1"}})");
    REQUIRE(clipped.features.front().points_missing == 1);
    REQUIRE(error_reading(
                folder.write("off.json", R"({"elements":[{"type":"node","id":3,"lat":95,"lon":1}]})")) ==
            "off.json, node/3: lat=\"95\" is no latitude in degrees; correct or remove it");
    REQUIRE(
        error_reading(folder.write("id.json", R"({"elements":[{"type":"node","id":"x","lat":5,"lon":1}]})"))
            .find("id.json, node number 1: its \"id\"") == 0);
    REQUIRE(error_reading(folder.write("deep.json", "{\"elements\":[" + std::string(100000, '[')))
                .find("nested too deeply") != std::string::npos);
    // A feature collection is none of these, whatever else it holds.
    REQUIRE(osm_format_of(R"({"type":"FeatureCollection","features":[],"elements":[]})", "a.json") ==
            OsmFormat::none);
}

TEST_CASE("the box of an export, and how it is known", "[osm]") {
    const TemporaryFolder folder;
    std::string text = many_things().osm();
    const MapData without = read_map(folder.write("without.osm", text));
    REQUIRE(without.extent.has_value());
    REQUIRE_FALSE(without.extent->stated);
    text.insert(text.find("<node"),
                R"(<bounds minlat="45.99" minlon="-33.01" maxlat="46.01" maxlon="-32.99"/>)");
    const std::filesystem::path source = folder.write("with.osm", text);
    run_osmium("cat " + source.string() + " -o " + (folder.path() / "with.osm.pbf").string());
    folder.write("with.json",
                 osm_json(read_osm_file(OsmFormat::xml, source.string(), "with.osm"), JsonStyle::nodes));
    for (const char* name : {"with.osm", "with.osm.pbf", "with.json"}) {
        INFO(name);
        const MapData map = read_map(folder.path() / name);
        REQUIRE(map.extent.has_value());
        REQUIRE(map.extent->stated);
        REQUIRE_THAT(map.extent->west, Catch::Matchers::WithinAbs(-33.01, 1.5e-7));
        REQUIRE_THAT(map.extent->north, Catch::Matchers::WithinAbs(46.01, 1.5e-7));
    }
}

TEST_CASE("packed and binary files that are damaged are refused with their name", "[osm]") {
    const TemporaryFolder folder;
    const std::filesystem::path source = folder.write("map.osm", many_things().osm());
    for (const char* name : {"map.osm.gz", "map.osm.bz2", "map.osm.pbf"}) {
        const std::filesystem::path whole = folder.path() / name;
        run_osmium("cat " + source.string() + " -o " + whole.string());
        std::ifstream stream(whole, std::ios::binary);
        const std::string bytes((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
        const std::string message =
            error_reading(folder.write(std::string("cut_") + name, bytes.substr(0, bytes.size() * 2 / 3)));
        INFO(name << ": " << message);
        REQUIRE(message.find("cut_") == 0);
        REQUIRE(message.find("damaged") != std::string::npos);
    }
}

TEST_CASE("of a whole region only what lies near golf is kept", "[osm]") {
    const TemporaryFolder folder;
    MapBuilder map = many_things();
    const long far = map.area(rectangle({40'000, 0}, 50, 50), {{"natural", "wood"}});
    map.node({0, 40'000}, {{"natural", "tree"}});
    // One end of it near: all of it is kept, since it may be a lake.
    const long shore = map.line({{-50, 0}, {-30'000, 0}, {-30'000, 900}, {-50, 900}, {-50, 0}}, {});
    map.relation({{shore, "outer"}}, {{"type", "multipolygon"}, {"natural", "water"}});
    const std::filesystem::path source = folder.write("map.osm", map.osm());
    for (const char* command : {"cat", "add-locations-to-ways --ignore-missing-nodes"}) {
        const std::filesystem::path file = folder.path() / "map.osm.pbf";
        run_osmium(std::string(command) + " " + source.string() + " --overwrite -o " + file.string());
        const BinarySource binary{file.string(), "", "pbf"};
        const OsmElements all = read_osm_binary(binary, "map.osm.pbf", false);
        const OsmElements near = read_osm_binary(binary, "map.osm.pbf", true);
        REQUIRE(all.way(far) != nullptr);
        REQUIRE(near.way(far) == nullptr);
        REQUIRE(near.ways.size() == all.ways.size() - 1);
        REQUIRE(near.relations.size() == all.relations.size());
        REQUIRE(near.way(shore) != nullptr);
        REQUIRE(near.node(near.way(shore)->nodes[1]) != nullptr);
        REQUIRE(near.nodes.size() == all.nodes.size() - 5);
    }
}

TEST_CASE("the other binary format", "[osm]") {
    // After the format's public description: every dataset a kind, a length and its bytes; numbers in groups
    // of seven bits, signed ones with the sign last; ids and positions as differences.
    const auto number = [](std::uint64_t value) {
        std::string bytes;
        for (; value >= 0x80; value >>= 7U)
            bytes += static_cast<char>((value & 0x7FU) | 0x80U);
        return bytes + static_cast<char>(value);
    };
    const auto difference = [&number](std::int64_t value) {
        return number(value < 0 ? static_cast<std::uint64_t>(-value - 1) * 2 + 1
                                : static_cast<std::uint64_t>(value) * 2);
    };
    const auto dataset = [&number](char kind, const std::string& bytes) {
        return std::string(1, kind) + number(bytes.size()) + bytes;
    };
    const std::string none(1, '\0');
    const auto tag = [&none](const std::string& key, const std::string& value) {
        return none + key + none + value + none;
    };
    const std::string refs = difference(1) + difference(1);
    const std::string text =
        "\xFF" + dataset('\xE0', "o5m2") +
        dataset('\x10', difference(1) + none + difference(-330'000'000) + difference(460'000'000)) +
        dataset('\x10', difference(1) + none + difference(0) + difference(27'000)) + "\xFF" +
        dataset('\x11',
                difference(10) + none + number(refs.size()) + refs + tag("golf", "hole") + tag("ref", "4")) +
        "\xFE";
    const TemporaryFolder folder;
    const MapData map = read_map(folder.write("course.o5m", text));
    REQUIRE(map.features.size() == 1);
    REQUIRE(map.features.front().id == "way/10");
    REQUIRE(map.features.front().tag("ref") == "4");
    check_same_shape(map.features.front().shape, std::vector<LonLatPath>{{{-33.0, 46.0}, {-33.0, 46.0027}}});
}
