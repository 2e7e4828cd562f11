#include "golfer-profiles/shot_pattern.hpp"

#include <cmath>
#include <numbers>

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double normal_tail = std::numeric_limits<double>::infinity();
constexpr Spread tilted{{200, 5}, 12, 18, -0.4};

// Calls `visit` with the points of a Fibonacci lattice pushed through the inversion: 28,657 shots, evenly
// spread.
template <typename Visit>
void for_shots(const Spread& spread, double tail_dof, Visit visit) {
    constexpr int count = 28657;
    constexpr int step = 17711;
    for (int i = 0; i < count; ++i) {
        const double u = (i + 0.5) / count;
        const double v = std::fmod(static_cast<double>(i) * step / count + 0.5 / count, 1.0);
        visit(spread_point(spread, tail_dof, u, v));
    }
}

double mahalanobis(const Spread& s, ShotOffset p) {
    const double a = (p.carry_m - s.centre.carry_m) / s.carry_sd_m;
    const double b = (p.side_m - s.centre.side_m) / s.side_sd_m;
    const double rho = s.correlation;
    return std::sqrt((a * a - 2 * rho * a * b + b * b) / (1 - rho * rho));
}

ShotPattern with_mishit(double share) {
    ShotPattern pattern;
    pattern.usual = {{200, 0}, 10, 20, 0.5};
    pattern.mishit = Mishit{share, {{160, 8}, 20, 30, 0.0}};
    return pattern;
}

}  // namespace

TEST_CASE("a shot with u = 0 lands at the centre, whatever the direction and the tail") {
    for (const double dof : {2.1, 8.0, normal_tail}) {
        for (const double v : {0.0, 0.3, 0.999}) {
            const ShotOffset p = spread_point(tilted, dof, 0.0, v);
            REQUIRE(p == tilted.centre);
        }
    }
}

TEST_CASE("the largest u below 1 still gives a finite landing point") {
    const double u = std::nextafter(1.0, 0.0);
    for (const double dof : {2.0001, 5.0, normal_tail}) {
        REQUIRE(std::isfinite(spread_point(tilted, dof, u, 0.1).carry_m));
    }
}

TEST_CASE("the smallest u keep their digits: the radius is the square root of 2u") {
    const Spread unit{{0, 0}, 1, 1, 0};
    REQUIRE_THAT(spread_point(unit, normal_tail, 1e-20, 0.0).carry_m, WithinRel(std::sqrt(2e-20), 1e-12));
    // A t with 8 degrees: the same, shrunk to the scale that gives sd 1.
    REQUIRE_THAT(spread_point(unit, 8, 1e-20, 0.0).carry_m, WithinRel(std::sqrt(2e-20 * 6 / 8), 1e-12));
}

TEST_CASE("a pattern without mishits has the moments of its usual shot") {
    ShotPattern pattern;
    pattern.usual = tilted;
    const PatternMoments m = moments(pattern);
    REQUIRE(m.mean == tilted.centre);
    REQUIRE_THAT(m.carry_variance, WithinRel(144.0, 1e-14));
    REQUIRE_THAT(m.side_variance, WithinRel(324.0, 1e-14));
    REQUIRE_THAT(m.covariance, WithinRel(-0.4 * 12 * 18, 1e-14));
}

TEST_CASE("a mishit with share 0 changes nothing") {
    ShotPattern none = with_mishit(0.0);
    none.mishit.reset();
    const ShotPattern zero = with_mishit(0.0);
    REQUIRE(moments(zero).side_variance == moments(none).side_variance);
    REQUIRE(share_left_of(zero, 7.0) == share_left_of(none, 7.0));
}

TEST_CASE("opposite directions lie on opposite sides of the centre") {
    for (const double u : {0.1, 0.5, 0.99}) {
        for (const double v : {0.0, 0.13, 0.4}) {
            const ShotOffset p = spread_point(tilted, 5, u, v);
            const ShotOffset q = spread_point(tilted, 5, u, v + 0.5);
            REQUIRE_THAT(p.carry_m + q.carry_m, WithinAbs(2 * tilted.centre.carry_m, 1e-9));
            REQUIRE_THAT(p.side_m + q.side_m, WithinAbs(2 * tilted.centre.side_m, 1e-9));
        }
    }
}

TEST_CASE("the standard deviations are those of the shots, for every tail") {
    for (const double dof : {6.0, 12.0, normal_tail}) {
        double n = 0, carry = 0, side = 0, carry2 = 0, side2 = 0, both = 0;
        for_shots(tilted, dof, [&](ShotOffset p) {
            const double a = p.carry_m - tilted.centre.carry_m;
            const double b = p.side_m - tilted.centre.side_m;
            n += 1, carry += a, side += b, carry2 += a * a, side2 += b * b, both += a * b;
        });
        // The lattice cannot reach the outermost 1/57,000 of the tail.
        const double reach = std::isinf(dof) ? 0.001 : 0.006;
        REQUIRE_THAT(carry / n, WithinAbs(0.0, 0.01));
        REQUIRE_THAT(side / n, WithinAbs(0.0, 0.01));
        REQUIRE_THAT(std::sqrt(carry2 / n), WithinRel(tilted.carry_sd_m, reach));
        REQUIRE_THAT(std::sqrt(side2 / n), WithinRel(tilted.side_sd_m, reach));
        REQUIRE_THAT(both / std::sqrt(carry2 * side2), WithinAbs(tilted.correlation, 0.002));
    }
}

