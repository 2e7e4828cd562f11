// Robust numbers of a sample.
#pragma once

#include <span>
#include <vector>

namespace landwidth {

// The middle value, or the mean of the two middle ones. Throws std::invalid_argument for none.
double median(std::vector<double> values);

// The median distance from the median times 1.4826: the standard deviation of a normal sample, whatever a
// few outliers do (F. Hampel, JASA 69, 1974). Throws std::invalid_argument for none.
double robust_deviation(const std::vector<double>& values);

// The value below which a share of the values lies, between the two nearest; share in [0, 1]. `sorted`
// ascending. Throws std::invalid_argument for none.
double quantile(std::span<const double> sorted, double share);

}  // namespace landwidth
