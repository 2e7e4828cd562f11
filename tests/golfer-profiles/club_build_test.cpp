#include "golfer-profiles/club_build.hpp"

#include <stdexcept>

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double in = metres_per_inch;
constexpr double g = kilograms_per_gram;
constexpr SwingWeightThumb thumb{6.0 / in, 0.5 / g};

ClubParts driver() {
    return {.length_m = 45.5 * in,
            .head_kg = 198 * g,
            .shaft_kg = 62 * g,
            .shaft_length_m = 45.5 * in,
            .grip_kg = 50 * g,
            .grip_balance_m = 4 * in};
}

double points(const ClubParts& parts) {
    return weights_of(parts).swing_weight.points();
}

void require_same(const ClubParts& a, const ClubParts& b) {
    REQUIRE_THAT(a.length_m, WithinAbs(b.length_m, 1e-12));
    REQUIRE_THAT(a.head_kg, WithinAbs(b.head_kg, 1e-12));
    REQUIRE_THAT(a.shaft_kg, WithinAbs(b.shaft_kg, 1e-12));
    REQUIRE_THAT(a.shaft_length_m, WithinAbs(b.shaft_length_m, 1e-12));
    REQUIRE_THAT(a.shaft_balance_share, WithinAbs(b.shaft_balance_share, 1e-12));
    REQUIRE_THAT(a.grip_kg, WithinAbs(b.grip_kg, 1e-12));
}

}  // namespace

TEST_CASE("a head alone balances where it is") {
    ClubParts parts = driver();
    parts.shaft_kg = parts.grip_kg = 0.0;
    const ClubWeights weights = weights_of(parts);
    REQUIRE_THAT(weights.total_kg, WithinAbs(0.198, 1e-15));
    REQUIRE_THAT(weights.balance_m, WithinAbs(45.5 * in, 1e-12));
    parts.head_centre_from_end_m = 1.5 * in;
    REQUIRE_THAT(weights_of(parts).balance_m, WithinAbs(44.0 * in, 1e-12));
    require_same(shortened_by(parts, 0.0), parts);
}

TEST_CASE("moments by hand: 198 g, 62 g and 50 g at 45.5 in") {
    // About 14 in: 198 x 31.5 + 62 x 8.75 - 50 x 10 = 6279.5 g.in, of 310 g.
    const ClubWeights weights = weights_of(driver());
    REQUIRE_THAT(weights.total_kg, WithinAbs(0.310, 1e-15));
    REQUIRE_THAT(weights.balance_m / in, WithinAbs(14.0 + 6279.5 / 310.0, 1e-12));
    REQUIRE_THAT(weights.swing_weight.inch_ounces(), WithinAbs(6279.5 / 28.349523125, 1e-9));
}

TEST_CASE("an inch off the butt, by hand") {
    // 62/45.5 g of shaft go, balancing half an inch from the old butt; the fulcrum is now at 15 old inches.
    const double piece = 62.0 / 45.5;
    const double shaft = 62.0 * 22.75 - piece * 0.5 - (62.0 - piece) * 15.0;
    const double moment = 198.0 * 30.5 + shaft - 500.0;
    const ClubParts cut = shortened_by(driver(), 1.0 * in);
    REQUIRE_THAT(weights_of(cut).swing_weight.inch_ounces(), WithinAbs(moment / 28.349523125, 1e-9));
    REQUIRE_THAT(cut.length_m, WithinAbs(44.5 * in, 1e-12));
    REQUIRE_THAT(cut.shaft_kg / g, WithinAbs(62.0 - piece, 1e-9));
    REQUIRE(cut.head_kg == driver().head_kg);
    REQUIRE(cut.grip_kg == driver().grip_kg);
}

TEST_CASE("an inch off the tip, by hand: the shaft stays where it was and loses its end") {
    const double piece = 62.0 / 45.5;
    const double shaft = 62.0 * 22.75 - piece * 45.0 - (62.0 - piece) * 14.0;
    const double moment = 198.0 * 30.5 + shaft - 500.0;
    const ClubParts cut = shortened_by(driver(), 1.0 * in, CutEnd::tip);
    REQUIRE_THAT(weights_of(cut).swing_weight.inch_ounces(), WithinAbs(moment / 28.349523125, 1e-9));
}

TEST_CASE("cutting twice is cutting once, and an extension undoes a cut") {
    ClubParts parts = driver();
    parts.shaft_balance_share = 0.46;
    parts.shaft_length_m = 44.25 * in;
    for (const CutEnd end : {CutEnd::butt, CutEnd::tip}) {
        require_same(shortened_by(shortened_by(parts, 0.4 * in, end), 0.85 * in, end),
                     shortened_by(parts, 1.25 * in, end));
    }
    require_same(shortened_by(shortened_by(parts, 1.25 * in), -1.25 * in), parts);
}

