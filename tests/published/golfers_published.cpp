// Golfers and shot patterns against published values, closed forms and Boost.Math.
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/non_central_chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <limits>
#include <string>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double normal_tail = std::numeric_limits<double>::infinity();
constexpr double tolerance = 1e-4;  // the worst here is 6e-5

// The points spread_point gives for a Fibonacci lattice of the unit square.
template <typename Inside>
double share(const Spread& spread, double tail_dof, Inside inside) {
    constexpr int count = 514229;
    constexpr long long step = 317811;
    int hits = 0;
    for (int i = 0; i < count; ++i) {
        const double u = (i + 0.5) / count;
        const double v = static_cast<double>(i * step % count) / count;
        if (inside(spread_point(spread, tail_dof, u, v))) ++hits;
    }
    return static_cast<double>(hits) / count;
}

// Distribution function of a standard normal or t.
double cdf(double tail_dof, double z) {
    if (std::isinf(tail_dof)) return boost::math::cdf(boost::math::normal(), z);
    return boost::math::cdf(boost::math::students_t(tail_dof), z);
}
double pdf(double tail_dof, double z) {
    if (std::isinf(tail_dof)) return boost::math::pdf(boost::math::normal(), z);
    return boost::math::pdf(boost::math::students_t(tail_dof), z);
}

double scale(double tail_dof) {
    return std::isinf(tail_dof) ? 1.0 : std::sqrt((tail_dof - 2) / tail_dof);
}

// Share with carry in [from, to] and side between two functions of carry, by quadrature over the carry: given
// the carry, the side of a bivariate t is a t with one degree more, wider the farther out the carry is.
template <typename Low, typename High>
double share_between(const Spread& s, double dof, double from, double to, Low low, High high) {
    const double carry_scale = s.carry_sd_m * scale(dof);
    const double side_scale = s.side_sd_m * scale(dof);
    const double rho = s.correlation;
    const auto strip = [&](double carry) {
        const double z = (carry - s.centre.carry_m) / carry_scale;
        const double widening = std::isinf(dof) ? 1.0 : std::sqrt((dof + z * z) / (dof + 1));
        const double centre = s.centre.side_m + rho * side_scale * z;
        const double width = side_scale * std::sqrt(1 - rho * rho) * widening;
        const double between =
            cdf(dof + 1, (high(carry) - centre) / width) - cdf(dof + 1, (low(carry) - centre) / width);
        return pdf(dof, z) / carry_scale * between;
    };
    return boost::math::quadrature::gauss_kronrod<double, 61>::integrate(strip, from, to, 12, 1e-10);
}

double total_yd(const Golfer& golfer, const char* club) {
    const ShotPattern& pattern = golfer.club(club)->pattern.value();
    return to_yards(pattern.usual.centre.carry_m + pattern.run_m);
}

// Standard deviation of the direction of a golfer's shots with one club, degrees.
double direction_sd_deg(const ShotPattern& pattern) {
    constexpr int count = 514229;
    constexpr long long step = 317811;
    const auto second_moment = [&](const Spread& spread, double dof) {
        double sum = 0;
        for (int i = 0; i < count; ++i) {
            const ShotOffset p =
                spread_point(spread, dof, (i + 0.5) / count, static_cast<double>(i * step % count) / count);
            const double direction = std::atan2(p.side_m, p.carry_m) / radians_per_degree;
            sum += direction * direction;
        }
        return sum / count;
    };
    const Mishit& mishit = pattern.mishit.value();
    return std::sqrt((1 - mishit.share) * second_moment(pattern.usual, pattern.tail_dof) +
                     mishit.share * second_moment(mishit.spread, normal_tail));
}

constexpr Spread tilted{{205, 3}, 13, 19, -0.35};
constexpr Spread round_spread{{200, -4}, 15, 15, 0};

}  // namespace

// USGA Course Rating System guide.
TEST_CASE("standard golfers reach 470, 370, 400 and 280 yards in two") {
    const auto in_two = [](const char* preset) {
        const Golfer golfer = preset_golfer(preset);
        return total_yd(golfer, "driver") + total_yd(golfer, "3-wood");
    };
    REQUIRE_THAT(in_two("scratch-man"), WithinAbs(470, 1e-9));
    REQUIRE_THAT(in_two("bogey-man"), WithinAbs(370, 1e-9));
    REQUIRE_THAT(in_two("scratch-woman"), WithinAbs(400, 1e-9));
    REQUIRE_THAT(in_two("bogey-woman"), WithinAbs(280, 1e-9));
}

