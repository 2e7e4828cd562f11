// What would flip a verdict, in words.
#include "planner/reports/break_even_words.hpp"

#include "geometry/units.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

using namespace landwidth;

namespace {

constexpr double yd(double yards) {
    return Yards{yards}.metres();
}

std::string words_in_yards(const BreakEvens& break_evens) {
    return break_even_words(break_evens, "3-wood", DisplayUnits::yards);
}

}  // namespace

TEST_CASE("all three, below and above", "[break_evens]") {
    CHECK(words_in_yards({.landing_width = BreakEven{yd(31.2), yd(24.1)},
                          .side_sd = {yd(18.0), yd(23.4)},
                          .carry = {yd(212.0), yd(204.6)}}) ==
          "flips to 3-wood if the landing width is under 24 yd (31 now), the side spread over 23 yd (18 now) "
          "or the carry under 205 yd (212 now)");
}

TEST_CASE("what does not flip is left out", "[break_evens]") {
    CHECK(words_in_yards({.landing_width = BreakEven{yd(31.2), {}},
                          .side_sd = {yd(18.0), yd(12.0)},
                          .carry = {yd(212.0), {}}}) ==
          "flips to 3-wood if the side spread is under 12 yd (18 now)");
    CHECK(words_in_yards({.landing_width = std::nullopt,
                          .side_sd = {yd(18.0), yd(12.0)},
                          .carry = {yd(212.0), yd(230.0)}}) ==
          "flips to 3-wood if the side spread is under 12 yd (18 now) or the carry over 230 yd (212 now)");
}

TEST_CASE("nothing within reach flips it", "[break_evens]") {
    CHECK(words_in_yards({.landing_width = BreakEven{yd(31.0), {}},
                          .side_sd = {yd(18.0), {}},
                          .carry = {yd(212.0), {}}}) ==
          "no landing width, side spread or carry within reach flips it to 3-wood");
    CHECK(words_in_yards({.landing_width = {}, .side_sd = {yd(18.0), {}}, .carry = {yd(212.0), {}}}) ==
          "no side spread or carry within reach flips it to 3-wood");
}

TEST_CASE("a wind that flips it blows from behind or against", "[break_evens]") {
    const auto words = [](double tail_mph) {
        return words_in_yards({.landing_width = {},
                               .side_sd = {yd(18.0), {}},
                               .carry = {yd(212.0), yd(204.6)},
                               .wind = WindBreakEven{tail_mph * metres_per_second_per_mph}});
    };
    CHECK(words(-9.0) ==
          "flips to 3-wood if the carry is under 205 yd (212 now) or there is a wind of 9 mph against");
    CHECK(words(14.0) ==
          "flips to 3-wood if the carry is under 205 yd (212 now) or there is a wind of 14 mph behind");
    CHECK(words(0.2) ==
          "flips to 3-wood if the carry is under 205 yd (212 now) or there is the least wind behind");
    CHECK(words_in_yards({.landing_width = {},
                          .side_sd = {yd(18.0), {}},
                          .carry = {yd(212.0), {}},
                          .wind = WindBreakEven{}}) ==
          "no side spread, carry or wind within reach flips it to 3-wood");
}

TEST_CASE("two numbers that would read the same get a decimal", "[break_evens]") {
    CHECK(words_in_yards({.landing_width = {}, .side_sd = {yd(18.0), yd(18.3)}, .carry = {yd(212.0), {}}}) ==
          "flips to 3-wood if the side spread is over 18.3 yd (18.0 now)");
}

TEST_CASE("a hole of a plan, in the units of the reader", "[break_evens]") {
    fixture::PlanFixture made = fixture::two_holes();
    CHECK(
        break_even_words(made.view(DisplayUnits::metres), 0) ==
        "flips to driver if the landing width is under 26 m (34 now), the side spread over 20 m (15 now) or "
        "the carry under 183 m (189 now)");
    CHECK(break_even_words(made.view(), 1) == "flips to 6-iron if the carry is over 154.3 yd (154.2 now)");
    made.plan.holes[0].break_evens.reset();
    CHECK(break_even_words(made.view(), 0).empty());
}
