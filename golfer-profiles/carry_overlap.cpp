#include "golfer-profiles/carry_overlap.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

namespace landwidth {
namespace {

// The carry of a usual shot: a t, or a normal, with this standard deviation.
class CarryDistribution {
  public:
    explicit CarryDistribution(const ShotPattern& pattern)
        : mean_(pattern.usual.centre.carry_m), scale_(pattern.usual.carry_sd_m), dof_(pattern.tail_dof) {
        if (!std::isinf(dof_)) scale_ *= std::sqrt((dof_ - 2.0) / dof_);
    }
    double below(double carry_m) const {
        const double z = (carry_m - mean_) / scale_;
        return std::isinf(dof_) ? boost::math::cdf(boost::math::normal(), z)
                                : boost::math::cdf(boost::math::students_t(dof_), z);
    }
    double quantile(double share) const {
        const double z = std::isinf(dof_) ? boost::math::quantile(boost::math::normal(), share)
                                          : boost::math::quantile(boost::math::students_t(dof_), share);
        return mean_ + scale_ * z;
    }

  private:
    double mean_, scale_, dof_;
};

}  // namespace

double chance_longer_is_shorter(const ShotPattern& longer, const ShotPattern& shorter) {
    constexpr int points = 40;
    const CarryDistribution of_longer(longer);
    const CarryDistribution of_shorter(shorter);
    double sum = 0.0;
    for (int i = 0; i < points; ++i)
        sum += of_longer.below(of_shorter.quantile((i + 0.5) / points));
    return sum / points;
}

}  // namespace landwidth
