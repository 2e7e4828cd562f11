#include "planner/engine/score_distribution.hpp"

#include <algorithm>

namespace landwidth {

double ScoreDistribution::mean() const {
    double sum = 0.0;
    for (std::size_t n = 0; n < shares.size(); ++n)
        sum += static_cast<double>(n) * shares[n];
    return sum;
}

double ScoreDistribution::variance() const {
    const double centre = mean();
    double sum = 0.0;
    for (std::size_t n = 0; n < shares.size(); ++n)
        sum += (static_cast<double>(n) - centre) * (static_cast<double>(n) - centre) * shares[n];
    return sum;
}

double ScoreDistribution::between(int from, int to) const {
    double sum = 0.0;
    for (int n = std::max(from, 0); n <= to && n < static_cast<int>(shares.size()); ++n)
        sum += shares[static_cast<std::size_t>(n)];
    return sum;
}

ScoreDistribution sum_of(const std::vector<ScoreDistribution>& holes) {
    ScoreDistribution sum;
    for (const ScoreDistribution& hole : holes) {
        if (hole.empty()) return {};
        if (sum.empty()) {
            sum = hole;
            continue;
        }
        std::vector<double> shares(sum.shares.size() + hole.shares.size() - 1, 0.0);
        for (std::size_t i = 0; i < sum.shares.size(); ++i)
            for (std::size_t j = 0; j < hole.shares.size(); ++j)
                shares[i + j] += sum.shares[i] * hole.shares[j];
        sum.shares = std::move(shares);
    }
    return sum;
}

}  // namespace landwidth