// The same guide: 250, 200, 210 and 150 yd off the tee, the men's 225 + 25 and 180 + 20.
TEST_CASE("standard golfers' tee shots") {
    REQUIRE_THAT(total_yd(preset_golfer("scratch-man"), "driver"), WithinAbs(250, 1e-9));
    REQUIRE_THAT(total_yd(preset_golfer("bogey-man"), "driver"), WithinAbs(200, 1e-9));
    REQUIRE_THAT(total_yd(preset_golfer("scratch-woman"), "driver"), WithinAbs(210, 1e-9));
    REQUIRE_THAT(total_yd(preset_golfer("bogey-woman"), "driver"), WithinAbs(150, 1e-9));
    const auto carry_yd = [](const char* preset, const char* club) {
        return to_yards(preset_golfer(preset).club(club)->pattern.value().usual.centre.carry_m);
    };
    REQUIRE_THAT(carry_yd("scratch-man", "driver"), WithinAbs(225, 1e-9));
    REQUIRE_THAT(carry_yd("scratch-man", "3-wood"), WithinAbs(200, 1e-9));
    REQUIRE_THAT(carry_yd("bogey-man", "driver"), WithinAbs(180, 1e-9));
    REQUIRE_THAT(carry_yd("bogey-man", "3-wood"), WithinAbs(150, 1e-9));
}

// R&A and USGA distance reports 2018-2020: mean total of a tee shot by handicap band; here at the bands'
// centres.
TEST_CASE("mean drives by handicap") {
    struct Band {
        double index, men_yd, women_yd;
    };
    for (const Band& band : {Band{2.5, 240, 196}, Band{9, 220, 178}, Band{16.5, 204, 153}}) {
        GolferRequest request{.name = "x", .handicap_index = band.index};
        REQUIRE_THAT(total_yd(typical_golfer(request), "driver"), WithinAbs(band.men_yd, 0.06));
        request.reference = Reference::women;
        REQUIRE_THAT(total_yd(typical_golfer(request), "driver"), WithinAbs(band.women_yd, 0.06));
    }
}

// M. Broadie, Every Shot Counts, 2014, from memory: 3.4 deg for tour players, 6.5 deg for a 90-shooter
// (handicap 15 by assumption). Mishits are among these shots.
TEST_CASE("direction off the tee") {
    REQUIRE_THAT(direction_sd_deg(preset_golfer("tour").clubs[0].pattern.value()), WithinAbs(3.4, 0.1));
    const Golfer shoots_90 = typical_golfer({.name = "x", .handicap_index = 15, .drive_total_yd = 210});
    REQUIRE_THAT(direction_sd_deg(shoots_90.clubs[0].pattern.value()), WithinAbs(6.5, 0.2));
}

// Rules of Golf 4.1b: at most 14 clubs.
TEST_CASE("fourteen clubs are a legal bag, fifteen are not") {
    const Golfer golfer = preset_golfer("scratch-man");
    REQUIRE(golfer.clubs.size() == 14);
    const std::string text = profile_text(golfer);
    REQUIRE(parse_profile(text, "bag").golfer.clubs.size() == 14);
    const std::string list = "\"clubs\": [";
    const std::size_t first_club = text.find(list) + list.size();
    const std::string fifteen =
        std::string(text).insert(first_club, R"({"name": "old putter", "kind": "putter"}, )");
    try {
        parse_profile(fifteen, "bag");
        FAIL("fifteen clubs were read");
    } catch (const InputError& error) {
        REQUIRE(std::string(error.what()).find("Rules of Golf 4.1b") != std::string::npos);
    }
}

TEST_CASE("half-planes and strips: the marginals of a normal and a t (Boost.Math)") {
    for (const double dof : {3.0, 8.0, normal_tail}) {
        ShotPattern pattern;
        pattern.usual = tilted;
        pattern.tail_dof = dof;
        for (const double side : {-30.0, -4.0, 3.0, 21.0}) {
            const double expected = cdf(dof, (side - 3) / (19 * scale(dof)));
            REQUIRE_THAT(share_left_of(pattern, side), WithinAbs(expected, 1e-14));
            REQUIRE_THAT(share(tilted, dof, [&](ShotOffset p) { return p.side_m < side; }),
                         WithinAbs(expected, tolerance));
        }
        const double carried = cdf(dof, (215 - 205) / (13 * scale(dof)));
        REQUIRE_THAT(share(tilted, dof, [](ShotOffset p) { return p.carry_m < 215; }),
                     WithinAbs(carried, tolerance));
        const double strip = cdf(dof, (18 - 3) / (19 * scale(dof))) - cdf(dof, (-12 - 3) / (19 * scale(dof)));
        REQUIRE_THAT(share(tilted, dof, [](ShotOffset p) { return p.side_m > -12 && p.side_m < 18; }),
                     WithinAbs(strip, tolerance));
    }
}

