// A profile from logs: the priors, the bag, what few and many shots do.
#include "golfer-profiles/learnt_golfer.hpp"

#include <algorithm>
#include <string>

#include "geometry/units.hpp"
#include "golfer-profiles/evidence/bag_draws.hpp"
#include "golfer-profiles/evidence/mishit_chance.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "golfer-profiles/typical_club.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

GolferRequest level() {
    return {.name = "A. Golfer",
            .handicap_index = 11,
            .drive_total_yd = {},
            .reference = Reference::men,
            .hand = Hand::right};
}

LearnRequest request() {
    return {.typical = level(), .onto = {}, .kinds = {}, .weight = {}};
}

LearntGolfer learnt_from_text(std::string_view text, const LearnRequest& asked = request()) {
    return learnt_golfer({{"a.csv", log_of(text)}}, asked);
}

// `shots` shots about a carry, 10 yd either way, 20 yd to either side.
std::string shots_about(const std::string& club, int carry_yd, int shots) {
    std::string rows;
    for (int i = 0; i < shots; ++i)
        rows += club + "," + std::to_string(carry_yd + (i * 7) % 21 - 10) + "," +
                std::to_string((i * 11) % 41 - 20) + "\n";
    return rows;
}

const std::string header = "club,carry_yd,side_yd\n";

}  // namespace

TEST_CASE("a learnt club replaces its namesake and lengthens the rest of the bag", "[learn]") {
    const LearntGolfer learnt = learnt_from_text(header + shots_about("driver", 250, 21));
    const Golfer typical = typical_golfer(level());
    REQUIRE(learnt.golfer.clubs.size() == typical.clubs.size());
    const Club& driver = *learnt.golfer.club("driver");
    REQUIRE(driver.pattern->shots == 21);
    REQUIRE(driver.learnt_from->shots.size() == 21);
    // The 21 shots carry 247 yd on average.
    REQUIRE_THAT(to_yards(driver.pattern->usual.centre.carry_m), WithinAbs(247, 1.5));
    const Club& wood = *learnt.golfer.club("3-wood");
    REQUIRE(wood.pattern->shots == 0);
    REQUIRE(wood.pattern->usual.centre.carry_m > typical.club("3-wood")->pattern->usual.centre.carry_m);
}

TEST_CASE("one shot moves the typical club a little; fifteen overrule the level", "[learn]") {
    const double typical = typical_club(level(), ClubKind::driver, "driver").pattern->usual.centre.carry_m;
    const LearntGolfer one = learnt_from_text(header + "driver,100,0\n");
    REQUIRE(one.golfer.club("driver")->pattern->usual.centre.carry_m > 0.85 * typical);
    const LearntGolfer many = learnt_from_text(header + shots_about("driver", 300, 15));
    REQUIRE_THAT(to_yards(many.golfer.club("driver")->pattern->usual.centre.carry_m), WithinAbs(300, 6));
}

TEST_CASE("what the shots say by themselves stands beside what is made of them", "[learn]") {
    const LearntGolfer learnt = learnt_from_text(header + shots_about("driver", 250, 21));
    const LearntClub& driver = learnt.clubs.front();
    REQUIRE(driver.evidence.raw.shots == 21);
    REQUIRE_THAT(to_yards(driver.evidence.raw.carry.mean), WithinAbs(247, 1e-9));
    REQUIRE_THAT(to_yards(driver.evidence.raw.carry.median), WithinAbs(247, 1e-9));
    REQUIRE(driver.evidence.open.carry.low < driver.club.pattern->usual.centre.carry_m);
    REQUIRE(driver.evidence.open.carry.high > driver.club.pattern->usual.centre.carry_m);
    REQUIRE(driver.evidence.open.carry.middle == driver.club.pattern->usual.centre.carry_m);
}

TEST_CASE("whoever decides by the profile takes the same shots for mishits as learning did", "[learn]") {
    const LearntGolfer learnt =
        learnt_from_text(header + shots_about("driver", 250, 12) + "driver,171,60\ndriver,203,-41\n");
    const Golfer read = parse_profile(profile_text(learnt.golfer), "a.json").golfer;
    const auto number = static_cast<std::size_t>(read.club("driver") - read.clubs.data());
    const Club& driver = read.clubs[number];
    const std::vector<double> then = mishit_chances(
        drawn_bags(read, request().weight, draws_of_middle)[number], driver.learnt_from->shots);
    const std::vector<double>& told = learnt.clubs.front().evidence.mishit_chance;
    REQUIRE(told.size() == then.size());
    for (std::size_t i = 0; i < told.size(); ++i)
        REQUIRE_THAT(then[i], WithinAbs(told[i], 1e-4));
    REQUIRE(told[12] > taken_for_mishit);
}

