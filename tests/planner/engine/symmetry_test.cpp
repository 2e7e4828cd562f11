// A plan does not depend on where the hole lies, which way it points, or on which side of the mirror.
#include <tbb/global_control.h>

#include <cstring>

#include "tests/catch.hpp"
#include "tests/planner/engine/invented_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

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

HolePlan planned(const HoleParts& parts, const Golfer& golfer) {
    return plan_round(course_of({invented_hole(parts)}), golfer, {}).holes.front();
}

// Same clubs in the same order, aims turned by `turn` and mirrored by `sign`, costs alike. Rasters are laid
// anew, so equal to their error, not to the digit; aims are compared by what they cost, within the finest
// steps where the optimum is flat. `strokes`: how far costs may be apart.
void check_alike(const HolePlan& a, const HolePlan& b, double sign, double turn, double strokes) {
    REQUIRE(a.choices.size() == b.choices.size());
    for (std::size_t i = 0; i < a.choices.size(); ++i) {
        CHECK(a.choices[i].club == b.choices[i].club);
        CHECK_THAT(b.choices[i].expected_strokes, WithinAbs(a.choices[i].expected_strokes, strokes));
        CHECK_THAT(std::remainder(b.choices[i].aim - (sign * a.choices[i].aim + turn), 6.283185307179586),
                   WithinAbs(0.0, 1.0 * radians_per_degree));
        for (std::size_t lie = 0; lie < lie_count; ++lie)
            CHECK_THAT(b.choices[i].lies[lie], WithinAbs(a.choices[i].lies[lie], 0.02));
    }
}

}  // namespace

TEST_CASE("mirror a hole and the golfer: the plan mirrors", "[symmetry]") {
    const HoleParts parts = eventful_hole();
    // Cells of the grid lie the same in the mirror, the blocks in which they are solved do not: measured up
    // to 0.0050.
    check_alike(planned(parts, slicer()), planned(mirrored(parts), mirrored(slicer())), -1.0, 0.0, 0.008);
}

TEST_CASE("turn or move a hole: the same plan, turned", "[symmetry]") {
    const HoleParts parts = eventful_hole();
    const HolePlan plan = planned(parts, slicer());
    for (const double degrees : {37.0, 90.0, 180.0, 291.5}) {
        const double turn = degrees * radians_per_degree;
        check_alike(plan, planned(turned(parts, turn), slicer()), 1.0, turn, 0.005);
    }
    // The last digits of moved coordinates may tip a choice between near equals.
    check_alike(plan, planned(moved(parts, {123.4, -56.7}), slicer()), 1.0, 0.0, 0.001);
}

TEST_CASE("one thread or many: the same digits", "[symmetry]") {
    std::vector<Hole> holes;
    for (int i = 0; i < 6; ++i)
        holes.push_back(invented_hole(turned(eventful_hole(), 0.3 * i)));
    const Course course = course_of(holes);
    const auto strokes = [&](std::size_t threads) {
        const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
        std::vector<double> all;
        for (const HolePlan& hole : plan_round(course, slicer(), {}).holes)
            for (const TeeChoice& choice : hole.choices) {
                all.push_back(choice.expected_strokes);
                all.push_back(choice.aim);
                all.push_back(hole.verdict.confidence);
                all.insert(all.end(), choice.score.shares.begin(), choice.score.shares.end());
            }
        return all;
    };
    const std::vector<double> one = strokes(1);
    const std::vector<double> many = strokes(4);
    REQUIRE(one.size() == many.size());
    CHECK(std::memcmp(one.data(), many.data(), one.size() * sizeof(double)) == 0);
}
