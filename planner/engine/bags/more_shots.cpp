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

double variance_of(const std::vector<double>& values) {
    if (values.size() < 2) return 0.0;
    const auto n = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / n;
    double squares = 0.0;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    return squares / (n - 1.0);
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
    double all = 0.0;
    for (const OpenClub& club : clubs)
        all += variance_of(club.drawn);
    if (all <= nothing_open) return std::nullopt;
    std::optional<MoreShots> best;
    for (const OpenClub& club : clubs) {
        const double own = variance_of(club.drawn);
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
