#include "planner/engine/field/hole_out.hpp"

#include <algorithm>

#include "geometry/units.hpp"
#include "planner/engine/tour_table.hpp"

namespace landwidth {

namespace {

// The longest putt a shot from beside the green is taken to leave.
constexpr double longest_left_ft = 60.0;

CloseShares putts(double tour_ft, double share, std::size_t before) {
    const PuttShares putts = tour_putt_shares(tour_ft);
    CloseShares shares{};
    shares[before + 1] = share * putts.one;
    shares[before + 2] = share * (1.0 - putts.one - putts.three);
    shares[before + 3] = share * putts.three;
    return shares;
}

// The tour putt of which a golfer takes so many on average, from those that a shot leaves.
double putt_taking(double strokes) {
    double short_of = 0.0;
    double beyond = longest_left_ft;
    for (int halving = 0; halving < 40; ++halving) {
        const double middle = 0.5 * (short_of + beyond);
        (tour_putts(middle) < strokes ? short_of : beyond) = middle;
    }
    return 0.5 * (short_of + beyond);
}

}  // namespace

HoleOut::HoleOut(const StrokesByDistance& table, const Golfer& golfer, const EngineAssumptions& assumptions)
    : table_(table), adjustment_(golfer, assumptions), short_game_m_(assumptions.short_game_zone_m) {}

CloseShares HoleOut::shares(Lie lie, double distance_m) const {
    if (lie == Lie::green) return putts(adjustment_.worth_putt_m(distance_m) / metres_per_foot, 1.0, 0);
    const double to_putt = table_.strokes(lie, distance_m) - 1.0;
    const double longest = tour_putts(longest_left_ft);
    if (to_putt <= longest) return putts(putt_taking(std::max(to_putt, 1.0)), 1.0, 1);
    // Every failed attempt costs one stroke.
    const double attempts = to_putt - longest;
    const double once = std::min(attempts, 1.0);
    const double twice = std::clamp(attempts - 1.0, 0.0, 1.0);
    CloseShares sum{};
    const auto add = [&](double share, std::size_t before) {
        const CloseShares part = putts(longest_left_ft, share, before);
        for (std::size_t n = 0; n < sum.size(); ++n)
            sum[n] += part[n];
    };
    add(1.0 - once, 1);
    add(once - twice, 2);
    add(twice, 3);
    return sum;
}

double HoleOut::cost(Lie lie, double distance_m, const GolferAim& aim, int used) const {
    if (aim.is_strokes()) return strokes(lie, distance_m);
    const CloseShares close = shares(lie, distance_m);
    double sum = 0.0;
    for (std::size_t n = 1; n < close.size(); ++n)
        sum += close[n] * aim.cost(used + static_cast<int>(n));
    return sum;
}

}  // namespace landwidth
