// Alike and not known yet are told apart by the width of what is possible.
#include "planner/engine/likeness.hpp"

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

TEST_CASE("the middle of draws lies between the nearest of them", "[likeness]") {
    std::vector<double> draws;
    for (int i = 100; i >= 0; --i)
        draws.push_back(0.01 * i);
    const Interval middle = middle_of(draws);
    CHECK_THAT(middle.low, WithinAbs(0.05, 1e-12));
    CHECK_THAT(middle.high, WithinAbs(0.95, 1e-12));
    CHECK(middle_of({2.0}).low == 2.0);
    CHECK(middle_of({2.0}).high == 2.0);
    CHECK(middle_of({}).low == 0.0);
    CHECK_THAT(middle_of({0.0, 1.0}).low, WithinAbs(0.05, 1e-12));
}

TEST_CASE("alike is both ends within what nobody notices", "[likeness]") {
    CHECK(is_alike({-0.1, 0.1}, 0.1));
    CHECK(is_alike({0.02, 0.09}, 0.1));
    CHECK_FALSE(is_alike({-0.35, 1.09}, 0.1));
    CHECK_FALSE(is_alike({-0.11, 0.0}, 0.1));
    CHECK_FALSE(is_alike({0.0, 0.11}, 0.1));
    CHECK(is_alike({0.0, 0.0}, 0.0));
}

TEST_CASE("draws that never differ compare nothing", "[likeness]") {
    CHECK(is_same({0.0, 1e-13, -1e-13}));
    CHECK_FALSE(is_same({0.0, 1e-4}));
}

TEST_CASE("a tie speaks for neither", "[likeness]") {
    CHECK(share_better({1.0, -1.0, 0.0, 0.0}) == 0.5);
    CHECK(share_better({0.0, 0.0}) == 0.5);
    CHECK(share_better({1.0, 0.0}) == 0.75);
    CHECK(share_better({-1.0, -2.0}) == 0.0);
    CHECK(share_better({}) == 0.5);
    // Below what the search resolves.
    CHECK(share_better({0.004, 0.004, -0.004}) == 0.5);
    CHECK(share_better({0.006, -0.004}) == 0.75);
}
