// What stands on a hole and how its ground lies.
#include <cmath>

#include "planner/engine/day/bag_flights.hpp"
#include "planner/engine/day/usual_ball.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/day_plan.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

Golfer long_hitter() {
    Golfer golfer = club_golfer();
    golfer.clubs.front() = club("driver", ClubKind::driver, pattern(285, 12, 14, 20));
    return golfer;
}

// 90 degrees to the right round a corner of trees, 225 yd up and 240 yd across.
HoleParts corner_of_trees(double trees_m) {
    HoleParts parts;
    parts.line = {yd(0, 0), yd(0, 240), yd(230, 240)};
    parts.layers = {{Lie::teeing_area, Region::disc(yd(0, 0), yd(6, 0).x)},
                    {Lie::fairway, Region::around({yd(0, 120), yd(0, 240), yd(215, 240)}, yd(22, 0).x)},
                    {Lie::green, Region::disc(yd(230, 240), yd(13, 0).x)},
                    {Lie::trees, Region::box({yd(24, 120), yd(190, 215)})}};
    parts.trees_m = trees_m;
    return parts;
}

// A barn or a wood across the line, 40 to 60 yd short of where a driver lands.
HoleParts barrier(Lie lie, double height_m, bool is_building) {
    HoleParts parts = straight_hole(400, 40);
    // The fairway begins beyond.
    parts.layers[1].region = Region::box({yd(-20, 195), yd(20, 385)});
    const Region across = Region::box({yd(-240, 170), yd(240, 190)});
    if (lie == Lie::trees) parts.layers.push_back({lie, across});
    if (is_building) parts.tall.push_back({across, height_m, false});
    parts.trees_m = height_m;
    return parts;
}

double stopped(const HoleParts& parts, const char* name = "driver") {
    const Golfer golfer = club_golfer();
    const HolePlan plan = planned(parts, golfer);
    const TeeChoice* choice = choice_of(plan, golfer, name);
    REQUIRE(choice != nullptr);
    return choice->day.stopped_share;
}

UsualBall driven(const std::function<double(Point)>& height_m) {
    HoleParts parts = straight_hole(400, 40);
    parts.height_m = height_m;
    const Hole hole = invented_hole(parts);
    const Golfer golfer = club_golfer();
    const BagFlights flights(golfer, {}, default_assumptions().engine);
    return usual_ball(hole.line.tee(), 0.0, *golfer.clubs.front().pattern, *flights.full(0),
                      day_over(hole, {}));
}

}  // namespace

TEST_CASE("a corner with low trees is cut, one with tall trees is not", "[day]") {
    const Golfer golfer = long_hitter();
    const HolePlan low = planned(corner_of_trees(5.0), golfer);
    const HolePlan tall = planned(corner_of_trees(30.0), golfer);
    const auto driver = [&](const HolePlan& plan) -> const TeeChoice& {
        const TeeChoice* choice = choice_of(plan, golfer, "driver");
        REQUIRE(choice != nullptr);
        return *choice;
    };
    CHECK(driver(low).aim > driver(tall).aim + 5.0 * radians_per_degree);
    CHECK(low.choices.front().expected_strokes < tall.choices.front().expected_strokes - 0.1);
    CHECK(golfer.clubs[low.choices.front().club].name == "driver");
}

TEST_CASE("the higher a barrier the more balls it stops, building or wood", "[day]") {
    double before = -1.0;
    for (const double height_m : {6.0, 14.0, 22.0, 35.0}) {
        const double share = stopped(barrier(Lie::trees, height_m, false));
        INFO(height_m << " m: " << share);
        CHECK(share > before);
        before = share;
    }
    CHECK(before > 0.9);
    CHECK(stopped(barrier(Lie::rough, 30.0, true)) > 0.8);
    CHECK(stopped(barrier(Lie::rough, 30.0, false)) == 0.0);
}

TEST_CASE("from a high tee balls clear trees that they do not clear from a level one", "[day]") {
    HoleParts parts = barrier(Lie::trees, 26.0, false);
    const double level = stopped(parts);
    parts.height_m = [](Point p) { return p.y < yd(0, 30).y ? 15.0 : 0.0; };
    CHECK(stopped(parts) < 0.5 * level);
}

TEST_CASE("uphill plays longer and downhill shorter", "[day]") {
    const auto plays_as = [](double rise) {
        HoleParts parts = straight_hole(400, 40);
        parts.height_m = [=](Point p) { return rise * p.y; };
        const HolePlan plan = planned(parts, club_golfer());
        CHECK_THAT(plan.rise_m, Catch::Matchers::WithinAbs(rise * yd(0, 400).y, 0.1));
        return to_yards(plan.plays_as_m);
    };
    // A foot of rise is about a foot of length (common practice, no source), and the ball runs less.
    CHECK(plays_as(0.03) > 406.0);
    CHECK(plays_as(-0.03) < 394.0);
    CHECK(std::abs(plays_as(0.0) - 400.0) < 0.01);
}

TEST_CASE("balls run further downhill and drift to the low side", "[day]") {
    const UsualBall level = driven([](Point) { return 10.0; });
    const UsualBall down = driven([](Point p) { return -0.05 * std::max(0.0, p.y - 150.0); });
    const UsualBall up = driven([](Point p) { return 0.05 * std::max(0.0, p.y - 150.0); });
    const UsualBall falls_right = driven([](Point p) { return -0.05 * p.x; });
    const UsualBall falls_left = driven([](Point p) { return 0.05 * p.x; });
    CHECK(down.run_m > level.run_m + 2.0);
    CHECK(up.run_m < level.run_m - 2.0);
    CHECK(level.aside_m == 0.0);
    CHECK(falls_right.aside_m > 1.0);
    CHECK_THAT(falls_left.aside_m, Catch::Matchers::WithinAbs(-falls_right.aside_m, 0.01));
}
