#include "golfer-profiles/air.hpp"

#include <limits>
#include <stdexcept>

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

TEST_CASE("humid, warm and thin air is lighter") {
    const double dry = air_of({293.15, 101325, 0}).density_kg_per_m3;
    REQUIRE(air_of({293.15, 101325, 1}).density_kg_per_m3 < dry);
    REQUIRE(air_of({303.15, 101325, 0}).density_kg_per_m3 < dry);
    REQUIRE(air_of({293.15, 90000, 0}).density_kg_per_m3 < dry);
    REQUIRE(air_of({303.15, 101325, 0}).viscosity_pa_s > air_of({293.15, 101325, 0}).viscosity_pa_s);
}

TEST_CASE("what no air has is refused") {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    REQUIRE_THROWS_AS(air_of({0, 101325, 0}), std::invalid_argument);
    REQUIRE_THROWS_AS(air_of({nan, 101325, 0}), std::invalid_argument);
    REQUIRE_THROWS_AS(air_of({288, 0, 0}), std::invalid_argument);
    REQUIRE_THROWS_AS(air_of({288, nan, 0}), std::invalid_argument);
    REQUIRE_THROWS_AS(air_of({288, 101325, 1.01}), std::invalid_argument);
    REQUIRE_THROWS_AS(air_of({288, 101325, nan}), std::invalid_argument);
    REQUIRE_THROWS_AS(standard_weather(9001), std::invalid_argument);
    REQUIRE_THROWS_AS(standard_weather(nan), std::invalid_argument);
}
