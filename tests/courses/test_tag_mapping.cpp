// Maps without golf tags: words for ground, files of tags, proposals.
#include "courses/reading/tag_mapping.hpp"
#include "courses/tags/ground_words.hpp"
#include "geometry/error.hpp"
#include "tests/catch.hpp"
#include "tests/courses/conversion.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

std::string tags_in(const std::string& text, Drawn drawn) {
    const std::optional<GroundWords> words = ground_words(text, drawn);
    if (!words) return "nothing";
    std::string result = words->what ? "" : "only";
    for (const auto& [key, value] : words->tags)
        result += (result.empty() ? "" : " ") + key + "=" + value;
    return result;
}

std::string problem_with(const std::string& file_of_tags) {
    const TemporaryFolder folder;
    try {
        read_tag_file(folder.write("course.tags", file_of_tags));
    } catch (const InputError& error) {
        const std::string message = error.what();
        return message.substr(message.find("course.tags"));
    }
    return "";
}

struct Drawing {
    std::string properties;
    std::string geometry;
};

std::string area_at(double north) {
    const auto at = [north](double east, double more) {
        return "[" + std::to_string(-33.0 + east) + "," + std::to_string(46.0 + north + more) + "]";
    };
    return R"({"type":"Polygon","coordinates":[[)" + at(-2e-4, 0) + "," + at(2e-4, 0) + "," + at(2e-4, 2e-4) +
           "," + at(-2e-4, 2e-4) + "," + at(-2e-4, 0) + "]]}";
}

const std::string hole_line = R"({"type":"LineString","coordinates":[[-33,46.0001],[-33,46.0031]]})";

std::string collection(const std::vector<Drawing>& drawings) {
    std::string text;
    for (const Drawing& drawing : drawings) {
        text += (text.empty() ? "" : ",") + std::string(R"({"type":"Feature","properties":{)") +
                drawing.properties + R"(},"geometry":)" + drawing.geometry + "}";
    }
    return R"({"type":"FeatureCollection","features":[)" + text + "]}";
}

// One hole whose ground is told by a column.
std::vector<Drawing> typed_hole() {
    return {{R"("Kind":"Hole","no":1)", hole_line},
            {R"("Kind":"Greens")", area_at(0.003)},
            {R"("Kind":"tee box")", area_at(0.0)},
            {R"("Kind":"FAIRWAY")", area_at(0.0015)},
            {R"("Kind":"Trees")", area_at(0.0022)},
            {R"("Kind":"Trees")", R"({"type":"Point","coordinates":[-33.0008,46.001]})"},
            {R"("Kind":"mole hill")", area_at(0.001)}};
}

MapData read(const std::vector<Drawing>& drawings, const std::vector<std::string>& tags) {
    const TemporaryFolder folder;
    const auto map = folder.write("course.geojson", collection(drawings));
    std::vector<std::string> given;
    for (const std::string& text : tags)
        given.push_back(text.find('=') == std::string::npos ? text
                                                            : folder.write("course.tags", text).string());
    return read_map(map, tag_mapping(given));
}

int count(const MapData& map, const std::string& key, const std::string& value) {
    int found = 0;
    for (const MapFeature& feature : map.features)
        found += feature.tag(key) == value ? 1 : 0;
    return found;
}

}  // namespace

