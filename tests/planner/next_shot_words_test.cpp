// The shots after the tee shot, in words.
#include "planner/reports/next_shot_words.hpp"

#include "geometry/units.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

using namespace landwidth;

namespace {

constexpr std::size_t three_wood = 1;
constexpr std::size_t five_iron = 2;
constexpr std::size_t seven_iron = 4;

PlannedShot shot(std::size_t club, ShotPurpose purpose, Lie lie, double to_hole_yd, double leave_yd) {
    return {.club = club,
            .swing = 1.0,
            .purpose = purpose,
            .from = {0.0, 0.0},
            .lie = lie,
            .to_hole_m = Yards{to_hole_yd}.metres(),
            .aim_point = {0.0, Yards{170.0}.metres()},
            .leave = {0.0, Yards{172.0}.metres()},
            .leave_lie = Lie::fairway,
            .leave_m = Yards{leave_yd}.metres(),
            .aim_value = 4.0,
            .alternative = std::nullopt};
}

std::string words_of(const PlannedShot& shot, AimFor aim = AimFor::strokes) {
    fixture::PlanFixture made = fixture::own_field();
    made.plan.aim_for = aim;
    made.plan.holes[0].next = {shot};
    const auto sentences = next_shot_words(made.view(), 0);
    REQUIRE(sentences.size() == 1);
    return sentences[0];
}

}  // namespace

TEST_CASE("no shots, no words", "[next]") {
    CHECK(next_shot_words(fixture::two_holes().view(), 0).empty());
    CHECK(next_shot_words(fixture::own_field().view(), 1).empty());
}

TEST_CASE("a part swing is said, a full one is not", "[next]") {
    const fixture::PlanFixture made = fixture::own_field();
    CHECK(swing_words(made.view(), 6, 1.0) == "sand wedge");
    CHECK(swing_words(made.view(), 6, 0.6) == "sand wedge, 60 % swing");
    CHECK(swing_words(made.view(), 6, 0.997) == "sand wedge");
}

TEST_CASE("each purpose has its own words", "[next]") {
    CHECK(words_of(shot(five_iron, ShotPurpose::lay_up, Lie::fairway, 267.0, 95.0)) ==
          "5-iron 172 yd, laying up to 95 yd");
    CHECK(words_of(shot(five_iron, ShotPurpose::lay_up, Lie::rough, 267.0, 95.0)) ==
          "5-iron 172 yd from the rough, laying up to 95 yd");
    CHECK(words_of(shot(three_wood, ShotPurpose::advance, Lie::fairway, 340.0, 168.0)) ==
          "3-wood 172 yd, leaving 168 yd");
    CHECK(words_of(shot(seven_iron, ShotPurpose::recovery, Lie::trees, 200.0, 120.0)) ==
          "7-iron out of the trees to 120 yd");
    PlannedShot green = shot(five_iron, ShotPurpose::to_the_green, Lie::fairway, 172.0, 9.0);
    CHECK(words_of(green) == "5-iron from 172 yd at the green, leaving 9 yd");
    green.leave_lie = Lie::green;
    CHECK(words_of(green) == "5-iron from 172 yd to the green");
    green.lie = Lie::bunker;
    green.swing = 0.5;
    CHECK(words_of(green) == "5-iron, 50 % swing, from 172 yd in the bunker to the green");
}

TEST_CASE("what the other way would cost follows in brackets", "[next]") {
    PlannedShot shot_for_green = shot(three_wood, ShotPurpose::to_the_green, Lie::fairway, 210.0, 4.0);
    shot_for_green.leave_lie = Lie::green;
    shot_for_green.alternative = PlannedShot::Alternative{.club = seven_iron,
                                                          .swing = 0.8,
                                                          .purpose = ShotPurpose::lay_up,
                                                          .leave_m = Yards{90.0}.metres(),
                                                          .margin = 0.12};
    CHECK(words_of(shot_for_green) ==
          "3-wood from 210 yd to the green (laying up with the 7-iron, 80 % swing, to 90 yd "
          "costs 0.12 more)");
    CHECK(words_of(shot_for_green, AimFor::stableford).ends_with("to 90 yd costs 0.12 points)"));
    CHECK(words_of(shot_for_green, AimFor::par_or_better)
              .ends_with("costs par or better on 12.0 % of the holes)"));
    shot_for_green.alternative->purpose = ShotPurpose::advance;
    CHECK(words_of(shot_for_green).find("playing on with the 7-iron") != std::string::npos);
    shot_for_green.alternative->purpose = ShotPurpose::recovery;
    CHECK(words_of(shot_for_green).find("playing out with the 7-iron") != std::string::npos);
}

TEST_CASE("the fixture's hole is played to its end", "[next]") {
    const fixture::PlanFixture made = fixture::own_field();
    CHECK(next_shot_words(made.view(), 0) ==
          std::vector<std::string>{
              "7-iron 132 yd, laying up to 52 yd (going for it with the 3-wood costs 0.12 more)",
              "sand wedge, 60 % swing, from 52 yd to the green"});
    CHECK(next_shot_words(made.view(DisplayUnits::metres), 0)[1] ==
          "sand wedge, 60 % swing, from 48 m to the green");
}
