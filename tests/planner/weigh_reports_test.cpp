// The forms of a comparison of bags: what the engine found is on them, in words and numbers.
#include "planner/reports/weigh_reports.hpp"

#include <nlohmann/json.hpp>
#include <sstream>

#include "planner/reports/html_text.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/weigh_setting_words.hpp"
#include "planner/reports/weigh_words.hpp"
#include "tests/catch.hpp"
#include "tests/planner/page_checks.hpp"
#include "tests/planner/weigh_fixture.hpp"

using namespace landwidth;

namespace {

void require_narrow(const std::string& text) {
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        CAPTURE(line);
        REQUIRE(display_width(line) <= report_width);
    }
}

std::string on_a_line(const std::string& text) {
    std::string joined;
    for (const char c : text) {
        const bool space = c == '\n' || c == ' ';
        if (!space || joined.empty() || joined.back() != ' ') joined += space ? ' ' : c;
    }
    return joined;
}

std::size_t pictures(const std::string& html) {
    std::size_t found = 0;
    for (auto at = html.find("<figure"); at != std::string::npos; at = html.find("<figure", at + 1))
        ++found;
    return found;
}

}  // namespace

TEST_CASE("the page says what a change saves, how sure, where, and what to do next", "[weigh]") {
    const std::string html = weigh_html(fixture::two_changes().view());
    check_self_contained(html);
    check_identifiers(html);
    for (const char* part :
         {"<title>What changes to the bag are worth: A. Golfer</title>",
          "For <bdi>A. Golfer</bdi>, handicap index 14.2, right-handed. <bdi>Example Holm</bdi>, 2 holes.",
          "What are these changes to the bag worth to A. Golfer: driver, 44 in for driver; or without "
          "5-iron?",
          "The bag of today</th><td></td>",
          "<td class=\"n\">8.03</td>",
          "<bdi>Driver, 44 in for driver</bdi></th><td>is not known yet</td><td class=\"n\">+0.15</td>",
          "-0.04 and +0.31",
          "very likely to help, 91\u00A0%",
          "<td class=\"n\">7.88</td><td class=\"n\">1 hole</td>",
          "is as good",
          "the same either way",
          "driver, 44 in</text>",
          "4 shots, 1 taken for a mishit",
          "What to do next",
          "Not known yet: about 9 more shots",
          "about 9 more shots with the driver, 44 in would raise the chance of choosing the better bag to "
          "95\u00A0%",
          "<bdi>3-wood</bdi></td><td><bdi>driver, 44 in</bdi></td><td class=\"n\">+0.15</td><td "
          "class=\"n\">88\u00A0%</td>",
          "out of bounds 4\u00A0% instead of 1\u00A0%",
          "fairway 49\u00A0% instead of 58\u00A0%",
          "11\u00A0yd less to go",
          "1 hole is played as today.",
          "No hole is played otherwise.",
          "Saves nothing and costs nothing",
          "few shots of the driver, 44 in are recorded",
          "heat, adhesives",
          "weigh_draws",
          "invented data of the Landwidth tests"}) {
        INFO(part);
        CHECK(holds(html, part));
    }
    CHECK(holds(html, "none: typical, not measured"));
    CHECK(weigh_html(fixture::two_changes().view()) == html);
}

TEST_CASE("metres on the page where metres are asked for", "[weigh]") {
    const std::string html = weigh_html(fixture::two_changes().view(DisplayUnits::metres));
    check_self_contained(html);
    CHECK(holds(html, "Lengths in metres."));
    CHECK(holds(html, ">200 m carry, "));
    CHECK(holds(html, "10\u00A0m less to go"));
    CHECK_FALSE(holds(html, "\u00A0yd"));
}