TEST_CASE("words for ground", "[tags]") {
    REQUIRE(tags_in("Greens", Drawn::area) == "golf=green");
    REQUIRE(tags_in("FAIRWAYS", Drawn::area) == "golf=fairway");
    REQUIRE(tags_in("tee_boxes", Drawn::area) == "golf=tee");
    REQUIRE(tags_in("Hole 3 fairway", Drawn::area) == "golf=fairway ref=3");
    REQUIRE(tags_in("3rd hole: green", Drawn::area) == "golf=green ref=3");
    REQUIRE(tags_in("Hole #12, left bunker 2", Drawn::area) == "golf=bunker ref=12");
    REQUIRE(tags_in("white tee 7", Drawn::area) == "golf=tee ref=7 tee=white");
    REQUIRE(tags_in("H4 tee - ladies", Drawn::area) == "golf=tee ref=4 tee=ladies");
    REQUIRE(tags_in("Hole 3", Drawn::line) == "golf=hole ref=3");
    REQUIRE(tags_in("Hole 3", Drawn::area) == "only ref=3");
    REQUIRE(tags_in("holes", Drawn::line) == "golf=hole");
    // A bunker's number counts bunkers; a fairway bunker is no fairway.
    REQUIRE(tags_in("Bunker 4", Drawn::area) == "golf=bunker");
    REQUIRE(tags_in("Fairway bunkers", Drawn::area) == "golf=bunker");
    REQUIRE(tags_in("Trees", Drawn::area) == "natural=wood");
    REQUIRE(tags_in("Trees", Drawn::line) == "natural=tree_row");
    REQUIRE(tags_in("Trees", Drawn::point) == "natural=tree");
    REQUIRE(tags_in("ditches", Drawn::line) == "waterway=ditch");
    REQUIRE(tags_in("boundary", Drawn::area) == "leisure=golf_course");
    // Only the whole phrase counts.
    for (const char* text :
         {"", "The Pond Café", "practice green", "greenkeeper", "Hole 300", "fairway?", "42"})
        REQUIRE(tags_in(text, Drawn::area) == "nothing");
    REQUIRE(tags_in("Hole 3 - The Pond", Drawn::line) == "only ref=3");
}

TEST_CASE("wildcards", "[tags]") {
    REQUIRE(matched("greens", " GREENS ").has_value());
    REQUIRE_FALSE(matched("green", "greens").has_value());
    REQUIRE(matched("Hole <number> fairway", "hole 12 Fairway")->number == "12");
    REQUIRE_FALSE(matched("Hole <number>", "Hole 3 fairway").has_value());
    REQUIRE_FALSE(matched("Hole <number>", "Hole x").has_value());
    REQUIRE(matched("The *", "the Old Oak")->any == "Old Oak");
    REQUIRE(matched("* <number>", "green 7")->number == "7");
    REQUIRE(matched("*", "Ünder the Øak")->any == "Ünder the Øak");
    REQUIRE(matched("a*b*c", "a1b2c")->any == "1");
}

TEST_CASE("bad files of tags say where", "[tags]") {
    REQUIRE(problem_with("# only a remark\n\n") ==
            "course.tags: no line says what a layer or a column means");
    REQUIRE(problem_with("layer greens = golf=green\nlayer x = green\n") ==
            "course.tags: line 2: \"green\" is no tag; a key = a value is expected, as in golf=green");
    REQUIRE(problem_with("layer greens golf=green")
                .starts_with("course.tags: line 1: \"layer greens golf=green\":"));
    REQUIRE(problem_with("layer sand bunkers = golf=bunker").find("its value = tags are expected") !=
            std::string::npos);
    REQUIRE(problem_with("type = golf=bunker").find("its value = tags are expected") != std::string::npos);
    REQUIRE(problem_with("type sand =").find("its value = tags are expected") != std::string::npos);
    REQUIRE(problem_with("type \"sand = golf=bunker").find("a quotation mark is not closed") !=
            std::string::npos);
    REQUIRE(problem_with("type a = golf=tee\ntype A = golf=pin").find("line 2: type \"A\" is named twice") !=
            std::string::npos);
    REQUIRE(problem_with("type a = golf=tee ref=*").find("* here needs one") != std::string::npos);
    REQUIRE(problem_with("type * = golf=tee ref=<number>").find("<number> here needs one") !=
            std::string::npos);
    REQUIRE(problem_with("type ** = golf=tee\ntype **** = golf=pin").find("too many *") != std::string::npos);
    REQUIRE(problem_with(std::string("a\0b", 3)).find("this is no text") != std::string::npos);
    REQUIRE_THROWS_AS(tag_mapping({"./there_is_none.tags"}), InputError);
    REQUIRE_THROWS_AS(tag_mapping({" "}), UsageError);
}

