// How high the balls of a club are on their way on the reference day: flights flown one by one
// (ball_flight.hpp), two metres of carry apart. Knows nothing of the engine's tables.
#pragma once

#include <optional>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth::fixture {

class FlownHeights {
  public:
    explicit FlownHeights(const Club& club);

    // Over where it was hit, of a ball hit straight that lands after carry_m; at_m in [0, carry_m].
    double height_m(double at_m, double carry_m) const;
    // The first place of a stretch of the way where a ball is below `top_m`. Needs a stretch in which it
    // rises before it falls, as balls do.
    std::optional<double> first_below(double top_m, double from_m, double to_m, double carry_m) const;

  private:
    static constexpr int steps = 200;
    std::vector<std::vector<double>> heights_;  // by carry and step of the way, as a share of the carry
};

}  // namespace landwidth::fixture
