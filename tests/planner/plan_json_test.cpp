#include <nlohmann/json.hpp>
#include <random>

#include "geometry/units.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/words.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

namespace landwidth {
namespace {

using Catch::Matchers::WithinAbs;
using fixture::hostile_names;
using fixture::PlanFixture;
using fixture::two_holes;
using Json = nlohmann::ordered_json;
using Keys = std::vector<std::string>;

Keys keys(const Json& object) {
    Keys names;
    for (const auto& item : object.items())
        names.push_back(item.key());
    return names;
}

Json read(const PlanFixture& fixture) {
    return Json::parse(plan_json(fixture.view()));
}

TEST_CASE("rounding for files", "[plan_json]") {
    CHECK(rounded(1.23456789, 4) == 1.2346);
    CHECK(rounded(-0.00001, 4) == 0.0);
    CHECK_FALSE(std::signbit(rounded(-0.00001, 4)));
    CHECK(std::isnan(rounded(std::nan(""), 1)));
    CHECK(rounded_direction(359.994, 2) == 359.99);
    CHECK(rounded_direction(359.996, 2) == 0.0);
}

TEST_CASE("the plan has the keys of the contract, in its order", "[plan_json]") {
    const Json plan = read(two_holes());
    CHECK(keys(plan) == Keys{"format", "course", "golfer", "field", "assumptions", "warnings", "holes",
                             "round", "cautions"});
    CHECK(plan["format"] == "landwidth-plan/1");
    CHECK(keys(plan["course"]) == Keys{"name", "source", "attribution"});
    CHECK(keys(plan["golfer"]) == Keys{"name"});
    CHECK(keys(plan["round"]) == Keys{"par", "expected_strokes", "always_driver", "never_driver"});
    REQUIRE(plan["holes"].size() == 2);
    for (const Json& hole : plan["holes"]) {
        CHECK(keys(hole) == Keys{"ref", "par", "length_yd", "tee", "verdict", "choices", "name",
                                 "par_inferred", "cautions"});
        CHECK(keys(hole["verdict"]) == Keys{"club", "aim_bearing_deg", "aim_point", "aim_text",
                                            "expected_strokes", "margin_strokes", "over", "confidence",
                                            "toss_up"});
        for (const Json& choice : hole["choices"]) {
            CHECK(keys(choice) == Keys{"club", "aim_bearing_deg", "expected_strokes", "standard_error",
                                       "lies", "leave_yd", "landing_width_yd"});
            CHECK(keys(choice["lies"]) ==
                  Keys{"fairway", "rough", "bunker", "trees", "green", "penalty", "out_of_bounds"});
            CHECK(keys(choice["leave_yd"]) == Keys{"mean", "sd"});
        }
    }
}

TEST_CASE("the numbers of a hole stand in the contract's units", "[plan_json]") {
    const PlanFixture fixture = two_holes();
    const Json plan = read(fixture);
    CHECK(plan["course"] == Json{{"name", "Example Holm"},
                                 {"source", "holm.osm"},
                                 {"attribution", "invented data of the Landwidth tests"}});
    CHECK(plan["field"] == "published");
    CHECK(plan["round"] ==
          Json{{"par", 7}, {"expected_strokes", 8.03}, {"always_driver", 8.11}, {"never_driver", 8.03}});
    CHECK(plan["warnings"] == Json{"most patterns are presets: record shots to be surer"});

    const Json& hole = plan["holes"][0];
    CHECK(hole["ref"] == "1");
    CHECK(hole["par"] == 4);
    CHECK(hole["length_yd"] == 406.3);  // 230 m + hypot(70, 123) m = 371.52 m
    CHECK(hole["tee"] == "white");
    const Json& verdict = hole["verdict"];
    CHECK(verdict["club"] == "3-wood");
    CHECK(verdict["aim_bearing_deg"] == 358.06);  // -0.0339 rad
    CHECK(verdict["aim_text"] == aim_words(fixture.plan.holes[0].choices[0], DisplayUnits::yards));
    CHECK(verdict["expected_strokes"] == 4.61);
    CHECK(verdict["margin_strokes"] == 0.08);
    CHECK(verdict["over"] == "driver");
    CHECK(verdict["confidence"] == 0.83);
    CHECK(verdict["toss_up"] == false);
    const Json& choice = hole["choices"][0];
    CHECK(choice["standard_error"] == 0.001);
    CHECK(choice["landing_width_yd"] == 37.2);                         // 34 m
    CHECK(choice["leave_yd"] == Json{{"mean", 178.3}, {"sd", 16.4}});  // 163 m, 15 m
    CHECK(choice["lies"] == Json{{"fairway", 0.58},
                                 {"rough", 0.29},
                                 {"bunker", 0.04},
                                 {"trees", 0.03},
                                 {"green", 0.0},
                                 {"penalty", 0.05},
                                 {"out_of_bounds", 0.01}});
    CHECK(plan["holes"][1]["par_inferred"] == true);
    CHECK(plan["holes"][1]["verdict"]["toss_up"] == true);
}

TEST_CASE("the aim point is longitude and latitude on the true bearing", "[plan_json]") {
    const PlanFixture fixture = two_holes();
    const Json place = read(fixture)["holes"][0]["verdict"]["aim_point"];
    REQUIRE(place.size() == 2);
    const LonLat aim{place[0].get<double>(), place[1].get<double>()};
    CHECK_THAT(geodesic_distance(fixture.course.holes[0].frame.origin(), aim), WithinAbs(189.0, 0.002));
    CHECK(aim.lat_deg > 47.0);
    CHECK(aim.lon_deg < -20.0);
}

TEST_CASE("teeing area counts as fairway, both kinds of penalty area as one", "[plan_json]") {
    PlanFixture fixture = two_holes();
    // In the order of enum Lie.
    fixture.plan.holes[0].choices[0].lies = {0.125, 0.25, 0.125, 0.0, 0.0, 0.0, 0.25, 0.125, 0.125};
    const Json lies = read(fixture)["holes"][0]["choices"][0]["lies"];
    CHECK(lies["fairway"] == 0.375);
    CHECK(lies["penalty"] == 0.375);
    CHECK(lies["rough"] == 0.125);
    CHECK(lies["out_of_bounds"] == 0.125);
}

TEST_CASE("shares add to exactly 1 and stay within rounding of what they are", "[plan_json]") {
    PlanFixture fixture = two_holes();
    TeeChoice& choice = fixture.plan.holes[0].choices[0];
    std::mt19937 random(7);
    std::exponential_distribution<double> weight(1.0);
    for (int i = 0; i < 300; ++i) {
        double sum = 0.0;
        for (double& share : choice.lies)
            sum += share = weight(random);
        for (double& share : choice.lies)
            share /= sum;
        const Json lies = read(fixture)["holes"][0]["choices"][0]["lies"];
        long ten_thousandths = 0;
        for (const auto& item : lies.items()) {
            const double scaled = item.value().get<double>() * 10000.0;
            CHECK_THAT(scaled, WithinAbs(std::round(scaled), 1e-8));
            ten_thousandths += std::lround(scaled);
        }
        CHECK(ten_thousandths == 10000);
        CHECK_THAT(lies["rough"].get<double>(), WithinAbs(choice.lies[index_of(Lie::rough)], 4e-4));
        CHECK_THAT(lies["trees"].get<double>(), WithinAbs(choice.lies[index_of(Lie::trees)], 4e-4));
    }
}

TEST_CASE("what there is not is null", "[plan_json]") {
    PlanFixture fixture = two_holes();
    HolePlan& hole = fixture.plan.holes[0];
    hole.choices.resize(1);
    hole.choices[0].landing.reset();
    hole.verdict.margin.reset();
    hole.verdict.over.reset();
    fixture.plan.always_driver.reset();
    fixture.plan.never_driver.reset();
    const Json plan = read(fixture);
    CHECK(plan["holes"][0]["verdict"]["margin_strokes"].is_null());
    CHECK(plan["holes"][0]["verdict"]["over"].is_null());
    CHECK(plan["holes"][0]["choices"][0]["landing_width_yd"].is_null());
    CHECK(plan["round"]["always_driver"].is_null());
    CHECK(plan["round"]["never_driver"].is_null());
}

TEST_CASE("every assumption is echoed, and marked when it is the user's", "[plan_json]") {
    PlanFixture fixture = two_holes();
    override_assumption(fixture.plan.assumptions, "stream_width=3.5");
    const Json assumptions = read(fixture)["assumptions"];
    const auto entries = list_assumptions(fixture.plan.assumptions);
    REQUIRE(assumptions.size() == entries.size());
    REQUIRE_FALSE(entries.empty());
    for (const AssumptionEntry& entry : entries) {
        CAPTURE(entry.name);
        const Json& one = assumptions[entry.name];
        CHECK_THAT(one["value"].get<double>(), WithinAbs(entry.value, 1e-9));
        CHECK(one["unit"] == entry.unit);
        CHECK(one["source"] == entry.source);
        CHECK(one["meaning"] == entry.meaning);
        CHECK(one.contains("overridden") == (entry.name == "stream_width"));
    }
    CHECK(assumptions["stream_width"]["value"] == 3.5);
    CHECK(assumptions["stream_width"]["overridden"] == true);
}

TEST_CASE("yards whatever the reader's units, and the same bytes every time", "[plan_json]") {
    const PlanFixture fixture = two_holes();
    const std::string once = plan_json(fixture.view());
    CHECK(once == plan_json(fixture.view()));
    CHECK(once == plan_json(fixture.view(DisplayUnits::metres)));
    CHECK(once.back() == '\n');
}

TEST_CASE("hostile names stay data", "[plan_json]") {
    const PlanFixture fixture = hostile_names();
    const Json plan = read(fixture);
    CHECK(plan["course"]["name"] == fixture.course.name);
    CHECK(plan["golfer"]["name"] == fixture.golfer.name);
    CHECK(plan["holes"][0]["tee"] == "bad\x01\ufffd\ufffd tee");  // no UTF-8: replaced
    CHECK(plan["holes"][1]["name"].get<std::string>().size() == 5000);
}

}  // namespace
}  // namespace landwidth