TEST_CASE("many degrees of freedom are a normal") {
    for (const double u : {0.01, 0.5, 0.95}) {
        const ShotOffset t = spread_point(tilted, 1e9, u, 0.2);
        const ShotOffset normal = spread_point(tilted, normal_tail, u, 0.2);
        REQUIRE_THAT(t.carry_m, WithinAbs(normal.carry_m, 1e-6));
        REQUIRE_THAT(t.side_m, WithinAbs(normal.side_m, 1e-6));
    }
}

TEST_CASE("the landing ellipse holds its share of the usual shots") {
    for (const double dof : {4.0, normal_tail}) {
        for (const double share : {0.5, 0.9}) {
            ShotPattern pattern;
            pattern.usual = tilted;
            pattern.tail_dof = dof;
            const LandingEllipse ellipse = landing_ellipse(pattern, share);
            const Spread scale{ellipse.centre, ellipse.carry_sd_m, ellipse.side_sd_m, ellipse.correlation};
            double inside = 0, all = 0;
            for_shots(tilted, dof, [&](ShotOffset p) {
                all += 1;
                if (mahalanobis(scale, p) <= ellipse.radius) inside += 1;
            });
            REQUIRE_THAT(inside / all, WithinAbs(share, 1e-4));
            for (const double angle : {-1.0, 0.0, 2.0, 9.0}) {
                REQUIRE_THAT(mahalanobis(scale, ellipse.rim(angle)), WithinRel(ellipse.radius, 1e-12));
            }
        }
    }
}

TEST_CASE("the rim of the ellipse is where shots of that u land") {
    ShotPattern pattern;
    pattern.usual = tilted;
    pattern.tail_dof = 7;
    const ShotOffset rim = landing_ellipse(pattern, 0.9).rim(2 * std::numbers::pi * 0.3);
    const ShotOffset shot = spread_point(tilted, 7, 0.9, 0.3);
    REQUIRE_THAT(rim.carry_m, WithinAbs(shot.carry_m, 1e-9));
    REQUIRE_THAT(rim.side_m, WithinAbs(shot.side_m, 1e-9));
}

TEST_CASE("the share left of a line grows from 0 to 1, and a mirrored pattern has it on the right") {
    ShotPattern pattern = with_mishit(0.1);
    pattern.tail_dof = 5;
    ShotPattern mirrored = pattern;
    mirrored.usual.centre.side_m *= -1;
    mirrored.mishit->spread.centre.side_m *= -1;
    double before = share_left_of(pattern, -1e7);
    REQUIRE_THAT(before, WithinAbs(0.0, 1e-12));
    for (double side = -80; side <= 80; side += 4) {
        const double share = share_left_of(pattern, side);
        REQUIRE(share > before);
        REQUIRE_THAT(share_left_of(mirrored, -side), WithinAbs(1.0 - share, 1e-12));
        before = share;
    }
    REQUIRE_THAT(share_left_of(pattern, 1e7), WithinAbs(1.0, 1e-12));
}

TEST_CASE("hand numbers: landing points") {
    // Normal, u = 1 - exp(-1/2): radius 1. Straight along (v = 0) the side follows by the correlation.
    const ShotOffset along = spread_point(tilted, normal_tail, 1 - std::exp(-0.5), 0.0);
    REQUIRE_THAT(along.carry_m, WithinAbs(212.0, 1e-9));
    REQUIRE_THAT(along.side_m, WithinAbs(5 - 0.4 * 18, 1e-9));
    // t with 4 degrees, u = 3/4: radius^2 = 4 (2 - 1) = 4; scale = sd sqrt(1/2); a quarter turn is all side.
    const ShotOffset across = spread_point(tilted, 4, 0.75, 0.25);
    REQUIRE_THAT(across.carry_m, WithinAbs(200.0, 1e-9));
    REQUIRE_THAT(across.side_m, WithinAbs(5 + 2 * std::sqrt(0.5) * 18 * std::sqrt(1 - 0.16), 1e-9));
}

TEST_CASE("hand numbers: moments of a mixture") {
    const PatternMoments m = moments(with_mishit(0.25));
    REQUIRE_THAT(m.mean.carry_m, WithinAbs(190, 1e-12));
    REQUIRE_THAT(m.mean.side_m, WithinAbs(2, 1e-12));
    REQUIRE_THAT(m.carry_variance, WithinAbs(0.75 * (100 + 100) + 0.25 * (400 + 900), 1e-9));
    REQUIRE_THAT(m.side_variance, WithinAbs(0.75 * (400 + 4) + 0.25 * (900 + 36), 1e-9));
    REQUIRE_THAT(m.covariance, WithinAbs(0.75 * (100 - 20) + 0.25 * (0 - 180), 1e-9));
}

TEST_CASE("hand numbers: shares left of a line") {
    ShotPattern pattern;
    pattern.usual = tilted;
    REQUIRE_THAT(share_left_of(pattern, 5), WithinAbs(0.5, 1e-15));
    REQUIRE_THAT(share_left_of(pattern, 23), WithinAbs(0.5 + 0.5 * std::erf(std::sqrt(0.5)), 1e-14));
    // t with 3 degrees at one scale unit: 1/2 + (1/pi) (atan(1/sqrt 3) + (1/sqrt 3) / (1 + 1/3)).
    pattern.tail_dof = 3;
    const double root = 1 / std::sqrt(3.0);
    const double expected = 0.5 + (std::atan(root) + root / (4.0 / 3.0)) / std::numbers::pi;
    REQUIRE_THAT(share_left_of(pattern, 5 + 18 * root), WithinAbs(expected, 1e-12));
    // Half of the shots are mishits, none of them left of a line far left of their centre.
    pattern.tail_dof = normal_tail;
    pattern.mishit = Mishit{0.5, {{100, 1000}, 1, 1, 0}};
    REQUIRE_THAT(share_left_of(pattern, 5), WithinAbs(0.25, 1e-14));
}
