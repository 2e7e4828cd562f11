#include "planner/engine/likeness.hpp"

#include <algorithm>
#include <cstddef>

namespace landwidth {

namespace {

// Between the two nearest of the sorted values.
double quantile_of(const std::vector<double>& sorted, double share) {
    const double place = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (place - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

}  // namespace

Interval middle_of(std::vector<double> draws) {
    if (draws.empty()) return {0.0, 0.0};
    std::ranges::sort(draws);
    return {quantile_of(draws, 0.5 * (1.0 - interval_share)),
            quantile_of(draws, 0.5 * (1.0 + interval_share))};
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
