// What the golfer aims for, as a cost of the strokes a hole took.
#pragma once

#include "planner/engine/round_plan.hpp"

namespace landwidth {

class GolferAim {
  public:
    // strokes_received: by the handicap on this hole; only Stableford counts them.
    GolferAim(AimFor aim, int par, int strokes_received)
        : aim_(aim), target_(par + (aim == AimFor::stableford ? strokes_received : 0)) {}

    bool is_strokes() const { return aim_ == AimFor::strokes; }
    // Of a hole played in so many strokes. Strokes: their number; Stableford (Rule 21.1b): minus the points;
    // par or better: -1 where reached.
    double cost(int strokes) const;
    // From so many strokes used on nothing can be gained any more: every further cost is 0. Not for strokes.
    int hopeless_from() const { return aim_ == AimFor::stableford ? target_ + 1 : target_; }
    // A cost as the golfer reads it: strokes, points, share of holes.
    double value(double cost) const { return is_strokes() ? cost : -cost; }

  private:
    AimFor aim_;
    int target_;
};

// The strokes a handicap gives on each hole: the index rounded, by the holes' stroke index (Rules of
// Handicapping, rule 6.1 with a Slope Rating of 113 and a Course Rating equal to par, appendix E). All 0 when
// a hole has no stroke index.
std::vector<int> strokes_received(const Course& course, double handicap_index);

}  // namespace landwidth
