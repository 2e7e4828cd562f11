// Club building against the facts of the trade: common practice, no source, unless a line says otherwise. The
// builds are invented, with the weights such clubs usually have.

#include <cmath>
#include <vector>

#include "golfer-profiles/club_build.hpp"
#include "golfer-profiles/length_change.hpp"
#include "planner/engine/build_assumptions.hpp"
#include "tests/catch.hpp"

namespace landwidth {
namespace {

constexpr double in = metres_per_inch;
constexpr double g = kilograms_per_gram;
constexpr double mph = metres_per_second_per_mph;

ClubParts club(double length_in, double head_g, double shaft_g, double grip_g) {
    const BuildAssumptions assumptions = default_build_assumptions();
    return {.length_m = length_in * in,
            .head_kg = head_g * g,
            .head_centre_from_end_m = assumptions.head_centre_from_end_m,
            .shaft_kg = shaft_g * g,
            .shaft_length_m = length_in * in,
            .shaft_balance_share = assumptions.shaft_balance_share,
            .grip_kg = grip_g * g,
            .grip_balance_m = assumptions.grip_balance_m};
}

double points(const ClubParts& parts) {
    return weights_of(parts).swing_weight.points();
}

// Light graphite driver, graphite 3-wood, 7-iron in heavy steel.
const std::vector<ClubParts>& usual_clubs() {
    static const std::vector<ClubParts> clubs{club(45.25, 200, 60, 50), club(43, 212, 65, 50),
                                              club(37, 270, 115, 50)};
    return clubs;
}

}  // namespace

TEST_CASE("half an inch of length is about 3 points of swing weight [common practice, no source]") {
    // "About 3": to a whole point either way, and the mean over the bag rounds to it.
    double sum = 0.0;
    for (const ClubParts& parts : usual_clubs()) {
        const double lost = points(parts) - points(shortened_by(parts, 0.5 * in));
        CAPTURE(lost);
        REQUIRE(lost > 2.0);
        REQUIRE(lost < 4.0);
        sum += lost;
    }
    const double mean = sum / static_cast<double>(usual_clubs().size());
    CAPTURE(mean);
    REQUIRE(mean > 2.5);
    REQUIRE(mean < 3.5);
}

TEST_CASE("2 g on the head is about 1 point of swing weight [common practice, no source]") {
    for (const ClubParts& parts : usual_clubs()) {
        ClubParts heavier = parts;
        heavier.head_kg += 2 * g;
        const double gained = points(heavier) - points(parts);
        CAPTURE(gained);
        REQUIRE(gained > 0.5);
        REQUIRE(gained < 1.5);
    }
}

TEST_CASE("clubs of usual weights come out at C9 to D6 [common practice, no source, from memory]") {
    for (const ClubParts& parts : usual_clubs()) {
        CAPTURE(points(parts));
        REQUIRE(points(parts) >= 29.0);
        REQUIRE(points(parts) <= 36.0);
    }
}

TEST_CASE("the scale: D0 is 213.5 inch-ounces, a point 1.75, the fulcrum 14 in from the butt [from memory]") {
    REQUIRE(std::abs(swing_weight_of_text("D0")->inch_ounces() - 213.5) < 1e-9);
    REQUIRE(std::abs(swing_weight_of_text("D1")->inch_ounces() - 215.25) < 1e-9);
    REQUIRE(std::abs(swing_weight_of_text("C9")->inch_ounces() - 211.75) < 1e-9);
    // 213.5 oz an inch beyond the fulcrum, and 10 oz 21.35 in beyond it.
    REQUIRE(swing_weight_text(swing_weight_of(213.5 * kilograms_per_ounce, 15.0 * in)) == "D0");
    REQUIRE(swing_weight_text(swing_weight_of(10.0 * kilograms_per_ounce, 35.35 * in)) == "D0");
}

TEST_CASE(
    "an inch of driver adds more than 0 and less than 3 mph, a mph of ball 2 to 3 yd [common practice, no "
    "source]") {
    const LengthPractice practice = default_build_assumptions().length;
    const auto inch = length_change(ClubKind::driver, 45 * in, 46 * in, {}, practice);
    REQUIRE(inch);
    REQUIRE(inch->club_speed_mps.low >= 0.0);
    REQUIRE(inch->club_speed_mps.high <= (3.0 + 1e-9) * mph);
    const double yd_a_mph = inch->carry_m.high / metres_per_yard / (inch->ball_speed_mps.high / mph);
    REQUIRE(yd_a_mph > 2.0 - 1e-9);
    REQUIRE(yd_a_mph < 3.0 + 1e-9);
    // No gain at all is within the range: centred strikes get rarer.
    REQUIRE(inch->carry_m.low == 0.0);
}

TEST_CASE(
    "1 to 2 mph of club speed are 5 to 10 yd: the range for as much length overlaps it [common practice, no "
    "source]") {
    // Two thirds of an inch at most 2 mph.
    const LengthPractice practice = default_build_assumptions().length;
    const auto change = length_change(ClubKind::driver, 45 * in, (45 + 2.0 / 3.0) * in, {}, practice);
    REQUIRE(std::abs(change->club_speed_mps.high / mph - 2.0) < 1e-9);
    REQUIRE(change->carry_m.high / metres_per_yard > 5.0);
    REQUIRE(change->carry_m.high / metres_per_yard < 10.0);
}

TEST_CASE(
    "limits of length: 18 in, 48 in, 46 in under Model Local Rule G-10 [Equipment Rules, from memory]") {
    REQUIRE(std::abs(shortest_club_m / in - 18.0) < 1e-12);
    REQUIRE(std::abs(longest_club_m / in - 48.0) < 1e-12);
    REQUIRE(std::abs(local_rule_longest_m / in - 46.0) < 1e-12);
}

}  // namespace landwidth
