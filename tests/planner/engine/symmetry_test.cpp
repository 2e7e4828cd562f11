// A plan does not depend on where the hole lies, which way it points, or on which side of the mirror.
#include <tbb/global_control.h>

#include <cstring>

#include "tests/catch.hpp"
#include "tests/planner/engine/alike.hpp"
#include "tests/planner/engine/day_plan.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

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
