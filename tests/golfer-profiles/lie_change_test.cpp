#include "golfer-profiles/lie_change.hpp"

#include <cmath>

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double in = metres_per_inch;
constexpr double deg = radians_per_degree;
constexpr Range practice{1.5 * deg / in, 2.5 * deg / in};

}  // namespace

TEST_CASE("the hands stay as high, by hand: 45.5 in at 58 deg, 44.5 in") {
    const LieChange change = lie_change(58 * deg, std::nullopt, 45.5 * in, 44.5 * in, practice, false);
    REQUIRE(change.flat_sole_rad);
    REQUIRE_THAT(44.5 * std::sin(*change.flat_sole_rad), WithinAbs(45.5 * std::sin(58 * deg), 1e-9));
    REQUIRE_THAT(*change.flat_sole_rad / deg, WithinAbs(60.124, 0.001));
    REQUIRE_THAT(*change.plays_upright_rad / deg, WithinAbs(-2.124, 0.001));
    REQUIRE(change.practice_rad);
    REQUIRE_THAT(change.practice_rad->low / deg, WithinAbs(-2.5, 1e-9));
    REQUIRE_THAT(change.practice_rad->high / deg, WithinAbs(-1.5, 1e-9));
    REQUIRE_FALSE(change.face_off_line_rad);
}

TEST_CASE("longer plays upright, and geometry lies within the practice for half an inch either way") {
    for (const double more : {-0.5, 0.5}) {
        const LieChange change = lie_change(58 * deg, 10 * deg, 45 * in, (45 + more) * in, practice, false);
        REQUIRE((*change.plays_upright_rad > 0.0) == (more > 0.0));
        REQUIRE(*change.plays_upright_rad > change.practice_rad->low);
        REQUIRE(*change.plays_upright_rad < change.practice_rad->high);
        // A toe that points up turns the loft to the golfer's own side.
        REQUIRE((*change.face_off_line_rad > 0.0) == (more > 0.0));
        REQUIRE(std::abs(*change.face_off_line_rad) < 0.3 * deg);
    }
    REQUIRE(lie_change(58 * deg, 0.0, 45 * in, 46 * in, practice, false).face_off_line_rad == 0.0);
}

TEST_CASE("too short to reach the hands, and where rules of thumb are silent") {
    REQUIRE_FALSE(lie_change(72 * deg, std::nullopt, 36 * in, 30 * in, practice, true).flat_sole_rad);
    REQUIRE_FALSE(lie_change(58 * deg, std::nullopt, 45 * in, 42 * in, practice, true).practice_rad);
}
