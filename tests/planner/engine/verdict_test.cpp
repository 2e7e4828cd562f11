// What a golfer would insist on, on holes plain enough to know the answer.
#include <numbers>

#include "tests/catch.hpp"
#include "tests/planner/engine/invented_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

HolePlan planned(const HoleParts& parts, const Golfer& golfer) {
    return plan_round(course_of({invented_hole(parts)}), golfer, {}).holes.front();
}

std::string best_club(const HolePlan& plan, const Golfer& golfer) {
    return golfer.clubs[plan.choices[plan.verdict.best].club].name;
}

double best_strokes(const HolePlan& plan) {
    return plan.choices[plan.verdict.best].expected_strokes;
}

double side_yd(const TeeChoice& choice) {
    return to_yards(choice.description.offset_m);
}

}  // namespace

TEST_CASE("no trouble and plenty of room: driver, down the middle", "[verdict]") {
    const Golfer golfer = club_golfer();
    const HolePlan plan = planned(straight_hole(400, 120), golfer);
    CHECK(best_club(plan, golfer) == "driver");
    CHECK_THAT(side_yd(plan.choices.front()), WithinAbs(0.0, 2.0));
    CHECK(*plan.verdict.margin > 0.05);
    CHECK_FALSE(plan.verdict.toss_up);
}

TEST_CASE("water across the landing area of the driver alone: less club", "[verdict]") {
    const Golfer golfer = club_golfer();
    HoleParts parts = straight_hole(420, 50);
    parts.layers.push_back({Lie::penalty_red, band(228, 262)});
    const HolePlan plan = planned(parts, golfer);
    CHECK(best_club(plan, golfer) != "driver");
    CHECK(choice_of(plan, golfer, "driver")->lies[index_of(Lie::penalty_red)] > 0.4);
}

TEST_CASE("out of bounds to the right moves the aim left, further the nearer it is", "[verdict]") {
    const Golfer golfer = club_golfer();
    double last = 0.5;
    for (const double offset : {60.0, 45.0, 30.0}) {
        HoleParts parts = straight_hole(400, 40);
        parts.layers.push_back({Lie::out_of_bounds, beyond(offset)});
        const HolePlan plan = planned(parts, golfer);
        const double aim = side_yd(*choice_of(plan, golfer, "driver"));
        CHECK(aim < last);
        last = aim;
    }
    CHECK(last < -8.0);
}

TEST_CASE("a wider pattern never lowers expected strokes", "[verdict]") {
    for (const bool trouble : {false, true}) {
        HoleParts parts = straight_hole(400, 34);
        if (trouble) {
            parts.layers.push_back({Lie::out_of_bounds, beyond(40)});
            parts.layers.push_back({Lie::penalty_red, beyond(-45)});
        }
        double last = 0.0;
        for (const double widening : {0.5, 1.0, 1.5, 2.0, 3.0}) {
            Golfer golfer = club_golfer();
            for (Club& club : golfer.clubs)
                club.pattern->usual.side_sd_m *= widening;
            const double strokes = best_strokes(planned(parts, golfer));
            CHECK(strokes > last);
            last = strokes;
        }
    }
}

TEST_CASE("a par 3 is aimed at the green with the club that reaches it", "[verdict]") {
    const Golfer golfer = club_golfer();
    HoleParts parts = straight_hole(155, 20);
    parts.par = 3;
    const HolePlan plan = planned(parts, golfer);
    CHECK(best_club(plan, golfer) == "7-iron");
    CHECK(plan.choices.front().lies[index_of(Lie::green)] > 0.35);
}

TEST_CASE("shares add to one, choices are sorted, the margin is the gap to the next club", "[verdict]") {
    const Golfer golfer = club_golfer();
    HoleParts parts = straight_hole(380, 30);
    parts.layers.push_back({Lie::trees, beyond(35)});
    parts.layers.push_back({Lie::penalty_yellow, band(240, 255)});
    const HolePlan plan = planned(parts, golfer);
    double last = 0.0;
    for (const TeeChoice& choice : plan.choices) {
        double sum = 0.0;
        for (const double share : choice.lies)
            sum += share;
        CHECK_THAT(sum, WithinAbs(1.0, 1e-9));
        CHECK(choice.expected_strokes >= last);
        CHECK(choice.standard_error < 0.002);
        last = choice.expected_strokes;
    }
    CHECK_THAT(*plan.verdict.margin,
               WithinAbs(plan.choices[1].expected_strokes - plan.choices[0].expected_strokes, 1e-12));
}

TEST_CASE("never driver and always driver enclose the plan from above", "[verdict]") {
    const Golfer golfer = club_golfer();
    HoleParts tight = straight_hole(420, 50);
    tight.layers.push_back({Lie::penalty_red, band(228, 262)});
    const RoundPlan round =
        plan_round(course_of({invented_hole(straight_hole(400, 120)), invented_hole(tight)}), golfer, {});
    CHECK(*round.always_driver > round.expected_strokes + 0.1);
    CHECK(*round.never_driver > round.expected_strokes + 0.05);
    CHECK_THAT(round.holes[0].always_driver, WithinAbs(best_strokes(round.holes[0]), 1e-12));
    CHECK_THAT(round.holes[1].never_driver, WithinAbs(best_strokes(round.holes[1]), 1e-12));
}

TEST_CASE("a ball that runs into a bunker stays there", "[verdict]") {
    Golfer golfer = club_golfer();
    golfer.clubs = {club("driver", ClubKind::driver, pattern(230, 0.5, 0.5, 30))};
    HoleParts parts = straight_hole(400, 60);
    parts.layers.push_back({Lie::bunker, band(240, 250)});
    // With the golfer's own field the aim would go round the sand.
    const PlanRequest request{.field = FieldKind::published};
    const HolePlan plan = plan_round(course_of({invented_hole(parts)}), golfer, request).holes.front();
    // Every ball lands at 230, short of the sand, and would run through it to 260.
    CHECK_THAT(plan.choices.front().lies[index_of(Lie::bunker)], WithinAbs(1.0, 1e-6));
    CHECK_THAT(to_yards(plan.choices.front().leave_mean_m), WithinAbs(160.0, 1.0));
}

TEST_CASE("a single club is a plan without a margin", "[verdict]") {
    Golfer golfer = club_golfer();
    golfer.clubs = {golfer.clubs[1]};
    const HolePlan plan = planned(straight_hole(400, 40), golfer);
    CHECK(plan.choices.size() == 1);
    CHECK_FALSE(plan.verdict.margin.has_value());
    CHECK_FALSE(plan.verdict.over.has_value());
    CHECK(plan.verdict.confidence == 1.0);
}