TEST_CASE("moment of inertia: a point mass, an even rod, and both") {
    // m r^2 for the head; m l^2 / 3 for an even rod about its end.
    ClubParts parts = driver();
    parts.shaft_kg = parts.grip_kg = 0.0;
    parts.head_centre_from_end_m = 0.5 * in;
    REQUIRE_THAT(inertia_about_butt(parts), WithinAbs(0.198 * 1.143 * 1.143, 1e-12));
    parts.head_kg = 0.0;
    parts.shaft_kg = 62 * g;
    const double length_m = 45.5 * in;
    REQUIRE_THAT(inertia_about_butt(parts), WithinAbs(0.062 * length_m * length_m / 3.0, 1e-12));
    parts.head_kg = 198 * g;
    REQUIRE_THAT(inertia_about_butt(parts),
                 WithinAbs(0.198 * 1.143 * 1.143 + 0.062 * length_m * length_m / 3.0, 1e-12));
    // An even rod of 8 in balances at 4 in.
    parts.head_kg = parts.shaft_kg = 0.0;
    parts.grip_kg = 50 * g;
    REQUIRE_THAT(inertia_about_butt(parts), WithinAbs(0.050 * (8 * in) * (8 * in) / 3.0, 1e-12));
}

TEST_CASE("moment of inertia of a tapered shaft against its slices") {
    for (const double balance : {0.38, 0.45, 0.5, 0.55, 0.62}) {
        ClubParts parts = driver();
        parts.head_kg = parts.grip_kg = 0.0;
        parts.shaft_balance_share = balance;
        // Mass per length 1 + k (u - 1/2) over the share u of the length balances at 1/2 + k / 12.
        const double k = 12.0 * (balance - 0.5);
        double sum = 0.0;
        double first = 0.0;
        constexpr int slices = 20000;
        for (int i = 0; i < slices; ++i) {
            const double u = (i + 0.5) / slices;
            const double mass = parts.shaft_kg * (1.0 + k * (u - 0.5)) / slices;
            first += mass * u;
            sum += mass * u * u * parts.shaft_length_m * parts.shaft_length_m;
        }
        CAPTURE(balance);
        REQUIRE_THAT(first / parts.shaft_kg, WithinAbs(balance, 1e-6));
        REQUIRE_THAT(inertia_about_butt(parts), WithinAbs(sum, 1e-8));
    }
}

TEST_CASE("an even shaft cut at either end stays an even shaft") {
    for (const CutEnd end : {CutEnd::butt, CutEnd::tip}) {
        ClubParts cut = shortened_by(driver(), 1.5 * in, end);
        ClubParts made = driver();
        made.length_m = made.shaft_length_m = 44 * in;
        made.shaft_kg = 62 * g * 44.0 / 45.5;
        REQUIRE_THAT(inertia_about_butt(cut), WithinAbs(inertia_about_butt(made), 1e-12));
    }
}

TEST_CASE("the head for a moment of inertia gives it; the one for the swing weight gives another") {
    for (const double to : {44.0, 44.5, 46.0}) {
        const BuildChange change = change_build(driver(), {.length_m = to * in}, thumb);
        REQUIRE(change.restored_inertia);
        CAPTURE(to);
        const double before = inertia_about_butt(driver());
        REQUIRE_THAT(inertia_about_butt(*change.restored_inertia), WithinAbs(before, 1e-12));
        // Per gram length counts once in the one and twice in the other: inertia asks for more.
        const bool shorter = to < 45.5;
        REQUIRE((change.restored_inertia->head_kg > change.restored->head_kg) == shorter);
        REQUIRE((inertia_about_butt(*change.restored) < before) == shorter);
    }
    const BuildChange wished = change_build(driver(), {.inertia_kg_m2 = 2900 * kg_m2_per_kg_cm2}, thumb);
    REQUIRE(wished.restored_inertia);
    REQUIRE_FALSE(wished.restored);
    REQUIRE_THAT(inertia_about_butt(*wished.restored_inertia) / kg_m2_per_kg_cm2, WithinAbs(2900.0, 1e-9));
    REQUIRE_FALSE(
        change_build(driver(), {.swing_weight = SwingWeight::of_points(32)}, thumb).restored_inertia);
    REQUIRE_FALSE(head_for_inertia(driver(), 100 * kg_m2_per_kg_cm2));
}