TEST_CASE("without a handicap the length tells the level, and the golfer is known for less", "[learn]") {
    LearnRequest asked = request();
    asked.handicap_known = false;
    const LearntGolfer learnt = learnt_from_text(header + shots_about("7-iron", 150, 9), asked);
    REQUIRE(!learnt.golfer.handicap_known);
    REQUIRE(std::any_of(learnt.warnings.begin(), learnt.warnings.end(),
                        [](const std::string& w) { return contains(w, "no handicap is known"); }));
    // Where shots are few, what was known before them is seen.
    const std::string few = header + shots_about("7-iron", 150, 1);
    const LearntGolfer unknown = learnt_from_text(few, asked);
    const LearntGolfer known = learnt_from_text(few);
    const auto width = [](const LearntGolfer& l) {
        return l.clubs.front().evidence.open.side_sd.high / l.clubs.front().evidence.open.side_sd.low;
    };
    REQUIRE(width(unknown) > width(known));
}

TEST_CASE("when every shot is of a build, one build is the club in the bag and none is invented", "[learn]") {
    const LearntGolfer learnt = learnt_from_text(
        "club,build,carry_yd,side_yd\ndriver,45.5 in,230,1\ndriver,44 in,226,2\ndriver,45.5 in,235,-8\n");
    REQUIRE(learnt.golfer.club("driver") == nullptr);
    REQUIRE(learnt.golfer.club("driver, 45.5 in")->in_bag);
    REQUIRE(!learnt.golfer.club("driver, 44 in")->in_bag);
    REQUIRE(learnt.golfer.club("driver, 44 in")->build_of == "driver");
}

TEST_CASE("a club whose only shots were lost is learnt all the same", "[learn]") {
    const LearntGolfer learnt =
        learnt_from_text("club,carry_yd,side_yd,note\ndriver,,,lost\n7i,150,2,\n7i,148,0,\n");
    REQUIRE(learnt.golfer.club("driver")->learnt_from->lost == 1);
    REQUIRE(learnt.clubs.front().evidence.raw.shots == 0);
}

TEST_CASE("builds and clubs beyond 14 are on trial", "[learn]") {
    const LearntGolfer learnt = learnt_from_text(
        "club,build,carry_yd,side_yd\ndriver,,230,1\ndriver,44 in,226,2\ndriving iron,,200,0\n7i,,150,0\n");
    const Golfer& golfer = learnt.golfer;
    REQUIRE(golfer.clubs.size() == 16);
    REQUIRE(std::count_if(golfer.clubs.begin(), golfer.clubs.end(), [](const Club& c) { return c.in_bag; }) ==
            14);
    REQUIRE(golfer.club("driver")->in_bag);
    REQUIRE(!golfer.club("driver, 44 in")->in_bag);
    REQUIRE(!golfer.club("driving iron")->in_bag);
    REQUIRE(golfer.club("7-iron")->pattern->shots == 1);
    REQUIRE(golfer.club("7i") == nullptr);
    const auto said = [&](const std::string& part) {
        return std::any_of(learnt.warnings.begin(), learnt.warnings.end(),
                           [&](const std::string& w) { return contains(w, part); });
    };
    REQUIRE(said("\"driver, 44 in\" is on trial"));
    REQUIRE(said("\"driving iron\" is on trial"));
    REQUIRE(said("the shots of \"7i\" are taken for \"7-iron\""));
}

TEST_CASE("shots added to a profile in two goes give what they give in one", "[learn]") {
    const std::string first = shots_about("driver", 240, 9);
    const std::string second = shots_about("driver", 247, 8);
    const LearntGolfer once = learnt_from_text(header + first);
    LearnRequest again = request();
    again.onto = once.golfer;
    const LearntGolfer twice = learnt_from_text(header + second, again);
    const Club& club = *twice.golfer.club("driver");
    REQUIRE(club.pattern->shots == 17);
    REQUIRE(club.learnt_from->prior == once.golfer.club("driver")->learnt_from->prior);
    REQUIRE(club.learnt_from->shots.size() == 17);
    REQUIRE(twice.clubs.front().source == PriorSource::own);
    REQUIRE(twice.clubs.front().earlier_shots == 9);
    REQUIRE(logged_mishit_chance(twice.clubs.front()).size() == 8);
    const LearntGolfer in_one = learnt_from_text(header + first + second);
    REQUIRE(club.pattern->usual == in_one.golfer.club("driver")->pattern->usual);
    REQUIRE(club.pattern->mishit == in_one.golfer.club("driver")->pattern->mishit);
    REQUIRE(twice.golfer.club("7-iron")->pattern->usual == in_one.golfer.club("7-iron")->pattern->usual);
    // The same log a second time would count double.
    REQUIRE_THROWS_WITH(learnt_from_text(header + first, again),
                        Catch::Matchers::Contains("has learnt from these shots"));
}

