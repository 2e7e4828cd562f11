// Other aims than the fewest strokes, and what the plan expects after the tee shot.
#include <algorithm>
#include <cmath>

#include "geometry/error.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

HolePlan planned(const HoleParts& parts, AimFor aim_for) {
    PlanRequest request;
    request.aim_for = aim_for;
    return plan_round(course_of({invented_hole(parts)}), uneven_golfer(), request).holes.front();
}

const TeeChoice& best(const HolePlan& plan) {
    return plan.choices[plan.verdict.best];
}

double points(const ScoreDistribution& score, int par) {
    double sum = 0.0;
    for (int strokes = 1; strokes < static_cast<int>(score.shares.size()); ++strokes)
        sum += score.shares[static_cast<std::size_t>(strokes)] * std::max(0, 2 + par - strokes);
    return sum;
}

HoleParts long_par_5() {
    HoleParts parts = straight_hole(590, 45);
    parts.par = 5;
    return parts;
}

// A pond before the green that a second shot may try to carry.
HoleParts reachable_par_5() {
    HoleParts parts = straight_hole(465, 45);
    parts.par = 5;
    parts.layers.push_back({Lie::penalty_red, Region::box({yd(-60, 405), yd(60, 440)})});
    return parts;
}

bool is_close(const PlannedShot& last, const HoleParts& parts) {
    return last.leave_lie == Lie::green || distance(last.leave, parts.line.back()) <= yd(30, 0).x;
}

void check_chain(const std::vector<PlannedShot>& next) {
    for (std::size_t i = 0; i < next.size(); ++i) {
        CHECK(next[i].leave_m < next[i].to_hole_m);
        CHECK(next[i].swing > 0.0);
        CHECK(next[i].swing <= 1.0);
        if (next[i].alternative) CHECK(next[i].alternative->margin >= 0.0);
        if (next[i].alternative) CHECK(next[i].alternative->purpose != next[i].purpose);
        if (i == 0) continue;
        CHECK(next[i].from == next[i - 1].leave);
        CHECK(next[i].lie == next[i - 1].leave_lie);
        CHECK_THAT(next[i].to_hole_m, WithinAbs(next[i - 1].leave_m, 1e-9));
    }
}

}  // namespace

TEST_CASE("the distribution's mean is about the expected strokes", "[aims]") {
    for (const HoleParts& parts : {eventful_par_5(), narrow_par_4()}) {
        const TeeChoice choice = best(planned(parts, AimFor::strokes));
        double sum = 0.0;
        for (const double share : choice.score.shares)
            sum += share;
        CHECK_THAT(sum, WithinAbs(1.0, 1e-9));
        CHECK_THAT(choice.score.mean(), WithinAbs(choice.expected_strokes, 0.02));
    }
}

TEST_CASE("playing for points makes at least the points of playing for strokes", "[aims]") {
    for (const HoleParts& parts : {eventful_par_5(), narrow_par_4(), reachable_par_5()}) {
        const TeeChoice for_strokes = best(planned(parts, AimFor::strokes));
        const TeeChoice for_points = best(planned(parts, AimFor::stableford));
        CHECK(for_points.aim_value >= points(for_strokes.score, parts.par));
        // The search finds the best shots of a layer to within a little: measured 0.0007 short on one of the
        // three holes, above on the others.
        CHECK(points(for_points.score, parts.par) >= points(for_strokes.score, parts.par) - 0.001);
        CHECK_THAT(for_points.aim_value, WithinAbs(points(for_points.score, parts.par), 0.02));
        CHECK(for_points.expected_strokes >= for_strokes.expected_strokes - 0.01);
    }
}

TEST_CASE("playing for par makes par at least as often as playing for strokes", "[aims]") {
    for (const HoleParts& parts : {eventful_par_5(), narrow_par_4(), reachable_par_5()}) {
        const TeeChoice for_strokes = best(planned(parts, AimFor::strokes));
        const TeeChoice for_par = best(planned(parts, AimFor::par_or_better));
        CHECK(for_par.aim_value >= for_strokes.score.between(0, parts.par));
        CHECK(for_par.score.between(0, parts.par) >= for_strokes.score.between(0, parts.par));
        CHECK_THAT(for_par.aim_value, WithinAbs(for_par.score.between(0, parts.par), 0.02));
    }
}

TEST_CASE("the published table knows the mean alone", "[aims]") {
    PlanRequest request{.field = FieldKind::published};
    for (const AimFor aim_for : {AimFor::stableford, AimFor::par_or_better}) {
        request.aim_for = aim_for;
        CHECK_THROWS_AS(plan_round(course_of({invented_hole(narrow_par_4())}), uneven_golfer(), request),
                        UsageError);
    }
    request.aim_for = AimFor::strokes;
    const HolePlan plan =
        plan_round(course_of({invented_hole(narrow_par_4())}), uneven_golfer(), request).holes.front();
    CHECK(best(plan).score.empty());
    CHECK(plan.next.empty());
}

TEST_CASE("a par 5 out of reach: on the way, then to the green", "[next]") {
    const HoleParts parts = long_par_5();
    const HolePlan plan = planned(parts, AimFor::strokes);
    REQUIRE(plan.next.size() >= 2);
    check_chain(plan.next);
    CHECK((plan.next.front().purpose == ShotPurpose::advance ||
           plan.next.front().purpose == ShotPurpose::lay_up));
    CHECK(plan.next.back().purpose == ShotPurpose::to_the_green);
    CHECK(is_close(plan.next.back(), parts));
    // The usual tee shot is what the first of them is played from.
    CHECK_THAT(plan.next.front().to_hole_m, WithinAbs(best(plan).leave_mean_m, yd(20, 0).x));
    CHECK(plan.next.front().lie == Lie::fairway);
}

TEST_CASE("a par 5 within reach over water: going for it is weighed against laying up", "[next]") {
    const HoleParts parts = reachable_par_5();
    const HolePlan plan = planned(parts, AimFor::strokes);
    REQUIRE_FALSE(plan.next.empty());
    check_chain(plan.next);
    const PlannedShot& second = plan.next.front();
    CHECK((second.purpose == ShotPurpose::lay_up || second.purpose == ShotPurpose::to_the_green));
    REQUIRE(second.alternative.has_value());
    CHECK((second.alternative->purpose == ShotPurpose::lay_up ||
           second.alternative->purpose == ShotPurpose::to_the_green));
    CHECK(plan.next.back().purpose == ShotPurpose::to_the_green);
    if (second.purpose == ShotPurpose::lay_up) CHECK(second.leave_m > yd(60, 0).x);  // short of the water
}

TEST_CASE("a par 3 has no next shots", "[next]") {
    HoleParts parts = straight_hole(160, 25);
    parts.par = 3;
    CHECK(planned(parts, AimFor::strokes).next.empty());
}
