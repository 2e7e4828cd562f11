#include "planner/reports/build_reports.hpp"

#include <cmath>
#include <nlohmann/json.hpp>
#include <sstream>

#include "planner/engine/build_assumptions.hpp"
#include "planner/reports/build_words.hpp"
#include "planner/reports/text_table.hpp"
#include "tests/catch.hpp"

namespace landwidth {
namespace {

constexpr double in = metres_per_inch;
constexpr double g = kilograms_per_gram;
constexpr double mph = metres_per_second_per_mph;

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::string on_a_line(const std::string& text) {
    std::string joined;
    for (const char c : text)
        joined += c == '\n' ? ' ' : c;
    return joined;
}

// The driver of tests/golfer-profiles/club_build_test.cpp, wished to another length.
BuildView driver(double to_in, DisplayUnits units = DisplayUnits::yards) {
    const BuildAssumptions assumptions = default_build_assumptions();
    const ClubParts parts{.length_m = 45.5 * in,
                          .head_kg = 198 * g,
                          .shaft_kg = 62 * g,
                          .shaft_length_m = 45.5 * in,
                          .grip_kg = 50 * g,
                          .grip_balance_m = 4 * in};
    const BuildWishes wishes{.length_m = to_in * in};
    const KnownFlight known{.ball_speed_mps = 150 * mph, .carry_m = 240 * metres_per_yard};
    return {.club = "driver",
            .length_m = 45.5 * in,
            .parts = change_build(parts, wishes, assumptions.thumb),
            .wishes = wishes,
            .flight = length_change(ClubKind::driver, 45.5 * in, to_in * in, known, assumptions.length),
            .known = known,
            .verdicts = length_verdicts(ClubKind::driver, to_in * in),
            .assumptions = list_build_assumptions(assumptions),
            .units = units};
}

void require_narrow(const std::string& text) {
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        CAPTURE(line);
        REQUIRE(display_width(line) <= report_width);
    }
}

}  // namespace

TEST_CASE("an inch off a driver as text: the three states, the ranges, the trial, the limits, the cautions") {
    // By hand: 6279.5 g.in is 4.57 points above D0, 0.27 below it after the cut.
    const std::string text = build_text(driver(44.5));
    require_narrow(text);
    REQUIRE(has(text, "Build of a club: driver, 45.5 in to 44.5 in\n"));
    REQUIRE(has(text, "D4.6"));
    REQUIRE(has(text, "C9.7"));
    const std::string line = on_a_line(text);
    REQUIRE(has(line, "Swing weight falls by 4.8 points; the trade's rule of thumb makes it -6.0."));
    REQUIRE(has(line, "For D4.6 the head must weigh 205.9 g, 7.9 g more"));
    REQUIRE(has(line, "-14 to 0"));
    REQUIRE(has(line, "145.5 to 150.0"));
    REQUIRE(has(line, "226 to 240"));
    REQUIRE(has(line, "A trial beats this table"));
    REQUIRE(has(line, "Model Local Rule G-10"));
    REQUIRE(has(line, "44.5 in is within the lengths most driver fittings end at"));
    REQUIRE(has(line, "lead tape and powder"));
}

TEST_CASE("never one number: every change of speed and carry is told as a range that holds no change") {
    for (const double to_in : {43.0, 44.5, 45.0, 46.0, 47.5}) {
        const auto flight = nlohmann::json::parse(build_json(driver(to_in)))["flight"];
        for (const char* key : {"club_speed_change_mph", "ball_speed_change_mph", "carry_change_yd"}) {
            CAPTURE(to_in, key);
            REQUIRE(flight[key].size() == 2);
            REQUIRE(flight[key][0] < flight[key][1]);
            REQUIRE(flight[key][0] <= 0.0);
            REQUIRE(flight[key][1] >= 0.0);
        }
    }
}

TEST_CASE("the build as JSON, by hand") {
    const auto json = nlohmann::json::parse(build_json(driver(44.5)));
    REQUIRE(json["format"] == "landwidth-build/1");
    REQUIRE(json["club"]["kind"] == "driver");
    REQUIRE(json["club"]["length_in"] == 45.5);
    const auto& build = json["build"];
    REQUIRE(build["head_centre"] == "assumed");
    REQUIRE(build["as_it_is"]["total_g"] == 310.0);
    REQUIRE(build["as_it_is"]["balance_from_butt_in"] == 34.256);
    REQUIRE(build["as_it_is"]["swing_weight"] == "D4.6");
    REQUIRE(build["as_it_is"]["swing_weight_in_oz"] == 221.5);
    REQUIRE(build["changed"]["swing_weight"] == "C9.7");
    REQUIRE(build["changed"]["shaft_g"] == 60.64);
    REQUIRE(build["changed_points"] == -4.84);
    REQUIRE(build["rule_of_thumb_points"] == -6.0);
    REQUIRE(build["head_for_target"]["swing_weight"] == "D4.6");
    REQUIRE(json["flight"]["ball_speed_mph"][0] == 145.5);
    REQUIRE(json["flight"]["carry_change_yd"][0] == -13.5);
    REQUIRE(json["cautions"].size() == build_cautions().size());
    REQUIRE(json["assumptions"]["club_speed_high"]["value"] == 3.0);
    REQUIRE(json["assumptions"]["club_speed_high"]["source"] == "common practice, no source");
}

