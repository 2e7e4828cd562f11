// Break-evens of a verdict, against fresh plans of the hole, the golfer or the fairway as they would have to
// be.
#include <algorithm>

#include "planner/engine/hole_plan.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/invented_hole.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

PlanRequest request_of(FieldKind field, double close_margin) {
    PlanRequest request;
    request.field = field;
    request.assumptions.engine.close_margin = close_margin;
    // Confidence is not looked at.
    request.assumptions.engine.confidence_draws = 0.0;
    return request;
}

// The shots after the tee shot stay those of `today`, whatever `golfer` can do from the tee.
HolePlan planned(const HoleParts& parts, const Golfer& golfer, const Golfer& today,
                 const PlanRequest& request) {
    const EngineAssumptions& assumptions = request.assumptions.engine;
    const GolferGame game(today, std::make_shared<const BagFlights>(today, Conditions{}, assumptions),
                          assumptions);
    const BagShots bag = bag_shots(golfer, BagFlights(golfer, {}, assumptions), assumptions, {});
    return plan_hole(invented_hole(parts), golfer, game, bag, request, 0);
}

// Where tee shots come down alone, so that the ground around the green stays.
HoleParts with_edges_moved(HoleParts parts, double move_m) {
    for (LieLayer& layer : parts.layers) {
        if (layer.lie != Lie::fairway) continue;
        const Region ahead = layer.region.common_with(band(300, 1000));
        layer.region = layer.region.grown(move_m).common_with(band(-100, 300)).joined_with(ahead);
    }
    return parts;
}

Golfer with_side_sd(Golfer golfer, std::size_t club, double side_sd_m) {
    ShotPattern& pattern = *golfer.clubs[club].pattern;
    if (pattern.mishit) pattern.mishit->spread.side_sd_m *= side_sd_m / pattern.usual.side_sd_m;
    pattern.usual.side_sd_m = side_sd_m;
    return golfer;
}

Golfer with_carry(Golfer golfer, std::size_t club, double carry_m) {
    ShotPattern& pattern = *golfer.clubs[club].pattern;
    if (pattern.mishit) pattern.mishit->spread.centre.carry_m *= carry_m / pattern.usual.centre.carry_m;
    pattern.usual.centre.carry_m = carry_m;
    return golfer;
}

// What club `next` costs more than club `best`, in a plan made anew.
double margin_of(const HolePlan& plan, std::size_t best, std::size_t next) {
    const auto strokes = [&](std::size_t club) {
        return std::ranges::find(plan.choices, club, &TeeChoice::club)->expected_strokes;
    };
    return strokes(next) - strokes(best);
}

// The margins of fresh plans at the values where the verdict should flip are nothing, to a tolerance.
void check_fresh_plans(const HoleParts& parts, const Golfer& golfer, FieldKind field) {
    // Measured on 24 pairs of hole and golfer: at most 0.006 for side spread and carry; for the landing width
    // at most 0.007, and 0.009 once, where the fairway is gone but for 10 yd and shots that follow land on
    // it.
    constexpr double tolerance = 0.006;
    const HolePlan plan = planned(parts, golfer, golfer, request_of(field, 10.0));
    REQUIRE(plan.break_evens.has_value());
    const BreakEvens& found = *plan.break_evens;
    REQUIRE(found.landing_width.has_value());
    REQUIRE(found.landing_width->flips_at_m.has_value());
    REQUIRE(found.side_sd.flips_at_m.has_value());
    REQUIRE(found.carry.flips_at_m.has_value());
    const std::size_t best = plan.choices[0].club;
    const std::size_t next = plan.choices[*plan.verdict.over].club;
    CHECK(found.side_sd.today_m == golfer.clubs[best].pattern->usual.side_sd_m);
    CHECK(found.carry.today_m == golfer.clubs[best].pattern->usual.centre.carry_m);
    CHECK(found.landing_width->today_m == plan.choices[0].landing->width_m());
    const double move_m = 0.5 * (*found.landing_width->flips_at_m - found.landing_width->today_m);
    const auto margin = [&](const HoleParts& hole, const Golfer& who) {
        return margin_of(planned(hole, who, golfer, request_of(field, 0.0)), best, next);
    };
    CHECK_THAT(margin(with_edges_moved(parts, move_m), golfer), WithinAbs(0.0, tolerance));
    CHECK_THAT(margin(parts, with_side_sd(golfer, best, *found.side_sd.flips_at_m)),
               WithinAbs(0.0, tolerance));
    CHECK_THAT(margin(parts, with_carry(golfer, best, *found.carry.flips_at_m)), WithinAbs(0.0, tolerance));
}

}  // namespace

