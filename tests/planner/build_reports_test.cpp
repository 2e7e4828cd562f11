#include "planner/reports/build_reports.hpp"

#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "planner/engine/build_assumptions.hpp"
#include "planner/reports/build_figures.hpp"
#include "planner/reports/build_words.hpp"
#include "planner/reports/text_table.hpp"
#include "tests/catch.hpp"
#include "tests/planner/page_checks.hpp"

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
    const double reach_m = assumptions.length.reach_m;
    const BuildWishes wishes{.length_m = to_in * in};
    const KnownFlight known{.ball_speed_mps = 150 * mph, .carry_m = 240 * metres_per_yard};
    return {.club = "driver",
            .length_m = 45.5 * in,
            .parts = change_build(parts, wishes, assumptions.thumb),
            .wishes = wishes,
            .head_step = head_change(parts, 2 * g, assumptions.head),
            .flight = length_change(ClubKind::driver, 45.5 * in, to_in * in, known, assumptions.length),
            .silence = length_silence(ClubKind::driver, 45.5 * in, to_in * in, assumptions.length),
            .length_reach_m = reach_m,
            .lie = lie_change(58 * radians_per_degree, 10.5 * radians_per_degree, 45.5 * in, to_in * in,
                              assumptions.lie_per_length, false),
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
    REQUIRE(has(line, "Swing weight falls by 4.9 points; the trade's rule of thumb makes it -6.0."));
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
    for (const double to_in : {44.0, 44.5, 45.0, 46.0, 47.0}) {
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
    REQUIRE(build["changed_points"] == -4.9);
    REQUIRE(build["rule_of_thumb_points"] == -6.0);
    REQUIRE(build["head_for_target"]["swing_weight"] == "D4.6");
    // 198 x 115.57^2 + 62 x 115.57^2 / 3 + 50 x 20.32^2 / 3 g cm2.
    REQUIRE(build["as_it_is"]["inertia_about_butt_kg_cm2"] == 2927.5);
    REQUIRE(build["head_for_target_inertia"]["inertia_about_butt_kg_cm2"] == 2927.5);
    REQUIRE(build["head_step"]["more_g"] == 2.0);
    REQUIRE(build["head_step"]["club_speed_change_mph"][0] < 0.0);
    REQUIRE(build["head_step"]["club_speed_change_mph"][1] > 0.0);
    // As the table says it.
    REQUIRE(build["head_step"]["club_speed_change_mph"][0] == -0.4);
    REQUIRE(build["head_step"]["club_speed_change_mph"][1] == 0.2);
    REQUIRE(has(on_a_line(build_text(driver(44.5))), "-0.4 to +0.2"));
    REQUIRE(json["lie"]["as_built_deg"] == 58.0);
    REQUIRE(json["lie"]["plays_upright_deg"] == -2.12);
    REQUIRE(json["flight"]["ball_speed_mph"][0] == 145.5);
    REQUIRE(json["flight"]["carry_change_yd"][0] == -14.0);
    REQUIRE(json["cautions"].size() == build_cautions().size());
    REQUIRE(json["assumptions"]["club_speed_high"]["value"] == 3.0);
    REQUIRE(json["assumptions"]["club_speed_high"]["source"] == "common practice, no source");
}

TEST_CASE("beyond what rules of thumb are meant for no figure is told, and it is said so") {
    for (const double to_in : {43.0, 47.5, 49.0}) {
        CAPTURE(to_in);
        const std::string line = on_a_line(build_text(driver(to_in)));
        REQUIRE(has(line, "Rules of thumb on length say nothing"));
        REQUIRE_FALSE(has(line, "ball speed, mph "));
        REQUIRE_FALSE(has(line, "A trial beats this table"));
        const auto json = nlohmann::json::parse(build_json(driver(to_in)));
        REQUIRE(json["flight"]["silent"] == (to_in == 49.0 ? "no such length" : "change too large"));
        REQUIRE_FALSE(json["flight"].contains("carry_change_yd"));
    }
}

namespace {

// The cells of the row of a text table that begins with `name`, the units apart.
std::vector<double> row_of(const std::string& text, const std::string& name) {
    const auto start = text.find("\n" + name + " ");
    REQUIRE(start != std::string::npos);
    std::istringstream cells(
        text.substr(start + 1 + name.size(), text.find('\n', start + 1) - start - 1 - name.size()));
    std::vector<double> values;
    for (std::string cell; cells >> cell;) {
        const auto weight = swing_weight_of_text(cell);
        values.push_back(weight ? weight->points() : std::stod(cell));
    }
    return values;
}

// The number that follows `before` in a text on one line.
double number_after(const std::string& line, const std::string& before) {
    const auto at = line.find(before);
    CAPTURE(before, line);
    REQUIRE(at != std::string::npos);
    return std::stod(line.substr(at + before.size()));
}

}  // namespace

TEST_CASE("what a sentence says is the difference of what the table shows, to the last digit") {
    // Lengths whose exact differences round otherwise than those of the rounded figures do.
    for (int step = 1; step <= 29; ++step) {
        const double to_in = 45.5 - 0.05 * step;
        const std::string text = build_text(driver(to_in));
        const std::string line = on_a_line(text);
        CAPTURE(to_in);
        const auto points = row_of(text, "swing weight");
        const auto inertia = row_of(text, "moment of inertia, kg cm2");
        const auto head = row_of(text, "head, g");
        REQUIRE(points.size() == 4);
        REQUIRE(std::abs(number_after(line, "Swing weight falls by ") - (points[0] - points[1])) < 1e-6);
        REQUIRE(std::abs(number_after(line, "about the butt falls by ") - (inertia[0] - inertia[1])) < 1e-6);
        for (const std::size_t column : {2U, 3U}) {
            const std::string must =
                column == 2 ? "For D4.6 the head must weigh " : " kg cm2 the head must weigh ";
            REQUIRE(std::abs(number_after(line, must) - head[column]) < 1e-6);
            const std::string rest = line.substr(line.find(must) + must.size());
            REQUIRE(std::abs(number_after(rest, " g, ") - (head[column] - head[1])) < 1e-6);
        }
        const auto carry = line.find("carry, yd ");
        int low = 0;
        int now = 0;
        int then_low = 0;
        int then_high = 0;
        REQUIRE(std::sscanf(line.c_str() + carry, "carry, yd %d to 0 %d %d to %d", &low, &now, &then_low,
                            &then_high) == 4);
        REQUIRE(then_low == now + low);
        REQUIRE(then_high == now);
    }
}

TEST_CASE("a known carry between two whole yards: then is what is shown plus the change that is shown") {
    const ShownRange shown = shown_range({-13.5, 0.0}, 240.4, 1.0, 0);
    REQUIRE(shown.now == 240.0);
    REQUIRE(shown.then->low == 226.0);
    REQUIRE(shown.then->high == 240.0);
    REQUIRE(shown_range({-30.0, 0.0}, 20.0, 1.0, 0).then->low == 0.0);
}

TEST_CASE("lie with length in text and page: geometry and practice are told apart; without a lie, words") {
    const std::string text = build_text(driver(44.5));
    REQUIRE(has(text, "60.1  geometry"));
    REQUIRE(has(text, "2.1 flat  geometry"));
    REQUIRE(has(text, "1.5 to 2.5 flat  common practice"));
    BuildView unknown = driver(44.5);
    unknown.lie.reset();
    const std::string words = on_a_line(build_text(unknown));
    REQUIRE(has(words, "half an inch less plays about a degree flatter"));
    REQUIRE_FALSE(has(words, "geometry"));
}

TEST_CASE("the page of a build says what its text says, draws the club, and reaches out to nowhere") {
    BuildView view = driver(44.5);
    view.club = "driver <b>&\"";
    const std::string html = build_html(view);
    check_self_contained(html);
    check_identifiers(html);
    for (const char* part : {"D4.6", "C9.7", "4.9 points", "class=\"club-balance\"", "14 in, D4.6",
                             "lead tape", "graphite dust", "head_centre", "Model Local Rule G-10"}) {
        CAPTURE(part);
        // Numbers and units are kept on one line by a space of their own.
        std::string plain;
        for (std::size_t i = 0; i < html.size(); ++i) {
            if (html.compare(i, 2, "\u00A0") == 0) {
                plain += ' ';
                ++i;
            } else {
                plain += html[i];
            }
        }
        REQUIRE(has(plain, part));
    }
    check_self_contained(build_html(
        {.club = "driver", .weighed = ClubWeights{318 * g, 33.9 * in, swing_weight_of(318 * g, 33.9 * in)}}));
}

TEST_CASE("carry in metres has its unit in the name") {
    const BuildView metres = driver(44.5, DisplayUnits::metres);
    const auto json = nlohmann::json::parse(build_json(metres));
    REQUIRE(json["flight"]["carry_m"][1] == 219.0);
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

TEST_CASE("of a putter no speed is told, with a head that is looked for or without") {
    BuildView view = driver(44.5);
    view.kind = ClubKind::putter;
    view.club = "putter";
    view.flight.reset();
    view.restored_head = head_change(view.parts->after, 40 * g, default_build_assumptions().head);
    const std::string line = on_a_line(build_text(view));
    REQUIRE(has(line, "moment of inertia"));
    REQUIRE_FALSE(has(line, "speed"));
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

TEST_CASE("where a head balances has a default by kind, which is not the end of the club") {
    for (const ClubKind kind : {ClubKind::driver, ClubKind::fairway_wood, ClubKind::iron, ClubKind::putter}) {
        const BuildAssumptions assumptions = default_build_assumptions(kind);
        REQUIRE(assumptions.head_centre_from_end_m > 0.1 * in);
        const auto entries = list_build_assumptions(assumptions, kind);
        REQUIRE(entries.front().name == "head_centre");
        REQUIRE(entries.front().source == "assumption");
        REQUIRE_FALSE(entries.front().overridden);
    }
    REQUIRE(default_build_assumptions(ClubKind::iron).head_centre_from_end_m <
            default_build_assumptions(ClubKind::driver).head_centre_from_end_m);
}

}  // namespace landwidth
