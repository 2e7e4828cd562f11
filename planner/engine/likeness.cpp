#include "planner/engine/likeness.hpp"

#include <algorithm>
#include <cmath>

#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {

Interval middle_of(std::vector<double> draws) {
    if (draws.empty()) return {0.0, 0.0};
    std::ranges::sort(draws);
    return {quantile(draws, 0.5 * (1.0 - interval_share)), quantile(draws, 0.5 * (1.0 + interval_share))};
}

bool is_same(const std::vector<double>& draws) {
    constexpr double rounding = 1e-9;
    return std::ranges::all_of(draws, [](double draw) { return std::abs(draw) < rounding; });
}

bool is_alike(const Interval& difference, double equal_within) {
    return difference.low >= -equal_within && difference.high <= equal_within;
}

double share_better(const std::vector<double>& draws) {
    if (draws.empty()) return 0.5;
    double better = 0.0;
    for (const double draw : draws)
        better += draw >= least_difference ? 1.0 : draw > -least_difference ? 0.5 : 0.0;
    return better / static_cast<double>(draws.size());
}

}  // namespace landwidth
