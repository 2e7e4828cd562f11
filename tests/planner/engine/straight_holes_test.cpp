// The holes bags play when no course is given: every width and length once, troubles as the assumptions have
// it.
#include "planner/engine/bags/straight_holes.hpp"

#include <algorithm>
#include <set>

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

std::ptrdiff_t with(const StraightHoles& holes, ChartTrouble trouble) {
    return std::ranges::count(holes.holes, trouble, &StraightHole::trouble);
}

}  // namespace

TEST_CASE("fourteen straight holes, each another", "[straight_holes]") {
    const Assumptions assumptions = default_assumptions();
    const StraightHoles straight = straight_holes(assumptions.engine.straight_holes, std::nullopt);
    REQUIRE(straight.holes.size() == 14);
    CHECK_FALSE(straight.trouble);
    std::set<std::pair<double, double>> shapes;
    for (const StraightHole& hole : straight.holes)
        shapes.insert({hole.width_m, hole.length_m});
    CHECK(shapes.size() == 14);
    CHECK(with(straight, ChartTrouble::trees) == 4);
    CHECK(with(straight, ChartTrouble::water_left) == 1);
    CHECK(with(straight, ChartTrouble::water_right) == 1);
    CHECK(with(straight, ChartTrouble::out_left) == 1);
    CHECK(with(straight, ChartTrouble::out_right) == 1);
    CHECK(with(straight, ChartTrouble::rough) == 6);
    // Woods by narrow and by wide landings alike.
    const auto narrow_woods = std::ranges::count_if(straight.holes, [&](const StraightHole& hole) {
        return hole.trouble == ChartTrouble::trees && hole.width_m == straight.holes.front().width_m;
    });
    CHECK(narrow_woods == 2);
    const Course course = straight_course(straight, assumptions);
    REQUIRE(course.holes.size() == 14);
    CHECK(course.name.empty());
    for (std::size_t i = 0; i < 14; ++i) {
        CHECK_THAT(course.holes[i].line.length(), WithinAbs(straight.holes[i].length_m, 1e-9));
        CHECK(course.holes[i].ref == std::to_string(i + 1));
        CHECK(course.holes[i].par == (i < 10 ? 4 : 5));
    }
}

TEST_CASE("one kind of trouble on every hole where it is asked for", "[straight_holes]") {
    const Assumptions assumptions = default_assumptions();
    for (const ChartTrouble trouble : all_chart_troubles) {
        const StraightHoles straight = straight_holes(assumptions.engine.straight_holes, trouble);
        CHECK(with(straight, trouble) == 14);
        CHECK(straight.trouble == trouble);
    }
}

TEST_CASE("more trouble than holes is trouble on every hole", "[straight_holes]") {
    StraightHoleMix mix = default_assumptions().engine.straight_holes;
    mix.with_trees = 14.0;
    mix.with_water = 9.0;
    CHECK(with(straight_holes(mix, std::nullopt), ChartTrouble::trees) == 14);
    mix.with_trees = mix.with_water = mix.with_out_of_bounds = 0.0;
    CHECK(with(straight_holes(mix, std::nullopt), ChartTrouble::rough) == 14);
}
