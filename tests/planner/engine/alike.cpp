#include "tests/planner/engine/alike.hpp"

#include <cmath>

#include "geometry/units.hpp"
#include "tests/catch.hpp"

namespace landwidth::fixture {

using Catch::Matchers::WithinAbs;

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

}  // namespace landwidth::fixture