TEST_CASE("a column's words become tags", "[tags]") {
    const MapData map = read(typed_hole(), {"kind"});
    REQUIRE(map.features.size() == 6);
    REQUIRE(count(map, "golf", "hole") == 1);
    REQUIRE(count(map, "golf", "fairway") == 1);
    REQUIRE(count(map, "natural", "wood") == 1);
    REQUIRE(count(map, "natural", "tree") == 1);
    const std::vector<Finding> unknown = findings_of(map.findings, "words-unknown");
    REQUIRE(unknown.size() == 1);
    REQUIRE(unknown.front().severity == Severity::warning);
    REQUIRE(unknown.front().message.find("\"mole hill\" (1)") != std::string::npos);
    const Course course = assemble_course(map, {}, assumptions());
    REQUIRE(course.holes.size() == 1);
    REQUIRE(findings_of(course.findings, "fairway-missing").empty());
}

TEST_CASE("a file of tags goes before words and before what a feature says", "[tags]") {
    const MapData map = read({{R"("Kind":"Hole","no":1,"golf":"bunker")", hole_line},
                              {R"("Kind":"Greens")", area_at(0.003)},
                              {R"("Kind":"lake","golf":"fairway")", area_at(0.001)}},
                             {"kind lake = golf=water_hazard name=\"The Pond\"\n"
                              "kind green? = golf=green\n"
                              "kind hole lines = golf=hole\n"
                              "no <number> = ref=<number>\n"
                              "kind hole areas = golf=rough\n"
                              "kind G* = golf=gren\n",
                              "kind"});
    REQUIRE(count(map, "golf", "fairway") == 0);
    REQUIRE(count(map, "golf", "water_hazard") == 1);
    REQUIRE(count(map, "name", "The Pond") == 1);
    REQUIRE(count(map, "golf", "hole") == 1);
    REQUIRE(count(map, "ref", "1") == 1);
    // "green?" is no pattern, and the rule for areas meets a line; G* is a slip of the pen.
    REQUIRE(findings_of(map.findings, "tag-rule-unmatched").size() == 2);
    REQUIRE(findings_of(map.findings, "tag-rule-says-nothing").size() == 1);
    REQUIRE(count(map, "golf", "gren") == 1);
}

TEST_CASE("a column that is not there is refused by name", "[tags]") {
    try {
        read(typed_hole(), {"typ"});
        FAIL("it was taken");
    } catch (const InputError& error) {
        REQUIRE(std::string(error.what()) ==
                "--tags typ: no layer of course.geojson has a column \"typ\"; there is Kind and no");
    }
}

TEST_CASE("a proposal reads its own map", "[tags]") {
    std::string proposal;
    try {
        read(typed_hole(), {});
        FAIL("there are no tags");
    } catch (const NoGolfError& refusal) {
        proposal = refusal.proposed_tags;
        REQUIRE(std::string(refusal.what()).find("survey prints a proposal") != std::string::npos);
    }
    REQUIRE(proposal ==
            "# What the layers and columns of course.geojson seem to mean. Look it over, save it and give it "
            "with "
            "--tags.\n"
            "Kind FAIRWAY = golf=fairway\n"
            "Kind Greens = golf=green\n"
            "Kind Hole = golf=hole\n"
            "Kind \"tee box\" = golf=tee\n"
            "Kind Trees points = natural=tree\n"
            "Kind Trees areas = natural=wood\n"
            "# not understood: Kind \"mole hill\" (1 feature)\n");
    const MapData map = read(typed_hole(), {proposal});
    REQUIRE(map.features.size() == 6);
    REQUIRE(map.findings.empty());
    // No evidence, no proposal.
    try {
        read({{R"("Kind":"mole hill")", area_at(0.001)},
              {R"("Kind":"Trees")", area_at(0.002)},
              {R"("Kind":"x","colour":"green")", "null"}},
             {});
        FAIL("there are no tags");
    } catch (const NoGolfError& refusal) {
        REQUIRE(refusal.proposed_tags.empty());
    }
}

