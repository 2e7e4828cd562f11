// The sentences that several reports share.
#include "planner/reports/words.hpp"

#include <string>

#include "planner/reports/display_length.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

using namespace landwidth;

namespace {

TeeChoice aimed(double offset_yd, std::optional<Sighting> sighting = std::nullopt) {
    TeeChoice choice = fixture::two_holes().plan.holes[0].choices[0];
    choice.description = {.offset_m = Yards{offset_yd}.metres(), .sighting = sighting};
    return choice;
}

Sighting seen(Lie lie, Sighting::Mark mark, double distance_yd, double offset_yd) {
    return {lie, mark, Yards{distance_yd}.metres(), Yards{offset_yd}.metres()};
}

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("lengths are whole numbers and never minus nothing", "[words]") {
    CHECK(length_text(0.0, DisplayUnits::yards) == "0 yd");
    CHECK(length_text(-0.2, DisplayUnits::metres) == "0 m");
    CHECK(length_text(91.44, DisplayUnits::yards) == "100 yd");
    CHECK(length_text(91.44, DisplayUnits::metres) == "91 m");
    CHECK(length_number(-4.572, DisplayUnits::yards) == "-5");
}

TEST_CASE("shares are whole per cent, and neither none nor all unless they are", "[words]") {
    CHECK(share_text(0.0) == "0 %");
    CHECK(share_text(0.004) == "<1 %");
    CHECK(share_text(0.006) == "1 %");
    CHECK(share_text(0.58) == "58 %");
    CHECK(share_text(0.997) == ">99 %");
    CHECK(share_text(1.0) == "100 %");
}

TEST_CASE("an aim is told from the centre line", "[words]") {
    CHECK(aim_words(aimed(0.0), DisplayUnits::yards) == "on the centre line");
    CHECK(aim_words(aimed(-0.4), DisplayUnits::yards) == "on the centre line");
    CHECK(aim_words(aimed(-7.0), DisplayUnits::yards) == "7 yd left of the centre line");
    CHECK(aim_words(aimed(7.0), DisplayUnits::yards) == "7 yd right of the centre line");
    CHECK(aim_words(aimed(10.0), DisplayUnits::metres) == "9 m right of the centre line");
}

TEST_CASE("an aim is told by what can be seen", "[words]") {
    using Mark = Sighting::Mark;
    const auto words = [](const Sighting& sighting) {
        return aim_words(aimed(-7.0, sighting), DisplayUnits::yards);
    };
    const std::string offset = "7 yd left of the centre line, ";
    CHECK(words(seen(Lie::bunker, Mark::left_edge, 252.0, 0.0)) ==
          offset + "at the left edge of the bunker 252 yd out");
    CHECK(words(seen(Lie::bunker, Mark::right_edge, 252.0, 4.0)) ==
          offset + "4 yd right of the right edge of the bunker 252 yd out");
    CHECK(words(seen(Lie::trees, Mark::left_edge, 180.0, -6.0)) ==
          offset + "6 yd left of the left edge of the trees 180 yd out");
    CHECK(words(seen(Lie::penalty_red, Mark::over, 150.0, 0.0)) ==
          offset + "over the penalty area 150 yd out");
    CHECK(words(seen(Lie::penalty_yellow, Mark::over, 150.0, 0.0)) ==
          offset + "over the penalty area 150 yd out");
    CHECK(words(seen(Lie::bunker, Mark::towards, 150.0, 0.0)) == offset + "towards the bunker 150 yd out");
    CHECK(words(seen(Lie::green, Mark::over, 160.0, 0.0)) == offset + "at the green 160 yd out");
    CHECK(words(seen(Lie::fairway, Mark::left_edge, 200.0, 3.0)) ==
          offset + "3 yd right of the left edge of the fairway 200 yd out");
}

TEST_CASE("a verdict says club, aim, what happens and what the next club costs", "[words]") {
    const fixture::PlanFixture made = fixture::two_holes();
    CHECK(verdict_words(made.view(), 0) ==
          "3-wood, 7 yd left of the centre line, at the left edge of the bunker 230 yd out: 58 % fairway, 5 "
          "% penalty "
          "area, 1 % out of bounds, 3 % trees, 4 % bunker; driver costs 0.08 more.");
    CHECK(holds(verdict_words(made.view(DisplayUnits::metres), 0), "6 m left of the centre line"));
}

TEST_CASE("a toss-up is called one", "[words]") {
    const fixture::PlanFixture made = fixture::two_holes();
    CHECK(verdict_words(made.view(), 1) ==
          "A toss-up between 7-iron and 6-iron, not known yet. 7-iron, on the centre line: 41 % green, 6 % "
          "penalty area, 6 % bunker; 6-iron costs 0.01 more.");
    CHECK(holds(certainty_words(made.plan.holes[1]), "A toss-up"));
    CHECK(holds(certainty_words(made.plan.holes[1]), "54 %"));
    CHECK(holds(certainty_words(made.plan.holes[1]), "not known yet"));
    fixture::PlanFixture alike = fixture::two_holes();
    alike.plan.holes[1].verdict.alike = true;
    CHECK(holds(verdict_words(alike.view(), 1), "7-iron and 6-iron, as good as each other."));
    CHECK(holds(certainty_words(alike.plan.holes[1]), "as good as each other"));
    CHECK_FALSE(holds(certainty_words(made.plan.holes[0]), "toss-up"));
    CHECK(holds(certainty_words(made.plan.holes[0]), "83 %"));
}

TEST_CASE("a verdict with a single club compares with none", "[words]") {
    fixture::PlanFixture made = fixture::two_holes();
    HolePlan& hole = made.plan.holes[1];
    hole.choices.resize(1);
    hole.verdict = {
        .best = 0, .margin = std::nullopt, .over = std::nullopt, .confidence = 1.0, .toss_up = false};
    CHECK(verdict_words(made.view(), 1) ==
          "7-iron, on the centre line: 41 % green, 6 % penalty area, 6 % bunker; no other club is worth "
          "computing "
          "here.");
    CHECK(certainty_words(hole).empty());
}

TEST_CASE("a verdict names rough only where there is nothing else to name", "[words]") {
    fixture::PlanFixture made = fixture::two_holes();
    TeeChoice& best = made.plan.holes[1].choices[0];
    best.lies = {};
    best.lies[index_of(Lie::rough)] = 1.0;
    CHECK(holds(verdict_words(made.view(), 1), "centre line: rough only;"));
}

TEST_CASE("the green is named before the fairway where more balls find it", "[words]") {
    fixture::PlanFixture made = fixture::two_holes();
    TeeChoice& best = made.plan.holes[1].choices[0];
    best.lies[index_of(Lie::fairway)] = 0.05;
    CHECK(holds(verdict_words(made.view(), 1), "centre line: 41 % green, 5 % fairway, 6 % penalty area"));
    best.lies[index_of(Lie::fairway)] = 0.50;
    CHECK(holds(verdict_words(made.view(), 1), "centre line: 50 % fairway, 41 % green, 6 % penalty area"));
}

TEST_CASE("a margin that rounds to nothing is not called nothing", "[words]") {
    fixture::PlanFixture made = fixture::two_holes();
    made.plan.holes[0].verdict.margin = 0.002;
    CHECK(holds(verdict_words(made.view(), 0), "driver costs less than 0.01 more"));
}

TEST_CASE("why not the driver: what it finds more of, the largest change first", "[words]") {
    fixture::PlanFixture made = fixture::two_holes();
    CHECK(why_not_driver_words(made.view(), 0) ==
          "Driver finds 44 % fairway instead of 58 %, 12 % penalty area instead of 5 %: it costs 0.08 more "
          "than 3-wood.");
    CHECK(why_not_driver_words(made.view(), 1).empty());  // no driver among the choices

    made.plan.holes[0].verdict.best = 1;  // the driver itself
    CHECK(why_not_driver_words(made.view(), 0).empty());
}

TEST_CASE("why not the driver, when it finds no more trouble", "[words]") {
    fixture::PlanFixture made = fixture::two_holes();
    made.plan.holes[0].choices[1].lies = made.plan.holes[0].choices[0].lies;
    CHECK(
        why_not_driver_words(made.view(), 0) ==
        "Driver finds no more trouble, but leaves 160 yd instead of 178 yd: it costs 0.08 more than 3-wood.");
}

TEST_CASE("trouble is sand, trees, penalty areas and out of bounds", "[words]") {
    TeeChoice choice = aimed(0.0);
    choice.lies = {0.01, 0.40, 0.20, 0.05, 0.06, 0.02, 0.07, 0.08, 0.11};
    CHECK_THAT(trouble_share(choice), Catch::Matchers::WithinAbs(0.37, 1e-12));
}

TEST_CASE("cautions name what lies inside the pattern", "[words]") {
    fixture::PlanFixture made = fixture::two_holes();
    made.plan.holes[0].choices[0].cautions = {{Surrounding::Kind::building, "Pump house", 0.03},
                                              {Surrounding::Kind::road, "", 0.001},
                                              {Surrounding::Kind::path, "", 0.02},
                                              {Surrounding::Kind::other_hole, "17", 0.02}};
    const auto words = caution_words(made.view(), 0);
    REQUIRE(words.size() == 4);
    CHECK(holds(words[0], "building (Pump house)"));
    CHECK(holds(words[0], "3 %"));
    CHECK(holds(words[1], "A road lies"));
    CHECK(holds(words[1], "<1 %"));
    CHECK(holds(words[3], "hole (17)"));
    CHECK(caution_words(made.view(), 1).empty());
}

TEST_CASE("every plan carries the standing cautions", "[words]") {
    std::string all;
    for (const std::string& words : standing_cautions())
        all += words;
    CHECK(holds(all, "within reach"));
    CHECK(holds(all, "thunderstorm"));
    CHECK(holds(all, "Local rules"));
    CHECK(holds(all, "no promise"));
}

TEST_CASE("names are shortened between characters", "[words]") {
    CHECK(name_text("") == "");
    CHECK(name_text("driver") == "driver");
    CHECK(name_text("abcdef", 4) == "abc…");
    CHECK(name_text("abcd", 4) == "abcd");
    CHECK(name_text("äöüß", 4) == "äöüß");
    CHECK(name_text("äöüßx", 4) == "äöü…");
    CHECK(name_text("\U0001F3CC\U0001F3CC\U0001F3CC", 2) == "\U0001F3CC…");
}

TEST_CASE("a name from right to left does not carry the next words along", "[words]") {
    CHECK(name_text("עץ") == "עץ\u200E");
    CHECK(name_text("نخل") == "نخل\u200E");
}
