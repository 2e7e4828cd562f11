// Whether a ball gets past woods that stand on its way.
//
// The one place where the height of a ball and of trees matters. Until flight is computed a ball counts as
// low in the first and the last part of its carry, and woods there stop a stated share of the balls; in
// between all fly over. A stopped ball drops where the woods begin.
#pragma once

#include "planner/engine/engine_assumptions.hpp"

namespace landwidth {

class FlightClearance {
  public:
    FlightClearance() = default;
    FlightClearance(const FlightClearance&) = delete;
    FlightClearance& operator=(const FlightClearance&) = delete;
    virtual ~FlightClearance() = default;

    // The share of balls, of those that fly `carry_m`, which woods at `woods_at_m` from where the ball was
    // hit stop; in [0, 1]. 0 <= woods_at_m <= carry_m.
    virtual double stopped_share(double woods_at_m, double carry_m) const = 0;
    // Woods further than this from either end of a carry stop nothing: a bound for the search.
    virtual double low_reach_m(double carry_m) const = 0;
};

// The stated share; constants in assumptions.cpp.
class LowEndsClearance final : public FlightClearance {
  public:
    explicit LowEndsClearance(const EngineAssumptions& assumptions)
        : low_share_(assumptions.low_flight_share), stopped_(assumptions.trees_stop_share) {}

    double stopped_share(double woods_at_m, double carry_m) const override {
        const double reach = low_reach_m(carry_m);
        return woods_at_m < reach || woods_at_m > carry_m - reach ? stopped_ : 0.0;
    }
    double low_reach_m(double carry_m) const override { return low_share_ * carry_m; }

  private:
    double low_share_;
    double stopped_;
};

}  // namespace landwidth