TEST_CASE("golf ground makes a proposal however much else is named beside it", "[tags]") {
    std::vector<Drawing> drawings{{R"("Name":"Hole 1")", hole_line},
                                  {R"("Name":"Hole 1 green")", area_at(0.003)}};
    for (int oak = 1; oak <= 40; ++oak)
        drawings.push_back({"\"Name\":\"Oak " + std::to_string(oak) + "\"", area_at(0.001)});
    try {
        read(drawings, {});
        FAIL("there are no tags");
    } catch (const NoGolfError& refusal) {
        REQUIRE(refusal.proposed_tags.find("Name \"Hole <number> green\" = golf=green ref=<number>\n") !=
                std::string::npos);
        REQUIRE(refusal.proposed_tags.find("# not understood: Name \"Oak <number>\" (40 features)\n") !=
                std::string::npos);
        REQUIRE(assemble_course(read(drawings, {refusal.proposed_tags}), {}, assumptions()).holes.size() ==
                1);
    }
    const MapData map = read(drawings, {"name"});
    REQUIRE(map.without_role == 40);
    REQUIRE(findings_of(map.findings, "words-unknown").front().message.ends_with("\"Oak <number>\" (40)"));
}

TEST_CASE("every word that is not known is told", "[tags]") {
    std::vector<Drawing> drawings = typed_hole();
    for (char c = 'a'; c <= 'z'; ++c)
        drawings.push_back({std::string("\"Kind\":\"mound ") + c + "\"", area_at(0.001)});
    const std::string told = findings_of(read(drawings, {"kind"}).findings, "words-unknown").front().message;
    for (char c = 'a'; c <= 'z'; ++c)
        REQUIRE(told.find(std::string("\"mound ") + c + "\" (1)") != std::string::npos);
}

TEST_CASE("a rule with a wildcard is judged by what it gave", "[tags]") {
    std::vector<Drawing> drawings{{R"("Kind":"hole","no":1)", hole_line},
                                  {R"("Kind":"green")", area_at(0.003)},
                                  {R"("Kind":"tee")", area_at(0.0)}};
    REQUIRE(read(drawings, {"kind * = golf=*"}).findings.empty());
    drawings.push_back({R"("Kind":"molehill")", area_at(0.001)});
    const MapData map = read(drawings, {"kind * = golf=*"});
    const std::vector<Finding> told = findings_of(map.findings, "tag-rule-says-nothing");
    REQUIRE(told.size() == 1);
    REQUIRE(told.front().message.ends_with("these say nothing about the ground: golf=molehill (1)"));
}

TEST_CASE("layers and names of other formats", "[tags]") {
    const TemporaryFolder folder;
    const auto part = [&folder](const std::string& name, const Drawing& drawing) {
        return folder.write(name + ".geojson", collection({drawing}));
    };
    const auto holes = part("holes", {R"("ref":"1","par":"4")", hole_line});
    const auto greens = part("greens", {R"("name":"no name")", area_at(0.003)});
    const std::vector<std::pair<std::string, std::string>> formats{
        {"GPKG", ".gpkg"}, {"KML", ".kml"}, {"ESRI Shapefile", ""}, {"FlatGeobuf", ".fgb"}};
    for (const auto& [format, extension] : formats) {
        INFO(format);
        const bool one_layer = format == "KML" || format == "FlatGeobuf";
        const auto target = folder.path() / ("course-" + format.substr(0, 3) + extension);
        if (!one_layer) {
            converted(holes, target, {"-f", format, "-nln", "Holes"});
            converted(greens, target, {"-f", format, "-update", "-nln", "Greens"});
            const MapData map = read_map(target, tag_mapping({"layer"}));
            REQUIRE(count(map, "golf", "hole") == 1);
            REQUIRE(count(map, "golf", "green") == 1);
            REQUIRE(assemble_course(map, {}, assumptions()).holes.size() == 1);
            continue;
        }
        const auto named = folder.write(
            "named.geojson",
            collection({{R"("Name":"Hole 1")", hole_line}, {R"("Name":"Hole 1 green")", area_at(0.003)}}));
        converted(named, target, {"-f", format});
        const Course course = assemble_course(read_map(target, tag_mapping({"name"})), {}, assumptions());
        REQUIRE(course.holes.size() == 1);
        REQUIRE(course.holes.front().ref == "1");
    }
}

TEST_CASE("OpenStreetMap data brings its own tags", "[tags]") {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    const TemporaryFolder folder;
    const MapData read = read_map(folder.write("course.osm", map.osm()), tag_mapping({"type"}));
    REQUIRE(has(read.findings, "tag-mapping-unused", Severity::warning));
}