TEST_CASE("names that try to break the page of a comparison do not", "[weigh]") {
    const fixture::WeighFixture made = fixture::hostile_weighing();
    const std::string html = weigh_html(made.view());
    check_self_contained(html);
    check_identifiers(html);
    for (const char* part : {"<script", "<i>", "<driver>", "\u202E"}) {
        INFO(part);
        CHECK_FALSE(holds(html, part));
    }
    CHECK(holds(html, "&lt;script&gt;"));
    CHECK(holds(html, "O&#39;Neil"));
    CHECK_FALSE(holds(html, std::string(200, 'W')));
    CHECK(html.size() < 400'000);
    require_narrow(weigh_text(made.view()));
}

TEST_CASE("several courses stand beside their holes", "[weigh]") {
    const std::string html = weigh_html(fixture::two_courses().view());
    check_self_contained(html);
    CHECK(holds(html, "<bdi>Example Holm</bdi>, 2 holes; <bdi>Far Holm</bdi>, 2 holes"));
    CHECK(holds(html, "<td><bdi>Far Holm</bdi></td>"));
    CHECK(holds(html, "Saves a round: +0.15 on <bdi>Example Holm</bdi>, +0.15 on <bdi>Far Holm</bdi>."));
    CHECK(holds(html, "a round, the mean of 2 courses"));
    CHECK(holds(html, "2 holes are played as today."));
}

TEST_CASE("many new clubs are drawn a few at a time", "[weigh]") {
    fixture::WeighFixture made = fixture::two_changes();
    made.weighing.compared = {{6, true}, {1, true}, {2, true}, {3, true}, {4, true}, {0, false}};
    const std::string html = weigh_html(made.view());
    check_self_contained(html);
    CHECK(pictures(html) == 2);
    made.weighing.compared = {{1, false}, {0, false}};
    CHECK(pictures(weigh_html(made.view())) == 1);
    made.weighing.compared = {};
    CHECK(pictures(weigh_html(made.view())) == 0);
}

TEST_CASE("the text of a comparison is at most 100 columns wide", "[weigh]") {
    const std::string text = weigh_text(fixture::two_changes().view());
    require_narrow(text);
    const std::string words = on_a_line(text);
    for (const char* part :
         {"What changes to the bag are worth to A. Golfer: Example Holm", "-0.04 and +0.31", "91 %",
          "is not known yet", "is as good", "Saves +0.15 strokes a round",
          "about 9 more shots with the driver, 44 in",
          "What they tell is worth 0.02 strokes a round on average.", "No hole is played otherwise.",
          "Map: holm.osm, invented data of the Landwidth tests"}) {
        INFO(part);
        CHECK(holds(words, part));
    }
    require_narrow(weigh_text(fixture::two_courses().view()));
}

TEST_CASE("the JSON of a comparison is a contract", "[weigh]") {
    using Json = nlohmann::json;
    const Json json = Json::parse(weigh_json(fixture::two_changes().view(DisplayUnits::metres)));
    CHECK(json["format"] == "landwidth-weighing/1");
    CHECK(json["golfer"]["name"] == "A. Golfer");
    CHECK(json["courses"][0]["name"] == "Example Holm");
    CHECK(json["courses"][0]["holes"] == 2);
    CHECK(json["expected_strokes"] == 8.03);
    CHECK(json["assumptions"].contains("weigh_draws"));
    CHECK(json["warnings"] == Json{"few shots of the driver, 44 in are recorded"});
    REQUIRE(json["changes"].size() == 2);
    const Json& change = json["changes"][0];
    CHECK(change["label"] == "driver, 44 in for driver");
    CHECK(change["in"] == Json{"driver, 44 in"});
    CHECK(change["out"] == Json{"driver"});
    CHECK(change["saves_strokes"] == 0.15);
    CHECK(change["interval_90"] == Json{-0.04, 0.31});
    CHECK(change["confidence"] == 0.91);
    CHECK(change["settled"] == false);
    CHECK(change["standing"] == "open");
    CHECK(change["verdict"] == "not-known");
    CHECK(change["drawn_mean"] == 0.14);
    CHECK(change["baseline"]["is_bag_of_today"] == true);
    CHECK(change["baseline"]["expected_strokes"] == 8.03);
    CHECK(change["baseline_without_shots"].empty());
    CHECK(change["supposed"].empty());
    CHECK(json["supposed"].empty());
    CHECK(json["straight_holes"].is_null());
    CHECK(change["more_shots"]["club"] == "driver, 44 in");
    CHECK(change["more_shots"]["shots"] == 9);
    CHECK(change["holes"][0]["before"]["club"] == "3-wood");
    CHECK(change["holes"][0]["after"]["club"] == "driver, 44 in");
    CHECK(change["holes"][0]["after"]["lies"]["out_of_bounds"] == 0.04);
    CHECK(change["holes"][0]["confidence"] == 0.88);
    CHECK(change["holes"][1]["confidence"].is_null());
    CHECK_FALSE(change["holes"][1].contains("why"));
    // Always yards, whatever the view.
    CHECK(change["holes"][0]["after"]["leave_yd"].get<double>() == Approx(153.0 / 0.9144).margin(0.06));
    CHECK(json["changes"][1]["more_shots"].is_null());
    CHECK(json["changes"][1]["standing"] == "no difference");
    CHECK(json["changes"][1]["verdict"] == "alike");
}

TEST_CASE("recorded shots stand beside what is made of them", "[weigh]") {
    fixture::WeighFixture made = fixture::two_changes();
    const std::string html = weigh_html(made.view(DisplayUnits::metres));
    check_self_contained(html);
    CHECK(holds(html, "The recorded shots and what is made of them"));
    // By hand: carries 205, 193, 201, 120.
    for (const char* cell : {">recorded<", ">180<", ">197<", ">200 (190 to 209)<", ">12.0 (8.0 to 17.0)<",
                             ">2L (9L to 5R)<", ">15.0 (11.0 to 22.0)<"}) {
        INFO(cell);
        CHECK(holds(html, cell));
    }
    const auto shots = nlohmann::json::parse(weigh_json(made.view()))["shots"]["driver, 44 in"];
    CHECK(shots["recorded"]["shots"] == 4);
    CHECK(shots["recorded"]["carry_mean_yd"].get<double>() == Approx(179.75 / 0.9144).margin(0.06));
    CHECK(shots["recorded_without_mishits"]["shots"] == 3);
    CHECK(shots["model"]["mishit_share_90"] == nlohmann::json{0.04, 0.27});
    made.weighing.evidence.clear();
    CHECK_FALSE(holds(weigh_html(made.view()), "what is made of them"));
    CHECK(nlohmann::json::parse(weigh_json(made.view()))["shots"].empty());
}

TEST_CASE("builds compared say from which bag, what is supposed, and what nobody hit", "[weigh]") {
    const fixture::WeighFixture made = fixture::builds_compared();
    const std::string text = weigh_text(made.view());
    require_narrow(text);
    const std::string words = on_a_line(text);
    const std::string html = weigh_html(made.view());
    check_self_contained(html);
    for (const std::string& form : {words, html}) {
        CHECK(holds(form, "rom: driver, 44 in for driver"));
        CHECK(holds(form, "8.01"));
    }
    const std::string from =
        "It starts from a bag of its own, with the driver, 44 in in the place of the driver: 8.01 strokes.";
    const std::string supposed =
        "Supposed, not hit: the driver, 44 in (supposed) is the driver, 44 in with side spread -10 %.";
    const std::string bare =
        "No shots with the driver and the 3-wood are recorded: the comparison is with typical clubs, not "
        "with "
        "the golfer's own.";
    for (const std::string& sentence_words : {from, supposed, bare}) {
        INFO(sentence_words);
        CHECK(holds(words, sentence_words));
        CHECK(holds(html, sentence(sentence_words)));
    }
    CHECK(baseline_warnings(made.view()) == std::vector<std::string>{bare});
    CHECK(baseline_warnings(fixture::two_changes().view()).empty());
    CHECK(holds(html, "Club before"));
    CHECK(holds(html, "none: supposed, not hit"));
    CHECK(holds(html, "supposed: 219"));
    WeighedChange saves = made.weighing.changes.front();
    saves.verdict = BagVerdict::saves;
    CHECK(holds(next_step_words(made.view(), saves), "whether it comes true"));
    saves.verdict = BagVerdict::costs;
    CHECK(holds(next_step_words(made.view(), saves), "even if it comes true"));
    CHECK_FALSE(holds(html, "Club today"));

    const auto json = nlohmann::json::parse(weigh_json(made.view()));
    const auto& change = json["changes"][0];
    CHECK(change["baseline"]["is_bag_of_today"] == false);
    CHECK(change["baseline"]["in"][0] == "driver, 44 in");
    CHECK(change["baseline"]["out"][0] == "driver");
    CHECK(change["baseline_without_shots"] == nlohmann::json{"driver", "3-wood"});
    const auto& club = change["supposed"]["driver, 44 in (supposed)"];
    CHECK(club["of"] == "driver, 44 in");
    CHECK(club["with"] == "side spread -10 %");
    CHECK(club["side_spread_factor"] == 0.9);
    CHECK(club["carry_spread_factor"] == 1.0);
    CHECK(json["supposed"] == change["supposed"]);
}

TEST_CASE("without a course the reports say so and show no map", "[weigh]") {
    const fixture::WeighFixture made = fixture::without_course();
    const std::string text = weigh_text(made.view());
    require_narrow(text);
    const std::string words = on_a_line(text);
    const std::string html = weigh_html(made.view());
    check_self_contained(html);
    const std::string told =
        "No course was given: the bags play 2 straight holes without par 3s, landing width 24 or 36 yd, 320 "
        "to "
        "540 yd long, trouble: woods on 1, out of bounds on one side on 1.";
    CHECK(holds(words, "What changes to the bag are worth to A. Golfer: 2 straight holes"));
    CHECK(holds(words, told));
    CHECK(holds(html, sentence(told)));
    CHECK(holds(html, "<td><bdi>woods</bdi></td>"));
    for (const std::string& form : {words, html}) {
        CHECK_FALSE(holds(form, "Map:"));
        CHECK_FALSE(holds(form, "Example Holm"));
    }
    const auto json = nlohmann::json::parse(weigh_json(made.view()));
    CHECK(json["straight_holes"]["trouble"] == "mix");
    CHECK(json["straight_holes"]["holes"][1]["trouble"] == "out-left");
    CHECK(json["straight_holes"]["holes"][0]["landing_width_yd"] == 24.0);
}

TEST_CASE("undecided changes say why, and a figure outside its interval says so", "[weigh]") {
    fixture::WeighFixture made = fixture::two_changes();
    WeighedChange& change = made.weighing.changes[0];
    CHECK(holds(next_step_words(made.view(), change), "Not known yet: about 9 more shots"));
    CHECK_FALSE(holds(next_step_words(made.view(), change), "noise"));
    CHECK_FALSE(holds(sureness_words(change), "lopsided"));
    change.gain = 0.35;
    CHECK(holds(sureness_words(change), "lopsided, and +0.14 is its mean"));
    change.verdict = BagVerdict::alike;
    CHECK(holds(next_step_words(made.view(), change), "As good as each other, within 0.1 strokes a round"));
    change.verdict = BagVerdict::not_known;
    change.more.reset();
    CHECK(next_step_words(made.view(), change) == "Not known yet, and no more shots of one club would tell.");
}

TEST_CASE("where neither club is hit nothing is said to be as good", "[weigh]") {
    fixture::WeighFixture made = fixture::two_changes();
    WeighedChange& change = made.weighing.changes[0];
    change.courses[0].holes[0].after = change.courses[0].holes[0].before;
    change.courses[0].holes[0].gain = 0.0;
    change.gain = change.low = change.high = change.drawn_mean = 0.0;
    change.chance = 0.5;
    change.verdict = BagVerdict::not_compared;
    change.more.reset();
    made.weighing.changes.pop_back();
    const std::string words =
        "Neither the driver nor the driver, 44 in is hit on any of these holes, from the tee or later, in "
        "any of the 200 draws, so nothing was compared";
    const std::string text = on_a_line(weigh_text(made.view())), html = weigh_html(made.view());
    const auto json = nlohmann::json::parse(weigh_json(made.view()))["changes"][0];
    CHECK(holds(text, words));
    CHECK(holds(text, "is hit on no hole"));
    CHECK(holds(html, sentence(words)));
    CHECK(holds(html, "nothing compared"));
    CHECK(json["verdict"] == "not-compared");
    CHECK(json["confidence"].is_null());
    for (const std::string& form : {text, html, json.dump()}) {
        CHECK_FALSE(holds(form, "s good as each other, within"));
        CHECK_FALSE(holds(form, "is as good"));
        CHECK_FALSE(holds(form, "50 %"));
    }
}

TEST_CASE("text and page say that a compared club goes two ways", "[weigh]") {
    fixture::WeighFixture made = fixture::two_changes();
    CHECK_FALSE(holds(weigh_text(made.view()), "two ways"));
    made.golfer.clubs[0].pattern->ways = {Way{0.4, 0.0, -1.2, 1.0, 0.3, 0.0},
                                          Way{0.6, 0.0, 0.8, 1.0, 0.3, 0.0}};
    REQUIRE(two_way_words(made.view()).size() == 1);
    const std::string words = two_way_words(made.view()).front();
    CHECK(words.starts_with("The driver goes two ways, 40 % about "));
    CHECK(holds(on_a_line(weigh_text(made.view())), words));
    CHECK(holds(weigh_html(made.view()), sentence(words)));
}

TEST_CASE("a long change is told on two lines and not cut", "[weigh]") {
    const std::string text = weigh_text(fixture::builds_compared().view());
    require_narrow(text);
    CHECK(holds(text, "\ndriver, 44 in (supposed) for  "));
    CHECK(holds(text, "\n  driver, 44 in\n"));
}

TEST_CASE("chances have words that do not promise", "[weigh]") {
    WeighedChange change = fixture::two_changes().weighing.changes[0];
    const auto words = [&](double chance) {
        change.chance = chance;
        return chance_words(change);
    };
    CHECK(words(0.995) == "all but certain to help, >99 %");
    CHECK(words(0.9) == "very likely to help, 90 %");
    CHECK(words(0.7) == "likely to help, 70 %");
    CHECK(words(0.6) == "a little likelier to help, 60 %");
    CHECK(words(0.5) == "an even chance, 50 % to help");
    CHECK(words(0.3) == "likely to cost, 70 %");
    CHECK(words(0.0) == "all but certain to cost, >99 %");
}
