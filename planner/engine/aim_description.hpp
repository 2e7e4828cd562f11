// Says an aim line so that a golfer can use it: its offset from the centre line, and what it passes.
#pragma once

#include <vector>

#include "planner/engine/round_plan.hpp"

namespace landwidth {

// What can be seen from a tee and aimed at: made once a hole.
class AimMarks {
  public:
    // Keeps a reference to the hole.
    explicit AimMarks(const Hole& hole);

    // `aim` is a plane bearing from the tee, `distance_m` (> 0) where the ball is meant to come down.
    AimDescription describe(double aim, double distance_m) const;

  private:
    struct Thing {
        Lie lie;
        Ring outline;
    };
    const Hole& hole_;
    std::vector<Thing> things_;
};

}  // namespace landwidth
