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
    CHECK(keys(plan) == Keys{"format", "course", "golfer", "field", "aim_for", "day", "has_heights",
                             "assumptions", "warnings", "holes", "round", "cautions"});
    CHECK(plan["format"] == "landwidth-plan/1");
    CHECK(keys(plan["course"]) == Keys{"name", "source", "attribution"});
    CHECK(keys(plan["golfer"]) == Keys{"name"});
    CHECK(keys(plan["round"]) == Keys{"par", "expected_strokes", "always_driver", "never_driver"});
    REQUIRE(plan["holes"].size() == 2);
    for (const Json& hole : plan["holes"]) {
        CHECK(keys(hole) == Keys{"ref", "par", "length_yd", "tee", "plays_as_yd", "rise_yd", "tail_wind_mph",
                                 "cross_wind_mph", "verdict", "choices", "name", "par_inferred", "cautions"});
        CHECK(keys(hole["verdict"]) == Keys{"club", "aim_bearing_deg", "aim_point", "aim_text",
                                            "expected_strokes", "margin_strokes", "over", "confidence",
                                            "toss_up", "toss_up_because", "break_evens"});
        for (const Json& choice : hole["choices"]) {
            CHECK(keys(choice) == Keys{"club", "aim_bearing_deg", "expected_strokes", "standard_error",
                                       "lies", "leave_yd", "landing_width_yd", "carry_yd", "drift_yd",
                                       "run_yd", "peak_yd", "landing_angle_deg", "stopped_share"});
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
    CHECK(plan["aim_for"] == "strokes");
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
    CHECK(verdict["break_evens"] ==
          Json{{"over", "driver"},
               {"landing_width_yd", 28.4},  // 26 m
               {"side_sd_yd", 22.0},        // 20.1 m
               {"carry_yd", 200.1},
               {"tail_wind_mph", nullptr},  // 183 m
               {"today", {{"landing_width_yd", 37.2}, {"side_sd_yd", 16.4}, {"carry_yd", 206.7}}}});
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
    CHECK(plan["holes"][1]["verdict"]["toss_up_because"] == "not-known");
    CHECK(plan["holes"][0]["verdict"]["toss_up_because"].is_null());
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
    hole.break_evens.reset();
    fixture.plan.always_driver.reset();
    fixture.plan.never_driver.reset();
    const Json plan = read(fixture);
    CHECK(plan["holes"][0]["verdict"]["margin_strokes"].is_null());
    CHECK(plan["holes"][0]["verdict"]["over"].is_null());
    CHECK(plan["holes"][0]["verdict"]["break_evens"].is_null());
    const Json& second = plan["holes"][1]["verdict"]["break_evens"];
    CHECK(second["landing_width_yd"].is_null());
    CHECK(second["today"]["landing_width_yd"].is_null());
    CHECK(second["side_sd_yd"].is_null());
    CHECK(second["today"]["side_sd_yd"] == 10.4);  // 9.5 m
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

TEST_CASE("the personal field adds scores, next shots and the round's spread", "[plan_json]") {
    const PlanFixture fixture = fixture::own_field();
    const Json plan = read(fixture);
    CHECK(plan["field"] == "personal");
    CHECK(keys(plan["holes"][0]["verdict"]) == keys(read(two_holes())["holes"][0]["verdict"]));
    const Json& choice = plan["holes"][0]["choices"][0];
    CHECK(choice["score"]["strokes"] ==
          Json{{"2", 0.01}, {"3", 0.11}, {"4", 0.38}, {"5", 0.32}, {"6", 0.13}, {"7", 0.04}, {"8+", 0.01}});
    CHECK(choice["score"]["to_par"] == Json{{"eagle_or_better", 0.01},
                                            {"birdie", 0.11},
                                            {"par", 0.38},
                                            {"bogey", 0.32},
                                            {"double_bogey", 0.13},
                                            {"triple_bogey_or_worse", 0.05}});
    CHECK_FALSE(plan["holes"][0]["choices"][1].contains("score"));
    CHECK(plan["holes"][1]["choices"][0]["score"]["to_par"]["birdie"] == 0.12);
    // By hand: see score_words_test and plan_fixture.hpp.
    CHECK(plan["round"]["score"] == Json{{"mean", 8.03}, {"sd", 1.357}, {"p10", 6}, {"p50", 8}, {"p90", 10}});
    CHECK(plan["holes"][1]["next"] == Json::array());
    CHECK_FALSE(plan["holes"][0].contains("strokes_received"));
    CHECK_FALSE(read(two_holes())["holes"][0].contains("next"));
    CHECK_FALSE(read(two_holes())["round"].contains("score"));
}

TEST_CASE("shares of scores add to exactly 1 both ways", "[plan_json]") {
    PlanFixture fixture = fixture::own_field();
    ScoreDistribution& score = fixture.plan.holes[0].choices[0].score;
    std::mt19937 random(5);
    std::exponential_distribution<double> weight(1.0);
    for (int i = 0; i < 100; ++i) {
        score.shares.assign(11, 0.0);
        double sum = 0.0;
        for (std::size_t n = 2; n < score.shares.size(); ++n)
            sum += score.shares[n] = weight(random);
        for (double& share : score.shares)
            share /= sum;
        const Json json = read(fixture)["holes"][0]["choices"][0]["score"];
        for (const char* part : {"strokes", "to_par"}) {
            long ten_thousandths = 0;
            for (const auto& item : json[part].items())
                ten_thousandths += std::lround(item.value().get<double>() * 10000.0);
            CHECK(ten_thousandths == 10000);
        }
        CHECK(json["strokes"].contains("10+"));
        CHECK_THAT(json["to_par"]["birdie"].get<double>(), WithinAbs(score.shares[3], 6e-4));
    }
}

TEST_CASE("a next shot says where from, where to and what the other way costs", "[plan_json]") {
    const PlanFixture fixture = fixture::own_field();
    const Json next = read(fixture)["holes"][0]["next"];
    REQUIRE(next.size() == 2);
    CHECK(keys(next[0]) == Keys{"club", "swing", "purpose", "from", "lie", "to_hole_yd", "aim_bearing_deg",
                                "aim_point", "leave", "leave_lie", "leave_yd", "expected_strokes",
                                "alternative"});
    CHECK(next[0]["club"] == "7-iron");
    CHECK(next[0]["swing"] == 1.0);
    CHECK(next[0]["purpose"] == "lay-up");
    CHECK(next[0]["lie"] == "fairway");
    CHECK(next[0]["to_hole_yd"] == 181.5);  // 166 m
    CHECK(next[0]["leave_yd"] == 52.5);     // 48 m
    CHECK(next[0]["expected_strokes"] == 3.61);
    CHECK(next[0]["alternative"] == Json{{"club", "3-wood"},
                                         {"swing", 1.0},
                                         {"purpose", "to the green"},
                                         {"leave_yd", 12.0},  // 11 m
                                         {"margin", 0.12}});
    // From (-6.9, 203) to (42, 308): atan(48.9 / 105) is 24.97 degrees; the plane's north is true within 0.01
    // degrees there.
    CHECK_THAT(next[0]["aim_bearing_deg"].get<double>(), WithinAbs(24.97, 0.02));
    CHECK(next[1]["swing"] == 0.6);
    CHECK(next[1]["purpose"] == "to the green");
    CHECK(next[1]["leave_lie"] == "green");
    CHECK(next[1]["alternative"].is_null());
    CHECK(next[1]["from"] == next[0]["leave"]);
    const LonLat from{next[0]["from"][0].get<double>(), next[0]["from"][1].get<double>()};
    const LonLat leave{next[0]["leave"][0].get<double>(), next[0]["leave"][1].get<double>()};
    CHECK_THAT(geodesic_distance(from, leave), WithinAbs(std::hypot(50.9, 109.0), 0.01));
}

TEST_CASE("another aim adds its value and names the unit of its margin", "[plan_json]") {
    const Json points = read(fixture::own_field_for_points());
    CHECK(points["aim_for"] == "stableford");
    const Json& verdict = points["holes"][0]["verdict"];
    CHECK(keys(verdict) == Keys{"club", "aim_bearing_deg", "aim_point", "aim_text", "expected_strokes",
                                "expected_points", "margin_strokes", "margin_points", "over", "confidence",
                                "toss_up", "toss_up_because", "break_evens"});
    CHECK(verdict["expected_strokes"] == 4.61);
    CHECK(verdict["expected_points"] == 1.96);
    CHECK(verdict["margin_strokes"].is_null());
    CHECK(verdict["margin_points"] == 0.11);
    CHECK(points["holes"][0]["choices"][1]["expected_points"] == 1.85);
    CHECK(points["holes"][0]["strokes_received"] == 1);
    CHECK(points["holes"][1]["strokes_received"] == 0);
    CHECK(points["holes"][0]["next"][0].contains("expected_points"));
    CHECK(points["round"]["expected_strokes"] == 8.03);
    CHECK(points["round"]["expected_points"] == 3.58);
    CHECK(points["round"]["always_driver"] == 3.47);

    const Json par = read(fixture::own_field_for_par());
    CHECK(par["aim_for"] == "par-or-better");
    CHECK(par["holes"][0]["verdict"]["par_or_better"] == 0.5);
    CHECK(par["holes"][0]["verdict"]["margin_strokes"].is_null());
    CHECK(par["holes"][0]["verdict"]["margin_share"] == 0.021);
    CHECK(par["holes"][0]["choices"][2]["par_or_better"] == 0.44);
    CHECK_FALSE(par["holes"][0].contains("strokes_received"));
    CHECK(par["round"]["holes_par_or_better"] == 1.06);
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
