// Club building against the facts of the trade: common practice, no source, unless a line says otherwise. The
// builds are invented, with the weights such clubs usually have.

#include <cmath>
#include <utility>
#include <vector>

#include "golfer-profiles/club_build.hpp"
#include "golfer-profiles/length_change.hpp"
#include "golfer-profiles/lie_change.hpp"
#include "planner/engine/build_assumptions.hpp"
#include "tests/catch.hpp"

namespace landwidth {
namespace {

constexpr double in = metres_per_inch;
constexpr double g = kilograms_per_gram;
constexpr double mph = metres_per_second_per_mph;

ClubParts club(ClubKind kind, double length_in, double head_g, double shaft_g, double grip_g) {
    const BuildAssumptions assumptions = default_build_assumptions(kind);
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
    static const std::vector<ClubParts> clubs{club(ClubKind::driver, 45.25, 200, 60, 50),
                                              club(ClubKind::fairway_wood, 43, 212, 65, 50),
                                              club(ClubKind::iron, 37, 270, 115, 50)};
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

TEST_CASE("a driver has about 2,850 to 3,000 kg cm2 about its butt [common practice, no source]") {
    const auto of = [](const ClubParts& parts) { return inertia_about_butt(parts) / kg_m2_per_kg_cm2; };
    for (const ClubParts& parts :
         {club(ClubKind::driver, 45, 203, 62, 50), club(ClubKind::driver, 45.25, 200, 60, 50),
          club(ClubKind::driver, 45.5, 198, 62, 50), club(ClubKind::driver, 45.5, 200, 65, 47),
          club(ClubKind::driver, 45.75, 198, 55, 48)}) {
        CAPTURE(parts.length_m / in, of(parts));
        REQUIRE(of(parts) > 2850.0);
        REQUIRE(of(parts) < 3000.0);
    }
}

TEST_CASE(
    "clubs matched by inertia are within about 10 kg cm2 of one another; by swing weight they are not") {
    // Half an inch apart, each with the head that is looked for [the tolerance: common practice, no source].
    const ClubParts first = club(ClubKind::driver, 45.5, 198, 62, 50);
    const SwingWeightThumb thumb = default_build_assumptions().thumb;
    const BuildChange change = change_build(first, {.length_m = 44.5 * in}, thumb);
    const double before = inertia_about_butt(first);
    REQUIRE(std::abs(inertia_about_butt(change.restored_inertia.value()) - before) < 10 * kg_m2_per_kg_cm2);
    REQUIRE(std::abs(inertia_about_butt(change.restored.value()) - before) > 10 * kg_m2_per_kg_cm2);
}

TEST_CASE("half an inch of length plays about a degree of lie [common practice, no source]") {
    // Geometry at usual lies, hands as high: a driver at 58 deg, a 7-iron at 62.
    const Range practice = default_build_assumptions().lie_per_length;
    for (const auto& [length_in, lie_deg] : {std::pair{45.0, 58.0}, std::pair{37.0, 62.0}}) {
        const LieChange change = lie_change(lie_deg * radians_per_degree, std::nullopt, length_in * in,
                                            (length_in + 0.5) * in, practice, false);
        CAPTURE(length_in);
        REQUIRE(change.plays_upright_rad.value() / radians_per_degree > 0.75);
        REQUIRE(change.plays_upright_rad.value() / radians_per_degree < 1.5);
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
