#include "golfer-profiles/carry_overlap.hpp"

#include <boost/math/distributions/normal.hpp>
#include <cmath>

#include "golfer-profiles/order_statistics.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

ShotPattern carrying(double carry_m, double sd_m, double dof = std::numeric_limits<double>::infinity()) {
    return {.usual = {{carry_m, 0.0}, sd_m, 10.0, 0.0}, .tail_dof = dof};
}

}  // namespace

TEST_CASE("two normal carries: the chance in closed form") {
    for (const double gap_m : {0.0, 3.0, 8.0, 15.0, 30.0}) {
        const double sd_m = std::hypot(9.0, 12.0);
        const double expected = boost::math::cdf(boost::math::normal(), -gap_m / sd_m);
        CAPTURE(gap_m);
        REQUIRE_THAT(chance_longer_is_shorter(carrying(200.0 + gap_m, 9.0), carrying(200.0, 12.0)),
                     WithinAbs(expected, 0.002));
    }
}

TEST_CASE("the same pattern is a toss of a coin, and swapped the chances add to one") {
    for (const double dof : {3.0, 6.0, 30.0}) {
        const ShotPattern a = carrying(190.0, 10.0, dof);
        const ShotPattern b = carrying(180.0, 14.0, 8.0);
        CAPTURE(dof);
        REQUIRE_THAT(chance_longer_is_shorter(a, a), WithinAbs(0.5, 1e-9));
        REQUIRE_THAT(chance_longer_is_shorter(a, b) + chance_longer_is_shorter(b, a), WithinAbs(1.0, 0.004));
    }
}

TEST_CASE("a t of many degrees of freedom is the normal; of few it reaches farther out") {
    const ShotPattern shorter = carrying(150.0, 10.0);
    REQUIRE_THAT(chance_longer_is_shorter(carrying(165.0, 10.0, 1e6), shorter),
                 WithinAbs(chance_longer_is_shorter(carrying(165.0, 10.0), shorter), 1e-5));
    REQUIRE(chance_longer_is_shorter(carrying(200.0, 10.0, 3.0), shorter) >
            chance_longer_is_shorter(carrying(200.0, 10.0), shorter));
}

TEST_CASE("a quantile lies between its neighbours") {
    const std::vector<double> values{1.0, 2.0, 4.0, 8.0};
    REQUIRE(quantile(values, 0.0) == 1.0);
    REQUIRE(quantile(values, 1.0) == 8.0);
    REQUIRE_THAT(quantile(values, 0.5), WithinAbs(3.0, 1e-12));
    REQUIRE_THAT(quantile(values, 0.9), WithinAbs(6.8, 1e-12));
    REQUIRE_THROWS_AS(quantile({}, 0.5), std::invalid_argument);
}