TEST_CASE("carry in metres has its unit in the name") {
    const BuildView metres = driver(44.5, DisplayUnits::metres);
    const auto json = nlohmann::json::parse(build_json(metres));
    REQUIRE(json["flight"]["carry_m"][1] == 219.5);
    REQUIRE_FALSE(json["flight"].contains("carry_yd"));
    REQUIRE(has(build_text(metres), "carry, m"));
}

TEST_CASE("a longer club: possible loss is told, and what the rules say") {
    const std::string line = on_a_line(build_text(driver(46.5)));
    REQUIRE(has(line, "No gain at all, or a loss, is possible"));
    REQUIRE(has(line, "0 to +"));
    REQUIRE(has(line, "against the rules wherever Model Local Rule G-10"));
    REQUIRE(has(line, "less: a lighter weight"));
    REQUIRE(has(on_a_line(build_text(driver(48.5))), "against the rules: no club but the putter"));
}

TEST_CASE("a swing weight alone is wished for: the head for it, and no change besides") {
    BuildView view = driver(44.5);
    view.wishes = {.swing_weight = SwingWeight::of_points(32)};
    view.parts = change_build(view.parts->before, view.wishes, default_build_assumptions().thumb);
    const std::string text = build_text(view);
    REQUIRE(has(text, "head for D2"));
    REQUIRE_FALSE(has(text, "changed"));
    REQUIRE(has(on_a_line(text), "For D2 the head must weigh"));
    view.parts->restored.reset();
    REQUIRE(has(on_a_line(build_text(view)), "No head of a weight that is built gives D2"));
}

TEST_CASE("scale and balance edge alone: three lines and no more") {
    const BuildView view{.club = "driver",
                         .weighed = ClubWeights{318 * g, 33.9 * in, swing_weight_of(318 * g, 33.9 * in)}};
    const std::string text = build_text(view);
    require_narrow(text);
    REQUIRE(has(text, "D5.6"));
    REQUIRE(has(text, "318.0"));
    REQUIRE_FALSE(has(text, "head, g"));
    REQUIRE_FALSE(has(text, "speed"));
    const auto json = nlohmann::json::parse(build_json(view));
    REQUIRE(json["weighed"]["swing_weight"] == "D5.6");
    REQUIRE_FALSE(json.contains("build"));
    REQUIRE_FALSE(json.contains("flight"));
}

TEST_CASE("a swing weight off the letters is told and not made up") {
    const BuildView view{
        .club = "putter", .kind = ClubKind::putter, .weighed = ClubWeights{0.3, 0.4, SwingWeight{0.0}}};
    REQUIRE(has(build_text(view), "below A0"));
    REQUIRE(nlohmann::json::parse(build_json(view))["weighed"]["swing_weight"].is_null());
}

TEST_CASE("a long name of a club keeps the lines narrow") {
    BuildView view = driver(44.5);
    view.club = std::string(100, 'W');
    require_narrow(build_text(view));
}

TEST_CASE("every verdict on a length has words that name it") {
    for (const LengthVerdict verdict :
         {LengthVerdict::shorter_than_rules, LengthVerdict::longer_than_rules,
          LengthVerdict::longer_than_local_rule, LengthVerdict::seldom_still_a_driver,
          LengthVerdict::usual_driver, LengthVerdict::longer_than_usual_driver,
          LengthVerdict::extreme_driver}) {
        REQUIRE(has(length_verdict_words(verdict, 44.25 * in), "44.25 in is "));
    }
}

TEST_CASE("an assumption of a build is overridden by name and told as overridden") {
    BuildAssumptions assumptions = default_build_assumptions();
    override_build_assumptions(assumptions, {"head_centre=0.7", "club_speed_high=2"});
    REQUIRE(std::abs(assumptions.head_centre_from_end_m / in - 0.7) < 1e-12);
    int overridden = 0;
    for (const AssumptionEntry& entry : list_build_assumptions(assumptions)) {
        if (entry.overridden) ++overridden;
        REQUIRE_FALSE(entry.meaning.empty());
        REQUIRE_FALSE(entry.source.empty());
    }
    REQUIRE(overridden == 2);
}

}  // namespace landwidth
