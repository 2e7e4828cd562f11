#include "golfer-profiles/shot_pattern.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <numbers>

namespace landwidth {
namespace {

// Standard deviation to scale: a t with few degrees of freedom spreads wider than its scale matrix says.
double scale_of_sd(double tail_dof) {
    return std::isinf(tail_dof) ? 1.0 : std::sqrt((tail_dof - 2.0) / tail_dof);
}

// The Mahalanobis radius that a share u of a bivariate t stays within: P(R > r) = (1 + r^2 / dof)^(-dof / 2),
// inverted; the normal is its limit. log1p and expm1 keep the digits for u near 0 and for many degrees of
// freedom.
double radius_of_share(double u, double tail_dof) {
    const double log_outside = std::log1p(-u);
    if (std::isinf(tail_dof)) return std::sqrt(-2.0 * log_outside);
    return std::sqrt(tail_dof * std::expm1(-2.0 / tail_dof * log_outside));
}

struct Scale {
    double carry, side, correlation;
};

ShotOffset at(const ShotOffset& centre, const Scale& scale, double radius, double angle) {
    const double along = radius * std::cos(angle);
    const double across = radius * std::sin(angle);
    const double rho = scale.correlation;
    return {centre.carry_m + scale.carry * along,
            centre.side_m + scale.side * (rho * along + std::sqrt(1.0 - rho * rho) * across)};
}

double share_left_of(const Spread& spread, double tail_dof, double side_m) {
    const double z = (side_m - spread.centre.side_m) / (spread.side_sd_m * scale_of_sd(tail_dof));
    if (std::isinf(tail_dof)) return boost::math::cdf(boost::math::normal(), z);
    return boost::math::cdf(boost::math::students_t(tail_dof), z);
}

LandingEllipse ellipse_of(const Spread& spread, double tail_dof, double share) {
    const double scale = scale_of_sd(tail_dof);
    return {.centre = spread.centre,
            .carry_sd_m = scale * spread.carry_sd_m,
            .side_sd_m = scale * spread.side_sd_m,
            .correlation = spread.correlation,
            .radius = radius_of_share(share, tail_dof)};
}

struct WeightedSpread {
    double weight;
    Spread spread;
};

// Adds one part of a mixture to its second moments about `mean`.
void add_part(PatternMoments& sum, const WeightedSpread& part) {
    const Spread& s = part.spread;
    const double off_carry = s.centre.carry_m - sum.mean.carry_m;
    const double off_side = s.centre.side_m - sum.mean.side_m;
    sum.carry_variance += part.weight * (s.carry_sd_m * s.carry_sd_m + off_carry * off_carry);
    sum.side_variance += part.weight * (s.side_sd_m * s.side_sd_m + off_side * off_side);
    sum.covariance += part.weight * (s.correlation * s.carry_sd_m * s.side_sd_m + off_carry * off_side);
}

}  // namespace

Spread spread_of(const Spread& usual, const Way& way) {
    return {{usual.centre.carry_m + way.carry_sds * usual.carry_sd_m,
             usual.centre.side_m + way.side_sds * usual.side_sd_m},
            way.carry_spread * usual.carry_sd_m,
            way.side_spread * usual.side_sd_m,
            way.correlation};
}

ShotOffset spread_point(const Spread& spread, double tail_dof, double u, double v) {
    const double scale = scale_of_sd(tail_dof);
    return at(spread.centre, {scale * spread.carry_sd_m, scale * spread.side_sd_m, spread.correlation},
              radius_of_share(u, tail_dof), 2.0 * std::numbers::pi * v);
}

ShotOffset LandingEllipse::rim(double angle) const {
    return at(centre, {carry_sd_m, side_sd_m, correlation}, radius, angle);
}

LandingEllipse landing_ellipse(const ShotPattern& pattern, double share) {
    return ellipse_of(pattern.usual, pattern.tail_dof, share);
}

std::vector<LandingEllipse> landing_ellipses(const ShotPattern& pattern, double share) {
    if (!pattern.ways) return {landing_ellipse(pattern, share)};
    std::vector<LandingEllipse> ellipses;
    for (const Way& way : *pattern.ways)
        ellipses.push_back(ellipse_of(spread_of(pattern.usual, way), pattern.tail_dof, share));
    return ellipses;
}

PatternMoments moments(const ShotPattern& pattern) {
    const double share = pattern.mishit ? pattern.mishit->share : 0.0;
    PatternMoments result{
        .mean = pattern.usual.centre, .carry_variance = 0, .side_variance = 0, .covariance = 0};
    if (pattern.mishit) {
        const ShotOffset& mishit = pattern.mishit->spread.centre;
        result.mean.carry_m += share * (mishit.carry_m - result.mean.carry_m);
        result.mean.side_m += share * (mishit.side_m - result.mean.side_m);
        add_part(result, {share, pattern.mishit->spread});
    }
    if (pattern.ways) {
        for (const Way& way : *pattern.ways)
            add_part(result, {(1.0 - share) * way.share, spread_of(pattern.usual, way)});
    } else {
        add_part(result, {1.0 - share, pattern.usual});
    }
    return result;
}

double share_left_of(const ShotPattern& pattern, double side_m) {
    double usual = 0.0;
    if (pattern.ways) {
        for (const Way& way : *pattern.ways)
            usual += way.share * share_left_of(spread_of(pattern.usual, way), pattern.tail_dof, side_m);
    } else {
        usual = share_left_of(pattern.usual, pattern.tail_dof, side_m);
    }
    if (!pattern.mishit) return usual;
    const double normal_tail = std::numeric_limits<double>::infinity();
    const double mishit = share_left_of(pattern.mishit->spread, normal_tail, side_m);
    return usual + pattern.mishit->share * (mishit - usual);
}

}  // namespace landwidth
