// Sums worked out by hand.
#include "planner/engine/score_distribution.hpp"

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

TEST_CASE("nothing known: no mean, no spread, an empty sum", "[score]") {
    const ScoreDistribution none;
    CHECK(none.empty());
    CHECK(none.mean() == 0.0);
    CHECK(none.variance() == 0.0);
    CHECK(sum_of({none, none}).empty());
    CHECK(sum_of({none, {{0.0, 0.0, 1.0}}}).empty());
}

TEST_CASE("mean, variance and shares between two scores", "[score]") {
    const ScoreDistribution score{{0.0, 0.0, 0.0, 0.2, 0.5, 0.3}};
    CHECK_THAT(score.mean(), WithinAbs(4.1, 1e-12));
    CHECK_THAT(score.variance(), WithinAbs(0.2 * 1.21 + 0.5 * 0.01 + 0.3 * 0.81, 1e-12));
    CHECK_THAT(score.between(0, 3), WithinAbs(0.2, 1e-12));
    CHECK_THAT(score.between(4, 4), WithinAbs(0.5, 1e-12));
    CHECK_THAT(score.between(4, 99), WithinAbs(0.8, 1e-12));
    CHECK_THAT(score.between(0, 99), WithinAbs(1.0, 1e-12));
    // The last entry holds the sixes and worse too.
    CHECK_THAT(score.between(5, 5), WithinAbs(0.3, 1e-12));
    CHECK(score.between(4, 3) == 0.0);
}

TEST_CASE("the sum of two holes", "[score]") {
    const ScoreDistribution a{{0.0, 0.0, 0.0, 0.25, 0.75}};
    const ScoreDistribution b{{0.0, 0.0, 0.0, 0.0, 0.5, 0.4, 0.1}};
    const ScoreDistribution both = sum_of({a, b});
    CHECK_THAT(both.between(7, 7), WithinAbs(0.125, 1e-12));
    CHECK_THAT(both.between(8, 8), WithinAbs(0.25 * 0.4 + 0.75 * 0.5, 1e-12));
    CHECK_THAT(both.between(9, 9), WithinAbs(0.25 * 0.1 + 0.75 * 0.4, 1e-12));
    CHECK_THAT(both.between(10, 10), WithinAbs(0.075, 1e-12));
    CHECK_THAT(both.mean(), WithinAbs(a.mean() + b.mean(), 1e-12));
    CHECK_THAT(both.variance(), WithinAbs(a.variance() + b.variance(), 1e-12));
}

TEST_CASE("eighteen holes alike: mean and variance add up", "[score]") {
    const ScoreDistribution hole{{0.0, 0.0, 0.02, 0.2, 0.4, 0.25, 0.1, 0.03}};
    const ScoreDistribution round = sum_of(std::vector<ScoreDistribution>(18, hole));
    CHECK_THAT(round.mean(), WithinAbs(18.0 * hole.mean(), 1e-9));
    CHECK_THAT(round.variance(), WithinAbs(18.0 * hole.variance(), 1e-9));
    CHECK_THAT(round.between(0, 1000), WithinAbs(1.0, 1e-12));
}
