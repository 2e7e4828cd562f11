// The golfer's own field against what is published. Every figure here is also the calibration's residual: the
// presets' mishits and the effects of lies were set looking at these checks, the rest was not.
#include <cmath>
#include <numbers>

#include "golfer-profiles/presets.hpp"
#include "planner/engine/field/personal_field.hpp"
#include "planner/engine/round_plan.hpp"
#include "planner/engine/tour_table.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/invented_hole.hpp"
#include "tests/published/ordinary_course.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

RoundPlan planned(const Course& course, const Golfer& golfer) {
    return plan_round(course, golfer, PlanRequest{});
}

// Strokes a golfer takes more for a yard of length: the least-squares line over plain straight holes, 34 yd
// of fairway and rough, from 300 to 560 yd.
double yards_for_a_stroke(const char* preset) {
    const Golfer golfer = preset_golfer(preset);
    double n = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0;
    for (double length = 300.0; length <= 560.0; length += 20.0) {
        const Course course =
            fixture::course_of({fixture::invented_hole(fixture::straight_hole(length, 34.0))});
        const double strokes = planned(course, golfer).expected_strokes;
        n += 1.0;
        x += length;
        y += strokes;
        xx += length * length;
        xy += length * strokes;
    }
    return (n * xx - x * x) / (n * xy - x * y);
}

// The mean of the better half of a golfer's rounds, which is what a Course Rating stands for (USGA Course
// Rating System: the average of the better half of rounds, from memory); rounds taken as normal, holes as
// independent.
double better_half(const RoundPlan& plan) {
    const double mean_of_half_normal = std::sqrt(2.0 / std::numbers::pi);
    return plan.expected_strokes - mean_of_half_normal * std::sqrt(plan.score.variance());
}

}  // namespace

// Source: USGA Course Rating System, effect of length: scratch men 220 yd for a stroke, bogey men 160 (from
// memory), women 180 (a published yardage table: 440 yd are 2.4 strokes); bogey women 120 from memory.
TEST_CASE("length costs each standard golfer what the course rating says", "[published][field]") {
    CHECK_THAT(yards_for_a_stroke("scratch-man"), WithinRel(220.0, 0.1));
    CHECK_THAT(yards_for_a_stroke("bogey-man"), WithinRel(160.0, 0.1));
    CHECK_THAT(yards_for_a_stroke("scratch-woman"), WithinRel(180.0, 0.1));
    CHECK_THAT(yards_for_a_stroke("bogey-woman"), WithinRel(120.0, 0.1));
}

// Source: USGA Course Rating System, yardage ratings L/220 + 40.9 for scratch men and L/160 + 50.7 for bogey
// men (from memory), L/180 + 40.1 for scratch women and L/120 + 51.3 for bogey women (from memory). A man at
// scratch is asked for; the others are shown to be near.
TEST_CASE("a round on an ordinary course sits where the course rating puts it", "[published][field]") {
    const published::OrdinaryCourse men = published::ordinary_course(1.0);
    const published::OrdinaryCourse women = published::ordinary_course(0.84);
    CHECK_THAT(better_half(planned(men.course, preset_golfer("scratch-man"))),
               WithinAbs(men.length_yd / 220.0 + 40.9, 1.5));
    CHECK_THAT(better_half(planned(men.course, preset_golfer("bogey-man"))),
               WithinAbs(men.length_yd / 160.0 + 50.7, 3.0));
    CHECK_THAT(better_half(planned(women.course, preset_golfer("scratch-woman"))),
               WithinAbs(women.length_yd / 180.0 + 40.1, 3.0));
    CHECK_THAT(better_half(planned(women.course, preset_golfer("bogey-woman"))),
               WithinAbs(women.length_yd / 120.0 + 51.3, 3.0));
}

// Source: S. Ko, thesis, Columbia 2012; M. Broadie and S. Ko 2009: almost 3 strokes for a high handicap,
// slightly less than 1 for a tour player.
TEST_CASE("20 yd more off the tee", "[published][field]") {
    const auto gain = [](const Course& course, const Golfer& golfer) {
        return planned(course, golfer).expected_strokes -
               planned(course, published::with_longer_driver(golfer)).expected_strokes;
    };
    const Golfer high = typical_golfer({.name = "high handicap", .handicap_index = 36.0});
    const double high_gain = gain(published::ordinary_course(1.0).course, high);
    CHECK(high_gain > 2.0);
    CHECK(high_gain < 3.5);
    const double tour_gain = gain(published::ordinary_course(1.1).course, preset_golfer("tour"));
    CHECK(tour_gain > 0.6);
    CHECK(tour_gain < 1.2);
}

// Source: M. Broadie, Interfaces 42(2), 2012, table 9, within 0.15 but where said. The table is a mean over
// tour courses, where greens that are out of reach and greens that are only just in reach are guarded by more
// than two bunkers and rough: from there the preset takes less on this hole.
TEST_CASE("a tour preset takes the strokes of the published table", "[published][field]") {
    const Golfer tour = preset_golfer("tour");
    SECTION("off the tee") {
        for (double length = 100.0; length <= 500.0; length += 20.0) {
            const int par = length < 250.0 ? 3 : length < 470.0 ? 4 : 5;
            const Course course = fixture::course_of({published::ordinary_hole(length, par, 2)});
            const double less =
                tour_strokes(TourLie::tee, Yards{length}) - planned(course, tour).expected_strokes;
            INFO(length << " yd, less by " << less);
            const bool drivable = length >= 260.0 && length <= 360.0;
            const bool reached_in_two = length >= 480.0;
            // The table has more strokes from 120 yd than from 140 yd.
            const bool uneven = length == 120.0;
            if (drivable || reached_in_two || uneven)
                CHECK((less > -0.15 && less < 0.45));
            else
                CHECK_THAT(less, WithinAbs(0.0, 0.15));
        }
    }
    SECTION("from the fairway") {
        const EngineAssumptions assumptions = default_assumptions().engine;
        const GolferGame game(tour, std::make_shared<const BagFlights>(tour, Conditions{}, assumptions),
                              assumptions);
        const Hole hole = published::ordinary_hole(560.0, 5, 2);
        const LieRaster lies(hole.lies, assumptions.lie_cell_m);
        const PersonalField field(game, hole, lies, {1.14, 180.0, false}, GolferAim(AimFor::strokes, 5, 0));
        for (double left = 100.0; left <= 500.0; left += 20.0) {
            const double strokes = field.worth(fixture::yd(0.0, 560.0 - left), Lie::fairway, 0).cost;
            const double less = tour_strokes(TourLie::fairway, Yards{left}) - strokes;
            INFO(left << " yd, less by " << less);
            const bool just_in_reach = left >= 220.0 && left <= 320.0;
            const bool in_reach_of_two = left >= 420.0;
            if (just_in_reach || in_reach_of_two)
                CHECK((less > -0.15 && less < 0.45));
            else
                CHECK_THAT(less, WithinAbs(0.0, 0.15));
        }
    }
}