TEST_CASE("where the verdict flips, a fresh plan has the two clubs level", "[break_evens]") {
    SECTION("by the published table, water across the driver's landing") {
        HoleParts parts = straight_hole(400, 40);
        parts.layers.push_back({Lie::penalty_red, band(262, 290)});
        check_fresh_plans(parts, uneven_golfer(), FieldKind::published);
    }
    SECTION("by the golfer's own field, water on both sides") {
        HoleParts parts = straight_hole(400, 30);
        for (const double side : {-54.0, 54.0})
            parts.layers.push_back({Lie::penalty_red, Region::box({yd(side - 30, 215), yd(side + 30, 300)})});
        check_fresh_plans(parts, club_golfer(), FieldKind::personal);
    }
}

TEST_CASE("only a close verdict has break-evens", "[break_evens]") {
    const Golfer golfer = club_golfer();
    const HoleParts parts = straight_hole(400, 120);
    const HolePlan plan = planned(parts, golfer, golfer, request_of(FieldKind::published, 0.0));
    CHECK_FALSE(plan.verdict.toss_up);
    CHECK_FALSE(plan.break_evens.has_value());
    const double margin = *plan.verdict.margin;
    CHECK_FALSE(planned(parts, golfer, golfer, request_of(FieldKind::published, margin - 1e-6))
                    .break_evens.has_value());
    CHECK(planned(parts, golfer, golfer, request_of(FieldKind::published, margin + 1e-6))
              .break_evens.has_value());
    // A toss-up has them whatever the margin; every confidence is below 1.1.
    PlanRequest toss_ups = request_of(FieldKind::published, 0.0);
    toss_ups.assumptions.engine.toss_up_below = 1.1;
    CHECK(planned(parts, golfer, golfer, toss_ups).break_evens.has_value());
    Golfer single = golfer;
    single.clubs = {golfer.clubs[0]};
    CHECK_FALSE(planned(parts, single, single, request_of(FieldKind::published, 10.0)).break_evens);
}

TEST_CASE("a verdict that no fairway can turn is given no landing width", "[break_evens]") {
    // 60 yd to each side hold nearly every ball, and with 15 yd less still most.
    const Golfer golfer = club_golfer();
    const HolePlan plan =
        planned(straight_hole(400, 120), golfer, golfer, request_of(FieldKind::published, 10.0));
    REQUIRE(plan.break_evens.has_value());
    REQUIRE(plan.break_evens->landing_width.has_value());
    CHECK_THAT(to_yards(plan.break_evens->landing_width->today_m), WithinAbs(120.0, 0.5));
    CHECK_FALSE(plan.break_evens->landing_width->flips_at_m.has_value());
    // 20 yd of carry are the driver's whole advantage over the 3-wood, and its wider spread counts little.
    REQUIRE(plan.break_evens->carry.flips_at_m.has_value());
    CHECK_THAT(to_yards(*plan.break_evens->carry.flips_at_m), WithinAbs(206.0, 5.0));
}

TEST_CASE("two clubs of one pattern are level where they are", "[break_evens]") {
    Golfer golfer = club_golfer();
    golfer.clubs[1].pattern = golfer.clubs[0].pattern;
    const HolePlan plan =
        planned(straight_hole(400, 34), golfer, golfer, request_of(FieldKind::published, 0.1));
    CHECK(*plan.verdict.margin == 0.0);
    REQUIRE(plan.break_evens.has_value());
    CHECK(plan.break_evens->side_sd.flips_at_m == plan.break_evens->side_sd.today_m);
    CHECK(plan.break_evens->carry.flips_at_m == plan.break_evens->carry.today_m);
    REQUIRE(plan.break_evens->landing_width.has_value());
    CHECK(plan.break_evens->landing_width->flips_at_m == plan.break_evens->landing_width->today_m);
}

TEST_CASE("other aims are tried likewise, but for the landing width", "[break_evens]") {
    PlanRequest request = request_of(FieldKind::personal, 10.0);
    request.aim_for = AimFor::par_or_better;
    const Golfer golfer = club_golfer();
    HoleParts parts = straight_hole(400, 34);
    parts.layers.push_back({Lie::out_of_bounds, beyond(34)});
    const HolePlan plan = planned(parts, golfer, golfer, request);
    REQUIRE(plan.break_evens.has_value());
    CHECK_FALSE(plan.break_evens->landing_width.has_value());
    REQUIRE(plan.break_evens->side_sd.flips_at_m.has_value());
    const std::size_t best = plan.choices[0].club;
    const std::size_t next = plan.choices[*plan.verdict.over].club;
    const HolePlan there =
        planned(parts, with_side_sd(golfer, best, *plan.break_evens->side_sd.flips_at_m), golfer, request);
    const auto chance = [&](std::size_t club) {
        return std::ranges::find(there.choices, club, &TeeChoice::club)->aim_value;
    };
    CHECK_THAT(chance(best) - chance(next), WithinAbs(0.0, 0.003));
}
