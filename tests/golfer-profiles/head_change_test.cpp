#include "golfer-profiles/head_change.hpp"

#include "golfer-profiles/ball.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double in = metres_per_inch;
constexpr double g = kilograms_per_gram;
constexpr double mph = metres_per_second_per_mph;
constexpr HeadPractice practice{{-0.2 * mph / g, 0.1 * mph / g}, 15 * g};

const ClubParts club{.length_m = 45 * in,
                     .head_kg = 200 * g,
                     .head_centre_from_end_m = 0.5 * in,
                     .shaft_kg = 60 * g,
                     .shaft_length_m = 45 * in,
                     .grip_kg = 50 * g,
                     .grip_balance_m = 4 * in};

}  // namespace

TEST_CASE("2 g on a head, by hand") {
    // 2 g at 30.5 in beyond the fulcrum: 61 g.in of 1.75 oz.in a point; 2 g at 113.03 cm from the butt.
    const HeadChange change = head_change(club, 2 * g, practice);
    REQUIRE_THAT(change.points, WithinAbs(61.0 / 28.349523125 / 1.75, 1e-9));
    REQUIRE_THAT(change.inertia_kg_m2 / kg_m2_per_kg_cm2, WithinAbs(0.002 * 113.03 * 113.03, 1e-9));
    REQUIRE(change.club_speed_mps);
    REQUIRE_THAT(change.club_speed_mps->low / mph, WithinAbs(-0.4, 1e-9));
    REQUIRE_THAT(change.club_speed_mps->high / mph, WithinAbs(0.2, 1e-9));
    const double before = 0.200 / (0.200 + ball_mass_kg);
    REQUIRE_THAT(change.ball_speed_share, WithinAbs(0.202 / (0.202 + ball_mass_kg) / before - 1.0, 1e-12));
}

TEST_CASE("less on the head mirrors it, no change is always within the range, and far changes are not told") {
    for (const double more_g : {-15.0, -4.0, 4.0, 15.0}) {
        const HeadChange change = head_change(club, more_g * g, practice);
        CAPTURE(more_g);
        REQUIRE(change.club_speed_mps);
        REQUIRE(change.club_speed_mps->low < 0.0);
        REQUIRE(change.club_speed_mps->high > 0.0);
        REQUIRE((change.points > 0.0) == (more_g > 0.0));
        REQUIRE((change.ball_speed_share > 0.0) == (more_g > 0.0));
    }
    REQUIRE_FALSE(head_change(club, 16 * g, practice).club_speed_mps);
}
