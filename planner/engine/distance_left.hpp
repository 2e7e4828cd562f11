// The distance left to the hole along the line of play, for any place on the ground.
//
// From a place beside a dogleg that is the straight distance to the pin plus what the nearest way along the
// line is longer than its chord: for every leg of the line with foot f of the place on it,
//     left = |place, pin| + min over legs of (detour(f) + |place, f| - nearest foot's distance),
//     detour(f) = (line's length from f) - |f, pin|.
// On the line it is the length along the line, on a straight hole the straight distance, and it is continuous
// everywhere. The detour is tabulated on a 6 m grid and interpolated, since it varies slowly.
#pragma once

#include <vector>

#include "geometry/line_of_play.hpp"

namespace landwidth {

class DistanceLeft {
  public:
    // `ground` is where places will be asked for; beyond it the detour at its edge is used.
    DistanceLeft(const LineOfPlay& line, const Box& ground);

    double from(Point place) const;  // metres, >= 0

  private:
    Point pin_;
    Box ground_;
    int columns_ = 0;  // 0: a straight hole, no detour anywhere
    int rows_ = 0;
    std::vector<double> detours_;

    double detour_at(Point place) const;
};

}  // namespace landwidth
