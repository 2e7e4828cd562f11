#include "golfer-profiles/order_statistics.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace landwidth {

double median(std::vector<double> values) {
    if (values.empty()) throw std::invalid_argument("the median of nothing");
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) return *middle;
    return (*middle + *std::max_element(values.begin(), middle)) / 2.0;
}

double robust_deviation(const std::vector<double>& values) {
    constexpr double of_normal = 1.4826;
    const double centre = median(values);
    std::vector<double> distances(values.size());
    std::transform(values.begin(), values.end(), distances.begin(),
                   [&](double value) { return std::abs(value - centre); });
    return of_normal * median(std::move(distances));
}

double quantile(std::span<const double> sorted, double share) {
    if (sorted.empty()) throw std::invalid_argument("a quantile of no values");
    const double place = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (place - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

}  // namespace landwidth