TEST_CASE("a half-plane across the tilt: a line of any direction has a t or normal marginal") {
    // Direction (0.6, 0.8): variance 0.36 sc^2 + 0.64 ss^2 + 2 * 0.48 rho sc ss.
    const double sd = std::sqrt(0.36 * 169 + 0.64 * 361 + 0.96 * -0.35 * 13 * 19);
    const double mean = 0.6 * 205 + 0.8 * 3;
    for (const double dof : {4.0, normal_tail}) {
        for (const double bound : {mean - 20, mean, mean + 9}) {
            REQUIRE_THAT(
                share(tilted, dof, [&](ShotOffset p) { return 0.6 * p.carry_m + 0.8 * p.side_m < bound; }),
                WithinAbs(cdf(dof, (bound - mean) / (sd * scale(dof))), tolerance));
        }
    }
}

TEST_CASE("rectangles, centred and offset: quadrature of the conditional (Boost.Math)") {
    struct Rectangle {
        double from, to, left, right;
    };
    for (const double dof : {3.0, 8.0, normal_tail}) {
        for (const Rectangle& r :
             {Rectangle{190, 220, -15, 20}, Rectangle{215, 240, 5, 60}, Rectangle{150, 195, 10, 30}}) {
            const double expected = share_between(
                tilted, dof, r.from, r.to, [&](double) { return r.left; }, [&](double) { return r.right; });
            const double found = share(tilted, dof, [&](ShotOffset p) {
                return p.carry_m > r.from && p.carry_m < r.to && p.side_m > r.left && p.side_m < r.right;
            });
            CAPTURE(dof, r.from, expected);
            REQUIRE_THAT(found, WithinAbs(expected, tolerance));
        }
    }
}

TEST_CASE(
    "discs: closed form in the middle, noncentral chi-squared off it (Boost.Math), quadrature for the rest") {
    const auto in_disc = [](const Spread& spread, double dof, ShotOffset middle, double radius) {
        return share(spread, dof, [&](ShotOffset p) {
            return std::hypot(p.carry_m - middle.carry_m, p.side_m - middle.side_m) < radius;
        });
    };
    for (const double radius : {5.0, 15.0, 40.0}) {
        const double r = radius / 15;
        REQUIRE_THAT(in_disc(round_spread, normal_tail, {200, -4}, radius),
                     WithinAbs(1 - std::exp(-r * r / 2), tolerance));
        for (const double dof : {3.0, 8.0}) {
            const double q = r * r / (scale(dof) * scale(dof));
            REQUIRE_THAT(in_disc(round_spread, dof, {200, -4}, radius),
                         WithinAbs(1 - std::pow(1 + q / dof, -dof / 2), tolerance));
        }
        const double away2 = (12.0 * 12 + 9 * 9) / (15.0 * 15);
        const boost::math::non_central_chi_squared offset(2, away2);
        REQUIRE_THAT(in_disc(round_spread, normal_tail, {212, 5}, radius),
                     WithinAbs(boost::math::cdf(offset, r * r), tolerance));
        for (const Spread& spread : {round_spread, tilted}) {
            for (const double dof : {3.0, 8.0, normal_tail}) {
                const auto half_chord = [&](double carry) {
                    return std::sqrt(std::max(0.0, radius * radius - (carry - 212) * (carry - 212)));
                };
                const double expected = share_between(
                    spread, dof, 212 - radius, 212 + radius, [&](double c) { return 5 - half_chord(c); },
                    [&](double c) { return 5 + half_chord(c); });
                REQUIRE_THAT(in_disc(spread, dof, {212, 5}, radius), WithinAbs(expected, tolerance));
            }
        }
    }
}

// By the radius of a bivariate t, P(R > r) = (1 + r^2 / dof)^(-dof / 2): R^2 / 2 has Boost.Math's F
// distribution.
TEST_CASE("the landing ellipse holds half and nine tenths of the shots") {
    for (const double dof : {3.0, 8.0, 1000.0}) {
        for (const double wanted : {0.5, 0.9}) {
            ShotPattern pattern;
            pattern.usual = tilted;
            pattern.tail_dof = dof;
            const double radius = landing_ellipse(pattern, wanted).radius;
            const double held = boost::math::cdf(boost::math::fisher_f(2, dof), radius * radius / 2);
            REQUIRE_THAT(held, WithinAbs(wanted, 1e-12));
        }
    }
    ShotPattern normal;
    normal.usual = tilted;
    const double radius = landing_ellipse(normal, 0.9).radius;
    REQUIRE_THAT(boost::math::cdf(boost::math::chi_squared(2), radius * radius), WithinAbs(0.9, 1e-12));
}