TEST_CASE("a grown export learnt onto the profile of the shorter one counts its first shots once",
          "[learn]") {
    const std::string first = shots_about("driver", 240, 9) + shots_about("7i", 150, 9);
    const LearntGolfer once = learnt_from_text(header + first);
    LearnRequest again = request();
    again.onto = once.golfer;
    const auto said = [](const LearntGolfer& learnt, std::string_view part) {
        return std::ranges::any_of(learnt.warnings, [&](const auto& w) { return contains(w, part); });
    };
    const LearntGolfer grown = learnt_from_text(header + first + "driver,255,31\ndriver,228,-27\n", again);
    REQUIRE(said(grown, "18 of 20 shots left out, rows 2 to 19: the profile has learnt from them already"));
    REQUIRE(grown.clubs.size() == 1);
    REQUIRE(grown.golfer.club("driver")->pattern->shots == 11);
    REQUIRE(grown.golfer.club("driver")->learnt_from->shots.size() == 11);
    REQUIRE(grown.golfer.club("7-iron")->pattern->shots == 9);
    REQUIRE(logged_mishit_chance(grown.clubs.front()).size() == 2);
    // One alike by chance is another shot.
    const LearntGolfer chance = learnt_from_text(header + "driver,230,-20\ndriver,251,17\n", again);
    REQUIRE(!said(chance, "left out"));
    REQUIRE(chance.golfer.club("driver")->pattern->shots == 11);
}

TEST_CASE("shots brought to the reference day are known again where both were", "[learn]") {
    const auto log = [](int shots, const std::string& head_end, const std::string& row_end) {
        std::string rows = "date,club,carry_yd,side_yd" + head_end + "\n";
        for (int i = 0; i < shots; ++i)
            rows += "2026-05-01,driver," + std::to_string(230 + (i * 7) % 21) + "," +
                    std::to_string((i * 11) % 41 - 20) + row_end + "\n";
        return rows;
    };
    LearnRequest again = request();
    again.onto = learnt_from_text(log(12, ",temperature_c", ",5")).golfer;
    const LearntGolfer grown = learnt_from_text(log(14, ",temperature_c", ",5"), again);
    REQUIRE(grown.golfer.club("driver")->pattern->shots == 14);
    // In one of the two only: nothing can be compared, and that is said.
    const LearntGolfer blind = learnt_from_text(log(14, "", ""), again);
    REQUIRE(blind.golfer.club("driver")->pattern->shots == 26);
    REQUIRE(std::ranges::any_of(blind.warnings, [](const auto& w) {
        return contains(w, "\"driver\": the profile has shots of the same session");
    }));
}

TEST_CASE("a profile holds what was learnt", "[learn]") {
    const LearntGolfer learnt =
        learnt_from_text(header + shots_about("driver", 240, 12) + shots_about("driving iron", 205, 1001));
    const Golfer read = parse_profile(profile_text(learnt.golfer), "me.json").golfer;
    REQUIRE(read.clubs.size() == learnt.golfer.clubs.size());
    REQUIRE(read.club("driver")->learnt_from->shots.size() == 12);
    REQUIRE(read.club("driving iron")->learnt_from->shots.empty());
    REQUIRE(read.club("driving iron")->learnt_from->prior.shots == 1001);
    REQUIRE(read.club("driving iron")->pattern->shots == 1001);
    REQUIRE(!read.club("driving iron")->in_bag);
}

TEST_CASE("the run is learnt where total and carry are recorded", "[learn]") {
    const LearntGolfer learnt = learnt_from_text(
        "club,carry_yd,total_yd,side_yd\ndriver,240,270,0\ndriver,244,270,3\ndriver,238,270,-4\n");
    REQUIRE_THAT(to_yards(learnt.golfer.club("driver")->pattern->run_m), WithinAbs(30, 1e-9));
    // Later shots without a total leave it as it is.
    LearnRequest again = request();
    again.onto = learnt.golfer;
    const LearntGolfer later = learnt_from_text(header + "driver,236,4\n", again);
    REQUIRE_THAT(to_yards(later.golfer.club("driver")->pattern->run_m), WithinAbs(30, 1e-9));
}

TEST_CASE("a left-hander's typical club is the mirror image", "[learn]") {
    GolferRequest left = level();
    left.hand = Hand::left;
    const ShotPattern mirrored = *typical_club(left, ClubKind::mini_driver, "mini").pattern;
    const ShotPattern plain = *typical_club(level(), ClubKind::mini_driver, "mini").pattern;
    REQUIRE(mirrored.usual.correlation == -plain.usual.correlation);
    REQUIRE(mirrored.usual.side_sd_m == plain.usual.side_sd_m);
}

TEST_CASE("clubs no preset bag has stand between those it has", "[learn]") {
    const auto carry = [](ClubKind kind, std::string_view name) {
        return typical_club(level(), kind, name).pattern->usual.centre.carry_m;
    };
    const double driver = carry(ClubKind::driver, "driver");
    const double mini = carry(ClubKind::mini_driver, "mini-driver");
    const double wood = carry(ClubKind::fairway_wood, "3w");
    REQUIRE(driver > mini);
    REQUIRE(mini > wood);
    REQUIRE(wood > carry(ClubKind::driving_iron, "driving iron"));
    REQUIRE(carry(ClubKind::fairway_wood, "7w") < carry(ClubKind::fairway_wood, "5w"));
    REQUIRE(carry(ClubKind::iron, "3i") > carry(ClubKind::iron, "4i"));
    // As in the bag where the bag has it.
    REQUIRE(typical_club(level(), ClubKind::iron, "7i").pattern ==
            typical_golfer(level()).club("7-iron")->pattern);
    REQUIRE(contains(typical_club(level(), ClubKind::hybrid, "rough club").note, "taken for a 4-hybrid"));
}
