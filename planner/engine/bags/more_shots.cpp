#include "planner/engine/bags/more_shots.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <numeric>

namespace landwidth {

namespace {

constexpr int quantiles = 400;
// A variance below this is rounding: three hundredths of a thousandth of a stroke.
constexpr double nothing_open = 1e-9;

// As many of each; with the divisor n - 1.
double covariance_of(const std::vector<double>& a, const std::vector<double>& b) {
    if (a.size() < 2) return 0.0;
    const auto n = static_cast<double>(a.size());
    const double mean_a = std::accumulate(a.begin(), a.end(), 0.0) / n;
    const double mean_b = std::accumulate(b.begin(), b.end(), 0.0) / n;
    double products = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i)
        products += (a[i] - mean_a) * (b[i] - mean_b);
    return products / (n - 1.0);
}

// The variance of the gain that goes with a club's part.
double explained_by(const std::vector<double>& part, const std::vector<double>& gain) {
    const double own = covariance_of(part, part);
    if (own <= nothing_open) return 0.0;
    const double both = covariance_of(part, gain);
    return std::min(both * both / own, covariance_of(gain, gain));
}

std::vector<double> added_up(std::span<const OpenClub> clubs) {
    std::vector<double> gain;
    for (const OpenClub& club : clubs) {
        gain.resize(club.drawn.size(), 0.0);
        for (std::size_t draw = 0; draw < gain.size(); ++draw)
            gain[draw] += club.drawn[draw];
    }
    return gain;
}

struct After {
    double chance_right;
    double worth;
};

// Once the expected gain has moved by a normal of variance `told`, with `left` still open.
After after(double mean, double told, double left) {
    const boost::math::normal standard;
    After sum{0.0, -std::max(0.0, mean)};
    for (int i = 0; i < quantiles; ++i) {
        const double z = boost::math::quantile(standard, (i + 0.5) / quantiles);
        const double then = mean + z * std::sqrt(told);
        sum.chance_right += chance_right_now(then, left) / quantiles;
        sum.worth += std::max(0.0, then) / quantiles;
    }
    sum.worth = std::max(0.0, sum.worth);
    return sum;
}

}  // namespace

double chance_right_now(double mean, double variance) {
    if (variance <= 0.0) return 1.0;
    return boost::math::cdf(boost::math::normal(), std::abs(mean) / std::sqrt(variance));
}

std::optional<MoreShots> more_shots(double mean, std::span<const OpenClub> clubs, double settled_at,
                                    int most_shots) {
    const std::vector<double> gain = added_up(clubs);
    const double all = covariance_of(gain, gain);
    if (all <= nothing_open) return std::nullopt;
    std::optional<MoreShots> best;
    for (const OpenClub& club : clubs) {
        const double own = explained_by(club.drawn, gain);
        const auto with = [&](int shots) {
            const double told = own * shots / (shots + club.shots_known);
            const After then = after(mean, told, all - told);
            return MoreShots{club.club, shots, then.chance_right, then.worth,
                             then.chance_right >= settled_at};
        };
        MoreShots found = with(most_shots);
        if (found.settles) {
            // The expected chance grows with the shots.
            int few = 0;
            int many = most_shots;
            while (many - few > 1) {
                const int middle = (few + many) / 2;
                (with(middle).settles ? many : few) = middle;
            }
            found = with(many);
        }
        const bool better = !best || (found.settles != best->settles ? found.settles
                                      : found.settles                ? found.shots < best->shots
                                                      : found.chance_right > best->chance_right);
        if (better) best = found;
    }
    return best;
}

}  // namespace landwidth
