#include "tests/planner/engine/flown_heights.hpp"

#include <algorithm>
#include <cmath>

#include "golfer-profiles/club_flight.hpp"

namespace landwidth::fixture {

namespace {

constexpr double carry_step_m = 2.0;
// Beyond this share of the usual carry the shape of a flight is held.
constexpr double furthest_share = 1.5;

}  // namespace

FlownHeights::FlownHeights(const Club& club) {
    const ClubFlight flights(club);
    const int carries = static_cast<int>(furthest_share * flights.carry_m() / carry_step_m);
    for (int i = 1; i <= carries; ++i) {
        const Flight flight =
            fly(flights.launch_for(carry_step_m * i), reference_air(), flights.aerodynamics());
        std::vector<double> heights;
        std::size_t after = 1;
        for (int step = 0; step <= steps; ++step) {
            const double at = flight.landing.along_m * step / steps;
            while (after + 1 < flight.path.size() && flight.path[after].along_m < at)
                ++after;
            const FlightPoint& a = flight.path[after - 1];
            const FlightPoint& b = flight.path[after];
            const double share = (at - a.along_m) / (b.along_m - a.along_m);
            heights.push_back((a.height_m + share * (b.height_m - a.height_m)) / flight.landing.along_m);
        }
        heights_.push_back(std::move(heights));
    }
}

double FlownHeights::height_m(double at_m, double carry_m) const {
    if (!(carry_m > 0.0)) return 0.0;
    const double last = static_cast<double>(heights_.size()) - 1.0;
    const double row = std::clamp(carry_m / carry_step_m - 1.0, 0.0, last);
    const auto below = std::min(static_cast<std::size_t>(row), heights_.size() - 2);
    const double step = std::clamp(at_m / carry_m, 0.0, 1.0) * steps;
    const auto before = std::min(static_cast<std::size_t>(step), std::size_t{steps} - 1);
    const double on = step - static_cast<double>(before);
    const auto at = [&](const std::vector<double>& heights) {
        return heights[before] + on * (heights[before + 1] - heights[before]);
    };
    const double between = row - static_cast<double>(below);
    return carry_m * ((1.0 - between) * at(heights_[below]) + between * at(heights_[below + 1]));
}

std::optional<double> FlownHeights::first_below(double top_m, double from_m, double to_m,
                                                double carry_m) const {
    if (height_m(from_m, carry_m) < top_m) return from_m;
    if (height_m(to_m, carry_m) >= top_m) return std::nullopt;
    double over = from_m;
    double under = to_m;
    while (under - over > 0.01)
        (height_m(0.5 * (over + under), carry_m) >= top_m ? over : under) = 0.5 * (over + under);
    return under;
}

}  // namespace landwidth::fixture
