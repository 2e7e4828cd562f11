// What a wind does to a plan on a straight, open hole.
#include <cmath>

#include "tests/catch.hpp"
#include "tests/planner/engine/day_plan.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

// The driver's best aim on a hole that runs north.
struct Drive {
    double strokes, plays_as_yd, carry_yd, drift_yd, run_yd, aim_deg, fairway;
};
Drive drive(const Conditions& day) {
    const Golfer golfer = club_golfer();
    const HolePlan plan = planned(straight_hole(400, 40), golfer, day);
    const TeeChoice* driver = choice_of(plan, golfer, "driver");
    REQUIRE(driver != nullptr);
    return {driver->expected_strokes,
            to_yards(plan.plays_as_m),
            to_yards(driver->day.carry_m),
            to_yards(driver->day.drift_m),
            to_yards(driver->day.run_m),
            std::remainder(driver->aim / radians_per_degree, 360.0),
            driver->lies[index_of(Lie::fairway)]};
}

}  // namespace

TEST_CASE("a head wind takes more than a tail wind gives", "[day]") {
    const Drive calm = drive({});
    const Drive head = drive(windy(15.0, 0.0));
    const Drive tail = drive(windy(15.0, 180.0));
    const Drive strong = drive(windy(25.0, 0.0));
    CHECK(calm.carry_yd - head.carry_yd > tail.carry_yd - calm.carry_yd);
    CHECK(tail.carry_yd > calm.carry_yd + 5.0);
    CHECK(head.strokes - calm.strokes > calm.strokes - tail.strokes);
    CHECK(tail.strokes < calm.strokes - 0.05);
    CHECK(head.plays_as_yd > 415.0);
    CHECK(tail.plays_as_yd < 390.0);
    CHECK(strong.carry_yd < head.carry_yd - 5.0);
    CHECK(strong.strokes > head.strokes + 0.05);
    // Steeper down against the wind, flatter with it.
    CHECK(head.run_yd < calm.run_yd);
    CHECK(tail.run_yd > calm.run_yd);
}

TEST_CASE("a wind from the left drifts balls to the right, and the aim moves left", "[day]") {
    const Drive calm = drive({});
    const Drive left = drive(windy(15.0, 270.0));
    const Drive right = drive(windy(15.0, 90.0));
    const Drive light = drive(windy(7.5, 270.0));
    CHECK(left.drift_yd > 10.0);
    CHECK(right.drift_yd < -10.0);
    CHECK(left.aim_deg < calm.aim_deg - 2.0);
    CHECK(right.aim_deg > calm.aim_deg + 2.0);
    CHECK(light.drift_yd > 0.4 * left.drift_yd);
    CHECK(light.drift_yd < 0.6 * left.drift_yd);
    CHECK(light.aim_deg > left.aim_deg);
}

TEST_CASE("gusts spread the balls", "[day]") {
    Conditions gusty = windy(15.0, 270.0);
    gusty.wind->gusts_mps = 2.0 * gusty.wind->speed_mps;
    const Drive steady = drive(windy(15.0, 270.0));
    const Drive wide = drive(gusty);
    CHECK(wide.fairway < steady.fairway - 0.005);
    CHECK(wide.strokes > steady.strokes);
}

TEST_CASE("firm fairways shorten a hole and soft ones lengthen it; rough apart", "[day]") {
    Conditions firm, soft, soft_rough;
    firm.fairway = Firmness::firm;
    soft.fairway = Firmness::soft;
    soft_rough.rough = Firmness::soft;
    const Drive calm = drive({});
    CHECK(drive(firm).run_yd > calm.run_yd + 4.0);
    CHECK(drive(soft).run_yd < calm.run_yd - 4.0);
    CHECK(drive(firm).strokes < calm.strokes);
    CHECK(drive(soft).strokes > calm.strokes);
    CHECK(drive(soft_rough).run_yd == calm.run_yd);
    CHECK(drive(soft_rough).strokes > calm.strokes);
}
