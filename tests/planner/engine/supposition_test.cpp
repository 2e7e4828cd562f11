// A supposed club is its club with the change and nothing else; what is open about it is the same.
#include "planner/engine/bags/supposition.hpp"

#include <cmath>

#include "geometry/units.hpp"
#include "golfer-profiles/club_flight.hpp"
#include "planner/engine/assumptions.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

ShotPattern driver_pattern() {
    return {.usual = {{200.0, 3.0}, 12.0, 18.0, -0.2},
            .tail_dof = 8.0,
            .run_m = 16.0,
            .mishit = Mishit{0.08, {{150.0, 6.0}, 20.0, 25.0, 0.1}},
            .shots = 24};
}

Club driver() {
    return {.name = "driver", .kind = ClubKind::driver, .pattern = driver_pattern()};
}

}  // namespace

TEST_CASE("nothing supposed changes nothing", "[supposition]") {
    CHECK(supposed_pattern(driver_pattern(), {}) == driver_pattern());
    const Club same = supposed_club(driver(), {}, "driver (supposed)");
    CHECK(same.pattern == driver().pattern);
    CHECK_FALSE(same.in_bag);
    CHECK_FALSE(same.learnt_from);
}

TEST_CASE("every quantity changes what it says", "[supposition]") {
    const ShotPattern own = driver_pattern();
    const ShotPattern then = supposed_pattern(own, {.carry_spread = 0.9,
                                                    .side_spread = 1.2,
                                                    .carry_factor = 1.05,
                                                    .carry_m = -4.0,
                                                    .side_m = -2.0,
                                                    .mishit_factor = 0.5,
                                                    .mishit_share = 0.01,
                                                    .speed_carry_m = 3.0});
    CHECK_THAT(then.usual.centre.carry_m, WithinAbs(200.0 * 1.05 - 4.0 + 3.0, 1e-12));
    CHECK_THAT(then.usual.centre.side_m, WithinAbs(1.0, 1e-12));
    CHECK_THAT(then.usual.carry_sd_m, WithinAbs(10.8, 1e-12));
    CHECK_THAT(then.usual.side_sd_m, WithinAbs(21.6, 1e-12));
    CHECK(then.usual.correlation == own.usual.correlation);
    // Mishits go further by the same share.
    CHECK_THAT(then.mishit->spread.centre.carry_m, WithinAbs(150.0 * 209.0 / 200.0, 1e-9));
    CHECK_THAT(then.mishit->spread.centre.side_m, WithinAbs(4.0, 1e-12));
    CHECK_THAT(then.mishit->spread.side_sd_m, WithinAbs(30.0, 1e-12));
    CHECK_THAT(then.mishit->share, WithinAbs(0.05, 1e-12));
    CHECK(then.run_m == own.run_m);
    CHECK(then.tail_dof == own.tail_dof);
}

TEST_CASE("mishits stay a share, and none are made of nothing", "[supposition]") {
    ShotPattern pattern = driver_pattern();
    CHECK(supposed_pattern(pattern, {.mishit_share = -0.5}).mishit->share == 0.0);
    CHECK(supposed_pattern(pattern, {.mishit_share = 2.0}).mishit->share == 0.95);
    pattern.mishit.reset();
    CHECK_FALSE(supposed_pattern(pattern, {.mishit_share = 0.1}).mishit);
}

TEST_CASE("a mile an hour of ball speed is two to three yards of carry", "[supposition]") {
    // Common practice, no source.
    Club club = driver();
    club.launch = Launch{64.0, 0.22, 280.0};
    for (const double mph : {-5.0, 1.0, 3.0, 8.0}) {
        const Supposition faster = with_flight({.ball_speed_mps = mph * metres_per_second_per_mph}, club);
        const double yards_per_mph = to_yards(faster.speed_carry_m) / mph;
        CAPTURE(mph, yards_per_mph);
        CHECK(yards_per_mph > 1.5);
        CHECK(yards_per_mph < 3.0);
        const Club then = supposed_club(club, faster, "faster");
        CHECK_THAT(then.launch->ball_speed_mps, WithinAbs(64.0 + mph * metres_per_second_per_mph, 1e-12));
        // The ball of the supposed club meets the drag of the club it is made of.
        CHECK_THAT(ClubFlight(then).aerodynamics().drag,
                   WithinRel(ClubFlight(club).aerodynamics().drag, 1e-4));
    }
    CHECK(with_flight({.speed_carry_m = 9.0}, club).speed_carry_m == 0.0);
}

TEST_CASE("a supposed carry is hit with the speed that gives it", "[supposition]") {
    Club club = driver();
    club.launch = Launch{64.0, 0.22, 280.0};
    const Club longer = supposed_club(club, {.carry_m = 6.0}, "longer");
    CHECK(longer.launch->ball_speed_mps > club.launch->ball_speed_mps);
    CHECK(supposed_club(club, {.side_spread = 0.9}, "narrower").launch == club.launch);
}

TEST_CASE("draws of a supposed club are those of its club with the change, and no evidence",
          "[supposition]") {
    Golfer golfer = fixture::uneven_golfer();
    const GolferPrior prior = default_assumptions().engine.prior;
    const BagDraws alone = drawn_bags(golfer, prior, 20);
    const Supposition narrow{.side_spread = 0.8, .carry_m = 3.0};
    golfer.clubs.push_back(supposed_club(golfer.clubs[0], narrow, "driver (supposed)"));
    const std::size_t number = golfer.clubs.size() - 1;
    const std::vector<SupposedClub> supposed{{number, 0, narrow, ""}};
    const BagDraws draws = drawn_with_suppositions(golfer, supposed, prior, 20);
    REQUIRE(draws.size() == golfer.clubs.size());
    for (std::size_t club = 0; club < alone.size(); ++club)
        CHECK(draws[club] == alone[club]);
    REQUIRE(draws[number].size() == 20);
    for (std::size_t draw = 0; draw < 20; ++draw)
        CHECK(draws[number][draw] == supposed_pattern(draws[0][draw], narrow));
}
