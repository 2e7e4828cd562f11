#include "golfer-profiles/sessions/bay_widening.hpp"

#include <algorithm>
#include <cmath>

#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {

void widen(const std::vector<ShotOffset*>& shots, double factor) {
    constexpr std::size_t fewest = 3;
    constexpr double usual_sd = 3.0;
    constexpr double least_deviation_m = 0.1, least_carry_m = 1.0;
    if (shots.size() < fewest || factor == 1.0) return;
    std::vector<double> carries, sides;
    for (const ShotOffset* shot : shots) {
        carries.push_back(shot->carry_m);
        sides.push_back(shot->side_m);
    }
    const ShotOffset middle{median(carries), median(sides)};
    const double carry_deviation = std::max(robust_deviation(carries), least_deviation_m);
    const double side_deviation = std::max(robust_deviation(sides), least_deviation_m);
    for (ShotOffset* shot : shots) {
        const ShotOffset out{shot->carry_m - middle.carry_m, shot->side_m - middle.side_m};
        const double sds = std::hypot(out.carry_m / carry_deviation, out.side_m / side_deviation);
        if (sds == 0.0) continue;
        const double further = (factor - 1.0) * std::min(1.0, usual_sd / sds);
        shot->carry_m =
            std::max(std::min(least_carry_m, shot->carry_m), shot->carry_m + further * out.carry_m);
        shot->side_m += further * out.side_m;
    }
}

}  // namespace landwidth
