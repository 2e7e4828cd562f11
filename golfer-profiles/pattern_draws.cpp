#include "golfer-profiles/pattern_draws.hpp"

#include <algorithm>
#include <boost/random/beta_distribution.hpp>
#include <boost/random/chi_squared_distribution.hpp>
#include <boost/random/normal_distribution.hpp>
#include <cmath>

#include "golfer-profiles/counter_bits.hpp"

namespace landwidth {

namespace {

// Lower triangle of a 2 x 2 matrix.
struct Triangle {
    double a, b, c;  // a 0 / b c
};

Triangle root_of(const Spread& s) {
    return {s.carry_sd_m, s.correlation * s.side_sd_m,
            s.side_sd_m * std::sqrt(1.0 - s.correlation * s.correlation)};
}

// A root of an inverse Wishart draw of mean about S, by Bartlett's decomposition of the Wishart of the
// whitened precision.
Triangle drawn_root(const Triangle& root, double n, CounterBits& bits) {
    const double first = std::sqrt(boost::random::chi_squared_distribution<double>(n)(bits));
    const double second = std::sqrt(boost::random::chi_squared_distribution<double>(n - 1.0)(bits));
    const double below = boost::random::normal_distribution<double>()(bits);
    // With W = T T', T = (first 0 / below second), the drawn covariance is L W^-1 L' n: root L T'^-1 sqrt(n),
    // whose transpose-inverse is upper triangular; rotated back to a lower triangle by its covariance.
    const double p = 1.0 / first;
    const double q = -below / (first * second);
    const double r = 1.0 / second;
    const double scale = n;
    const double xx = scale * (p * p + q * q);
    const double xy = scale * q * r;
    const double yy = scale * r * r;
    const double carry = root.a * root.a * xx;
    const double both = root.a * (root.b * xx + root.c * xy);
    const double side = root.b * root.b * xx + 2.0 * root.b * root.c * xy + root.c * root.c * yy;
    const double a = std::sqrt(carry);
    return {a, both / a, std::sqrt(std::max(side - both * both / carry, 1e-12))};
}

ShotPattern drawn_pattern(const ShotPattern& pattern, double worth_shots, std::uint64_t club,
                          std::uint64_t draw) {
    const double n = std::max(2.0, static_cast<double>(pattern.shots) + worth_shots);
    CounterBits bits(mixed(club + 1) ^ mixed(mixed(draw + 1)));
    ShotPattern drawn = pattern;
    const Triangle root = drawn_root(root_of(pattern.usual), n, bits);
    boost::random::normal_distribution<double> normal;
    const double z_carry = normal(bits) / std::sqrt(n);
    const double z_side = normal(bits) / std::sqrt(n);
    Spread& usual = drawn.usual;
    usual.centre.carry_m += root.a * z_carry;
    usual.centre.side_m += root.b * z_carry + root.c * z_side;
    usual.carry_sd_m = root.a;
    usual.side_sd_m = std::hypot(root.b, root.c);
    usual.correlation = std::clamp(root.b / usual.side_sd_m, -0.999, 0.999);
    if (pattern.mishit && pattern.mishit->share > 0.0) {
        const double share = pattern.mishit->share;
        boost::random::beta_distribution<double> beta(n * share + 0.5, n * (1.0 - share) + 0.5);
        drawn.mishit->share = std::min(beta(bits), 0.999);
    }
    return drawn;
}

}  // namespace

std::vector<ShotPattern> drawn_patterns(const Club& club, const PatternPrior& weight, std::uint64_t stream,
                                        int count) {
    std::vector<ShotPattern> draws;
    for (int draw = 0; draw < count; ++draw)
        draws.push_back(
            drawn_pattern(*club.pattern, weight.worth_shots, stream, static_cast<std::uint64_t>(draw)));
    return draws;
}

}  // namespace landwidth
