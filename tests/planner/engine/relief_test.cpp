// Relief by rule number: Rules of Golf 2023, 17.1d, 18.2 and Model Local Rule E-5.
#include "planner/engine/relief.hpp"

#include <cmath>

#include "planner/engine/published_field.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/invented_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

// The fields and rasters of a hole, kept together so that ReliefGround may refer to them.
struct Ground {
    Hole hole;
    LieRaster raster;
    StrokesByDistance strokes;
    PublishedField field;

    explicit Ground(const HoleParts& parts)
        : hole(invented_hole(parts)),
          raster(hole.lies, yd(0.5, 0).x),
          strokes(club_golfer(), default_assumptions().engine),
          field(strokes, hole.line, hole.lies.extent()) {}
    ReliefGround relief() const {
        return {raster, field, hole.line.pin(), 45.0 * metres_per_inch, yd(200, 0).x};
    }
};

HoleParts lake_right() {
    HoleParts parts = straight_hole(400, 40);
    parts.layers.push_back({Lie::penalty_red, Region::box({yd(20, 150), yd(90, 300)})});
    return parts;
}

}  // namespace

TEST_CASE("17.1d(3): lateral relief within two club-lengths, not nearer the hole, out of the penalty area",
          "[relief]") {
    const Ground ground(lake_right());
    const Point crossing = yd(20, 250);
    const auto drop = lateral_relief(ground.relief(), crossing, 2);
    REQUIRE(drop);
    CHECK(distance(drop->place, crossing) <= 2.0 * 45.0 * metres_per_inch + 1e-9);
    CHECK(distance(drop->place, ground.hole.line.pin()) >= distance(crossing, ground.hole.line.pin()));
    CHECK(drop->lie == Lie::fairway);
    CHECK_THAT(drop->cost, WithinAbs(ground.field.cost(drop->place, Lie::fairway, 2), 1e-12));
}

TEST_CASE("17.1d(2): back on the line keeps the crossing point between the hole and the drop", "[relief]") {
    HoleParts parts = straight_hole(400, 40);
    parts.layers.push_back({Lie::penalty_yellow, band(200, 250)});
    const Ground ground(parts);
    const Point crossing = yd(5, 200);
    const auto drop = back_on_the_line(ground.relief(), crossing, 2);
    REQUIRE(drop);
    const Point to_hole = ground.hole.line.pin() - crossing;
    const Point back = drop->place - crossing;
    CHECK_THAT(cross(unit(to_hole), back), WithinAbs(0.0, 1e-6));
    CHECK(dot(to_hole, back) < 0.0);
    CHECK_FALSE(is_penalty_area(drop->lie));
}

TEST_CASE("a yellow penalty area has no lateral relief, a red one the better of the two", "[relief]") {
    const Ground ground(lake_right());
    const Point crossing = yd(20, 250);
    const auto yellow = penalty_area_relief(ground.relief(), Lie::penalty_yellow, crossing, 2);
    const auto red = penalty_area_relief(ground.relief(), Lie::penalty_red, crossing, 2);
    const auto lateral = lateral_relief(ground.relief(), crossing, 2);
    const auto back = back_on_the_line(ground.relief(), crossing, 2);
    REQUIRE(red);
    REQUIRE(lateral);
    CHECK(red->cost == std::min(lateral->cost, back ? back->cost : lateral->cost));
    if (yellow) {
        REQUIRE(back);
        CHECK(yellow->cost == back->cost);
    }
}

TEST_CASE("no drop where there is no ground in play: stroke and distance is all there is", "[relief]") {
    HoleParts parts = straight_hole(400, 40);
    parts.layers.erase(parts.layers.begin());  // a teeing area in the water would be dry ground
    parts.layers.push_back({Lie::penalty_yellow, Region::box({yd(-1000, -1000), yd(1000, 380)})});
    const Ground ground(parts);
    CHECK_FALSE(penalty_area_relief(ground.relief(), Lie::penalty_yellow, yd(0, 100), 2));
}

TEST_CASE("Model Local Rule E-5: the nearest fairway no nearer the hole", "[relief]") {
    const Ground ground(straight_hole(400, 40));
    const Point reference = yd(60, 250);
    const auto drop = local_rule_e5_drop(ground.relief(), reference, 3);
    REQUIRE(drop);
    CHECK(drop->lie == Lie::fairway);
    CHECK_THAT(distance(drop->place, ground.hole.line.pin()),
               WithinAbs(distance(reference, ground.hole.line.pin()), 1e-6));
    CHECK_THAT(to_yards(drop->place.x), WithinAbs(20.0, 1.5));
}

TEST_CASE("18.2: out of bounds is solved as stroke and distance, exactly", "[relief]") {
    // Every ball lands on the line x = 0 in the mean; a share out of bounds known in closed form.
    Golfer golfer = club_golfer();
    golfer.clubs = {club("driver", ClubKind::driver, pattern(230, 5, 20, 0))};
    HoleParts parts = straight_hole(400, 400);
    parts.layers.push_back({Lie::out_of_bounds, beyond(25)});
    const PlanRequest request{.field = FieldKind::published};
    const Course course = course_of({invented_hole(parts)});
    const HolePlan plan = plan_round(course, golfer, request).holes.front();
    const TeeChoice& choice = plan.choices.front();
    const double out = choice.lies[index_of(Lie::out_of_bounds)];
    CHECK(out > 0.0);
    // v = 1 + ordinary + out (1 + v) must hold for the value found: put it back in.
    const double ordinary = choice.expected_strokes * (1.0 - out) - 1.0 - out;
    CHECK(ordinary / (1.0 - out) > 2.5);
    CHECK_THAT(1.0 + ordinary + out * (1.0 + choice.expected_strokes),
               WithinAbs(choice.expected_strokes, 1e-9));
    // And the share is the normal's half-plane share at the aim found (run 0, straight flight).
    const double edge = yd(25, 0).x / std::cos(choice.aim) - length(choice.aim_point) * std::tan(choice.aim);
    const double share = 0.5 * std::erfc(edge * std::cos(choice.aim) / yd(20, 0).x / std::sqrt(2.0));
    CHECK_THAT(out, WithinAbs(share, 0.003));
}

TEST_CASE("a penalty area that is worse than the tee is replayed like out of bounds", "[relief]") {
    // Water from before the tee on, with a drop only far behind it: replaying costs less.
    Golfer golfer = club_golfer();
    golfer.clubs = {club("driver", ClubKind::driver, pattern(230, 20, 20, 0))};
    const auto planned_with = [&](Lie lie) {
        HoleParts parts = straight_hole(400, 400);
        parts.layers.erase(parts.layers.begin());
        parts.layers.push_back({lie, Region::box({yd(-1000, -60), yd(1000, 215)})});
        const PlanRequest request{.field = FieldKind::published};
        return plan_round(course_of({invented_hole(parts)}), golfer, request).holes.front().choices.front();
    };
    const TeeChoice wet = planned_with(Lie::penalty_yellow);
    const TeeChoice out = planned_with(Lie::out_of_bounds);
    CHECK(wet.lies[index_of(Lie::penalty_yellow)] > 0.15);
    CHECK_THAT(wet.expected_strokes, WithinAbs(out.expected_strokes, 1e-9));
}