TEST_CASE("what cannot be cut is a defect of the caller") {
    REQUIRE_THROWS_AS(shortened_by(driver(), 45.5 * in), std::logic_error);
    REQUIRE_THROWS_AS(shortened_by(driver(), -0.5 * in, CutEnd::tip), std::logic_error);
}

TEST_CASE("swing weight rises with length and head, falls with the grip") {
    ClubParts parts = driver();
    double last = points(shortened_by(parts, 4.0 * in));
    for (double shorter = 3.75; shorter > -2.0; shorter -= 0.25) {
        const double now = points(shortened_by(parts, shorter * in));
        REQUIRE(now > last);
        last = now;
    }
    const double before = points(parts);
    parts.grip_kg += 1 * g;
    REQUIRE(points(parts) < before);
    parts = driver();
    parts.head_kg += 1 * g;
    REQUIRE(points(parts) > before);
    // Beyond the fulcrum a heavier shaft weighs on the head's side.
    parts = driver();
    parts.shaft_kg += 1 * g;
    REQUIRE(points(parts) > before);
}

TEST_CASE("a cut and the head that makes up for it give the same swing weight") {
    for (const double to : {40.0, 44.0, 44.5, 45.25, 46.0, 47.5}) {
        const BuildChange change = change_build(driver(), {.length_m = to * in}, thumb);
        REQUIRE(change.restored);
        CAPTURE(to);
        REQUIRE_THAT(points(*change.restored), WithinAbs(points(driver()), 1e-9));
        REQUIRE((change.restored->head_kg > change.after.head_kg) == (to < 45.5));
        REQUIRE_THAT(change.points, WithinAbs(points(change.after) - points(driver()), 1e-12));
    }
}

TEST_CASE("each wish changes its part; a wished swing weight is reached") {
    const BuildWishes wishes{.shaft_kg = 70 * g,
                             .shaft_balance_share = 0.45,
                             .grip_kg = 42 * g,
                             .swing_weight = SwingWeight::of_points(32)};
    const BuildChange change = change_build(driver(), wishes, thumb);
    REQUIRE(change.after.shaft_kg == 70 * g);
    REQUIRE(change.after.shaft_balance_share == 0.45);
    REQUIRE(change.after.grip_kg == 42 * g);
    REQUIRE(change.after.length_m == driver().length_m);
    REQUIRE(change.restored);
    REQUIRE_THAT(points(*change.restored), WithinAbs(32.0, 1e-9));
    REQUIRE_FALSE(change.thumb_points);
}

TEST_CASE("a head that is named is not looked for; without a wish nothing changes") {
    const BuildChange named = change_build(driver(), {.length_m = 44.5 * in, .head_kg = 204 * g}, thumb);
    REQUIRE_FALSE(named.restored);
    REQUIRE(named.after.head_kg == 204 * g);
    REQUIRE(named.thumb_points);
    // An inch less: 6 points down; 6 g more: 3 up.
    REQUIRE_THAT(*named.thumb_points, WithinAbs(-3.0, 1e-9));

    const BuildChange none = change_build(driver(), {}, thumb);
    REQUIRE_FALSE(none.restored);
    REQUIRE_FALSE(none.thumb_points);
    REQUIRE(none.points == 0.0);
    require_same(none.after, driver());
}

TEST_CASE("no head is light enough for a swing weight below that of shaft and grip") {
    ClubParts heavy = driver();
    heavy.shaft_kg = 200 * g;
    heavy.grip_kg = 0.0;
    REQUIRE_FALSE(head_for(heavy, SwingWeight{0.001}));
    REQUIRE_FALSE(change_build(heavy, {.swing_weight = SwingWeight{0.001}}, thumb).restored);
}

TEST_CASE("a measured balance places the head") {
    ClubParts parts = driver();
    parts.head_centre_from_end_m = 0.8 * in;
    const SwingWeight measured = weights_of(parts).swing_weight;
    parts.head_centre_from_end_m = 0.0;
    REQUIRE_THAT(head_centre_for(parts, measured) / in, WithinAbs(0.8, 1e-9));
}

TEST_CASE("a butt cut of a measured club does not depend on how its moment is shared among the parts") {
    // Known by balance alone, head and shaft move as one; only the piece cut off matters.
    const SwingWeight measured = weights_of(driver()).swing_weight;
    double cut_points[2];
    for (const int i : {0, 1}) {
        ClubParts parts = driver();
        parts.shaft_balance_share = i == 0 ? 0.44 : 0.54;
        parts.head_centre_from_end_m = head_centre_for(parts, measured);
        cut_points[i] = points(shortened_by(parts, 1.0 * in));
    }
    REQUIRE_THAT(cut_points[0], WithinAbs(cut_points[1], 1e-9));
}
