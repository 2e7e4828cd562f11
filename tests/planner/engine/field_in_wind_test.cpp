// Costs of the field in wind and over slopes against balls flown by the flight itself (day_balls.hpp) and
// walked over the grid one by one.
#include <cmath>

#include "tests/catch.hpp"
#include "tests/planner/engine/ball_walk.hpp"
#include "tests/planner/engine/day_plan.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

constexpr int balls = 250'000;

void check(const SolvedHole& solved, Point place, Lie lie) {
    const int cell = solved.field.cell_of(place, lie);
    REQUIRE(solved.grid().lie(cell) == lie);
    REQUIRE(solved.is_open(cell));
    BallWalk walk(solved);
    CounterRandom random(static_cast<std::uint64_t>(cell));
    double played = 0.0;
    for (int ball = 0; ball < balls; ++ball) {
        const BallWalk::Next next = walk.play(cell, 0, random);
        played += (next.strokes + solved.strokes_at(next.cell)) / balls;
    }
    INFO(lie_name(lie) << " at " << to_yards(place.x) << ", " << to_yards(place.y));
    CHECK_THAT(solved.strokes_at(cell), WithinAbs(played, 0.02));
    WARN("difference " << solved.strokes_at(cell) - played);
}

void check_places(const SolvedHole& solved) {
    check(solved, yd(0, 230), Lie::fairway);
    check(solved, yd(60, 375), Lie::fairway);
    check(solved, yd(-20, 225), Lie::rough);
    check(solved, yd(22, 262), Lie::bunker);
}

}  // namespace

TEST_CASE("in a wind of 15 mph across and against a cell costs what its balls make of it", "[field]") {
    check_places(SolvedHole(eventful_par_5(), uneven_golfer(), AimFor::strokes, false,
                            default_assumptions().engine, windy(15.0, 320.0)));
}

TEST_CASE("over rising and leaning ground a cell costs what its balls make of it", "[field]") {
    HoleParts parts = eventful_par_5();
    parts.height_m = [](Point p) { return 0.03 * p.y - 0.04 * p.x + 3.0 * std::sin(p.y / 60.0); };
    check_places(SolvedHole(parts, uneven_golfer()));
}
