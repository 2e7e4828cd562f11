#include <cpl_minixml.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <map>
#include <set>

#include "geometry/error.hpp"
#include "planner/reports/layer_style.hpp"
#include "planner/reports/output_file.hpp"
#include "planner/reports/plan_reports.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"
#include "tests/planner/temporary_folder.hpp"
#include "tests/planner/vector_reading.hpp"

namespace landwidth {
namespace {

using fixture::DatasetPtr;
using fixture::hostile_names;
using fixture::open_vector;
using fixture::PlanFixture;
using fixture::TemporaryFolder;
using fixture::two_holes;

bool has_value(const OGRFeature& row, const char* field) {
    return row.IsFieldSetAndNotNull(row.GetFieldIndex(field));
}

TEST_CASE("GDAL reads the GeoPackage back", "[plan_geopackage]") {
    const TemporaryFolder folder;
    const PlanFixture fixture = two_holes();
    write_plan_geopackage(fixture.view(), folder.file("plan.gpkg"));
    CHECK(folder.entries() == 1);  // no journal left
    const DatasetPtr package = open_vector(folder.file("plan.gpkg"));
    REQUIRE(package);
    const std::map<std::string, int> counts{
        {"lies", 13}, {"landing_ellipses", 8}, {"landing_widths", 2}, {"aim_lines", 5}};
    for (const auto& [name, count] : counts) {
        CAPTURE(name);
        OGRLayer* layer = package->GetLayerByName(name.c_str());
        REQUIRE(layer != nullptr);
        CHECK(layer->GetFeatureCount() == count);
        CHECK(std::string(layer->GetSpatialRef()->GetAuthorityCode(nullptr)) == "4326");
        const LayerStyle& style = layer_style(name);
        CHECK(wkbFlatten(layer->GetGeomType()) == (style.areas ? wkbMultiPolygon : wkbMultiLineString));
        for (auto& feature : *layer) {
            CHECK(feature->GetGeometryRef()->IsValid());
            CHECK(feature->GetFieldAsString("attribution") == fixture.course.attribution);
            CHECK_NOTHROW(category_of(style, feature->GetFieldAsString(style.field.c_str())));
        }
    }
    OGRLayer* aims = package->GetLayerByName("aim_lines");
    aims->SetAttributeFilter("hole = '1' AND rank = 1");
    const OGRFeatureUniquePtr best(aims->GetNextFeature());
    REQUIRE(best);
    CHECK(std::string(best->GetFieldAsString("club")) == "3-wood");
    CHECK(best->GetFieldAsDouble("strokes") == 4.61);
    CHECK(best->GetFieldAsInteger("toss_up") == 0);
    CHECK(has_value(*best, "toss_up"));
    aims->SetAttributeFilter("hole = '1' AND rank = 2");
    const OGRFeatureUniquePtr second(aims->GetNextFeature());
    REQUIRE(second);
    CHECK_FALSE(has_value(*second, "toss_up"));
}

TEST_CASE("a plan without holes is a package with empty tables", "[plan_geopackage]") {
    PlanFixture fixture = two_holes();
    fixture.course.holes.clear();
    fixture.plan.holes.clear();
    const TemporaryFolder folder;
    write_plan_geopackage(fixture.view(), folder.file("plan.gpkg"));
    const DatasetPtr package = open_vector(folder.file("plan.gpkg"));
    REQUIRE(package);
    CHECK(package->GetLayerByName("lies")->GetFeatureCount() == 0);
}

struct XmlTree {
    explicit XmlTree(const char* text) : root(CPLParseXMLString(text)) {}
    XmlTree(const XmlTree&) = delete;
    XmlTree& operator=(const XmlTree&) = delete;
    ~XmlTree() { CPLDestroyXMLNode(root); }
    CPLXMLNode* root;
};

TEST_CASE("the GeoPackage carries a default style for every layer", "[plan_geopackage]") {
    const TemporaryFolder folder;
    write_plan_geopackage(two_holes().view(), folder.file("plan.gpkg"));
    const DatasetPtr package = open_vector(folder.file("plan.gpkg"));
    REQUIRE(package);
    OGRLayer* styles = package->GetLayerByName("layer_styles");
    REQUIRE(styles != nullptr);
    CHECK(styles->GetFeatureCount() == 4);
    for (const char* field :
         {"f_table_catalog", "f_table_schema", "f_table_name", "f_geometry_column", "styleName", "styleQML",
          "styleSLD", "useAsDefault", "description", "owner", "ui", "update_time"}) {
        CAPTURE(field);
        CHECK(styles->GetLayerDefn()->GetFieldIndex(field) >= 0);
    }
    std::set<std::string> styled;
    for (auto& row : *styles) {
        const std::string name = row->GetFieldAsString("f_table_name");
        CAPTURE(name);
        OGRLayer* layer = package->GetLayerByName(name.c_str());
        REQUIRE(layer != nullptr);
        styled.insert(name);
        CHECK(std::string(row->GetFieldAsString("f_geometry_column")) == layer->GetGeometryColumn());
        CHECK(has_value(*row, "f_table_schema"));
        CHECK(std::string(row->GetFieldAsString("f_table_schema")).empty());
        CHECK(row->GetFieldAsInteger("useAsDefault") == 1);

        const XmlTree qml(row->GetFieldAsString("styleQML"));
        REQUIRE(qml.root != nullptr);
        CPLXMLNode* renderer = CPLGetXMLNode(qml.root, "=qgis.renderer-v2");
        REQUIRE(renderer != nullptr);
        const std::string field = CPLGetXMLValue(renderer, "attr", "");
        CHECK(layer->GetLayerDefn()->GetFieldIndex(field.c_str()) >= 0);
        std::set<std::string> categories, symbols;
        for (CPLXMLNode* node = CPLGetXMLNode(renderer, "categories")->psChild; node; node = node->psNext) {
            categories.insert(CPLGetXMLValue(node, "value", ""));
        }
        for (CPLXMLNode* node = CPLGetXMLNode(renderer, "symbols")->psChild; node; node = node->psNext) {
            symbols.insert(CPLGetXMLValue(node, "name", ""));
        }
        CHECK(categories.size() == layer_style(name).categories.size());
        CHECK(symbols.size() == categories.size());

        const XmlTree sld(row->GetFieldAsString("styleSLD"));
        REQUIRE(sld.root != nullptr);
        CPLXMLNode* rules =
            CPLGetXMLNode(sld.root, "=StyledLayerDescriptor.NamedLayer.UserStyle.FeatureTypeStyle");
        REQUIRE(rules != nullptr);
        std::set<std::string> filtered;
        for (CPLXMLNode* rule = rules->psChild; rule; rule = rule->psNext) {
            const char* literal = CPLGetXMLValue(rule, "ogc:Filter.ogc:PropertyIsEqualTo.ogc:Literal", "");
            if (*literal != '\0') filtered.insert(literal);
        }
        CHECK(filtered == categories);
    }
    CHECK(styled == std::set<std::string>{"lies", "landing_ellipses", "landing_widths", "aim_lines"});
}

TEST_CASE("the same plan is the same bytes", "[plan_geopackage]") {
    const TemporaryFolder folder;
    const PlanFixture fixture = two_holes();
    write_plan_geopackage(fixture.view(), folder.file("one.gpkg"));
    write_plan_geopackage(fixture.view(), folder.file("two.gpkg"));
    CHECK(fixture::content_of(folder.file("one.gpkg")) == fixture::content_of(folder.file("two.gpkg")));
}

TEST_CASE("hostile names stay data in a package", "[plan_geopackage]") {
    const PlanFixture fixture = hostile_names();
    const TemporaryFolder folder;
    write_plan_geopackage(fixture.view(), folder.file("plan.gpkg"));
    const DatasetPtr package = open_vector(folder.file("plan.gpkg"));
    REQUIRE(package);
    const OGRFeatureUniquePtr row(package->GetLayerByName("lies")->GetNextFeature());
    REQUIRE(row);
    CHECK(row->GetFieldAsString("course") == fixture.course.name);
}

TEST_CASE("a package that cannot be written is an error in the user's words", "[plan_geopackage]") {
    const TemporaryFolder folder;
    const PlanFixture fixture = two_holes();
    fixture::put(folder.file("old.gpkg"), "old");
    CHECK_THROWS_AS(write_plan_geopackage(fixture.view(), folder.file("old.gpkg")), OutputError);
    CHECK(fixture::content_of(folder.file("old.gpkg")) == "old");
    CHECK_THROWS_AS(write_plan_geopackage(fixture.view(), folder.file("missing") / "plan.gpkg"), OutputError);
    CHECK_THROWS_AS(write_file_with("/dev/full", true,
                                    [&](const std::filesystem::path& path) {
                                        write_plan_geopackage(fixture.view(), path);
                                    }),
                    OutputError);
}

TEST_CASE("a package that cannot be finished leaves the old file", "[plan_geopackage]") {
    const TemporaryFolder folder;
    const PlanFixture fixture = two_holes();
    fixture::put(folder.file("plan.gpkg"), "old");
    // A child of its own, since a limit on the size of files once lowered stays.
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        ::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{1 << 16, 1 << 16};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        int answer = 1;
        try {
            write_file_with(folder.file("plan.gpkg"), true, [&](const std::filesystem::path& path) {
                write_plan_geopackage(fixture.view(), path);
            });
        } catch (const OutputError& error) {
            answer = std::string(error.what()).starts_with("plan.gpkg: ") ? 7 : 2;
        }
        ::_exit(answer);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 7);
    CHECK(fixture::content_of(folder.file("plan.gpkg")) == "old");
    CHECK(folder.entries() == 1);
}

}  // namespace
}  // namespace landwidth
