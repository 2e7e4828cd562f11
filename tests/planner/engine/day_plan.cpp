#include "tests/planner/engine/day_plan.hpp"

namespace landwidth::fixture {

Conditions windy(double mph, double from_degrees) {
    Conditions day;
    day.wind = Wind{mph * metres_per_second_per_mph, Bearing::from_degrees(from_degrees)};
    return day;
}

HolePlan planned(const HoleParts& parts, const Golfer& golfer, const Conditions& day, FieldKind field) {
    PlanRequest request;
    request.field = field;
    request.conditions = day;
    return plan_round(course_of({invented_hole(parts)}), golfer, request).holes.front();
}

HoleParts eventful_hole() {
    HoleParts parts = straight_hole(410, 36);
    parts.line = {yd(0, 0), yd(0, 240), yd(60, 400)};
    parts.layers[2].region = Region::disc(yd(60, 400), yd(12, 0).x);
    parts.layers.push_back({Lie::fairway, Region::around({yd(0, 235), yd(55, 385)}, yd(18, 0).x)});
    parts.layers.push_back({Lie::bunker, Region::disc(yd(24, 235), yd(9, 0).x)});
    parts.layers.push_back({Lie::penalty_red, Region::box({yd(-80, 180), yd(-30, 300)})});
    parts.layers.push_back({Lie::trees, Region::box({yd(30, 100), yd(120, 220)})});
    parts.layers.push_back({Lie::out_of_bounds, beyond(130)});
    return parts;
}

Golfer slicer() {
    Golfer golfer = club_golfer();
    for (Club& club : golfer.clubs) {
        club.pattern->usual.correlation = -0.3;
        club.pattern->usual.centre.side_m = yd(4, 0).x;
        club.pattern->tail_dof = 6.0;
        club.pattern->mishit = Mishit{0.06, {{yd(150, 0).x, yd(10, 0).x}, 20.0, 25.0, 0.2}};
    }
    return golfer;
}

}  // namespace landwidth::fixture
