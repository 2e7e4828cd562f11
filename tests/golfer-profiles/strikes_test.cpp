// Where on the face, and what it did.
#include "golfer-profiles/strikes.hpp"

#include <cmath>

#include "tests/catch.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

std::vector<StrikeEffect> effects_of(const std::string& text) {
    const std::vector<NamedLog> logs{{"a.csv", log_of(text)}};
    return strike_effects(logs, logged_clubs(logs, {}));
}

}  // namespace

TEST_CASE("slopes through exact lines are exact", "[log]") {
    // 2 % of the median ball speed (100 at 1 cm) a centimetre; 5 m to the left a centimetre towards the toe.
    const auto effects = effects_of(
        "club,carry_m,side_m,ball_speed_mps,strike_toe_mm\n"
        "driver,200,0,51,0\ndriver,201,-5,50,10\ndriver,202,5,50,-10\ndriver,203,-10,49,20\n7i,140,0,,\n");
    REQUIRE(effects.size() == 1);
    REQUIRE(effects[0].club == "driver");
    REQUIRE(effects[0].shots == 4);
    REQUIRE_THAT(effects[0].mean_toe_m, WithinAbs(0.005, 1e-12));
    REQUIRE_THAT(effects[0].off_centre_m, WithinAbs(0.01 * std::sqrt(6.0 / 4.0), 1e-12));
    REQUIRE(effects[0].ball_speed_share->shots == 4);
    REQUIRE_THAT(effects[0].ball_speed_share->per_cm, WithinAbs(-0.02, 1e-12));
    REQUIRE_THAT(effects[0].ball_speed_share->standard_error, WithinAbs(0.0, 1e-12));
    REQUIRE_THAT(effects[0].side_m->per_cm, WithinAbs(-5.0, 1e-12));
}

TEST_CASE("the standard error by hand", "[log]") {
    // x 0, 1, 2, 3 cm, y 0, 1, 1, 2 m: slope 3/5, squared rest 1/5, error sqrt(1/5 / 2 / 5).
    const auto effects = effects_of(
        "club,carry_m,side_m,strike_toe_cm\ndriver,200,0,0\ndriver,201,1,1\ndriver,202,1,2\ndriver,203,2,"
        "3\n");
    REQUIRE(!effects[0].ball_speed_share);
    REQUIRE_THAT(effects[0].side_m->per_cm, WithinAbs(0.6, 1e-12));
    REQUIRE_THAT(effects[0].side_m->standard_error, WithinAbs(std::sqrt(0.02), 1e-12));
}

TEST_CASE("too little for a slope", "[log]") {
    const auto two = effects_of("club,carry_m,side_m,strike_toe_mm\ndriver,200,0,0\ndriver,201,1,1\n");
    REQUIRE(two.at(0).shots == 2);
    REQUIRE(!two.at(0).side_m);
    const auto one_place =
        effects_of("club,carry_m,side_m,strike_toe_mm\ndriver,200,0,5\ndriver,201,1,5\ndriver,202,1,5\n");
    REQUIRE(!one_place.at(0).side_m);
    REQUIRE(effects_of("club,carry_m,side_m\ndriver,200,0\n").empty());
}
