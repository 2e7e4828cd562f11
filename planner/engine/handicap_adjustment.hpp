// What a golfer of a handicap takes more than the tour table says: a small documented model.
//
// Off the green, at distance d from the hole,
//     extra = f(short game) a (1 - exp(-d / d0)) + f(handicap) b d,     f(h) = (h - tour) / (bogey - 0)
// with a + b d the published difference between the bogey and the scratch golfer on a hole of length d
// (yardage ratings L/160 + 50.7 and L/220 + 40.9 over 18 holes: a = 0.544 strokes, b = 0.1705 strokes per 100
// yd), and d0 an assumption. The table's gaps between lies are kept. On the green a putt of d is worth a tour
// putt of k d,
//     k(h) = 1 + (k18 - 1) (h - tour) / (18 - tour),   at least 1/2,
// k18 = 8 ft / 5 ft, the distances from which half the putts are holed. The handicap that the tour table
// itself stands for is an assumption. All constants: assumptions.cpp.
//
// Example: scratch against bogey (20) from 361 yd: 0.544 + 0.615 = 1.16 strokes.
#pragma once

#include "golfer-profiles/profile.hpp"
#include "planner/engine/engine_assumptions.hpp"

namespace landwidth {

class HandicapAdjustment {
  public:
    HandicapAdjustment(const Golfer& golfer, const EngineAssumptions& assumptions);

    // Strokes on top of the table from a place off the green; distance >= 0.
    double extra_strokes(double distance_m) const;
    // The tour putt that a putt of this length is worth.
    double worth_putt_m(double distance_m) const;

  private:
    double around_green_;  // strokes
    double reach_m_;
    double per_m_;
    double stretch_;
};

}  // namespace landwidth
