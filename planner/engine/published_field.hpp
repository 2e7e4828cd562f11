// The strokes field of the published tour table, with the handicap adjustment.
//
// Distance left. The table counts along the line of play. From a place beside a dogleg that is the straight
// distance to the pin plus what the nearest way along the line is longer than its chord: for every leg of the
// line with foot f of the place on it,
//     left = |place, pin| + min over legs of (detour(f) + |place, f| - nearest foot's distance),
//     detour(f) = (line's length from f) - |f, pin|.
// On the line it is the length along the line, on a straight hole the straight distance, and it is continuous
// everywhere. It is tabulated on a 6 m grid and interpolated, since it varies slowly. A place on a teeing
// area is closely mown and valued as fairway.
#pragma once

#include <array>
#include <vector>

#include "geometry/line_of_play.hpp"
#include "planner/engine/handicap_adjustment.hpp"
#include "planner/engine/strokes_field.hpp"

namespace landwidth {

// Strokes by lie and distance for one golfer, on a fine grid of distances: made once, used on every hole.
class StrokesByDistance {
  public:
    StrokesByDistance(const Golfer& golfer, const EngineAssumptions& assumptions);
    // Lies in play only; distance >= 0.
    double strokes(Lie lie, double distance_m) const;

  private:
    std::array<std::vector<double>, lie_count> columns_;  // empty for lies out of play
};

class PublishedField final : public StrokesField {
  public:
    // Keeps a reference to `table`. `ground` is where places will be asked for; beyond it the detour at its
    // edge is used.
    PublishedField(const StrokesByDistance& table, const LineOfPlay& line, const Box& ground);

    Worth worth(Point place, Lie lie) const override;

  private:
    const StrokesByDistance& table_;
    Point pin_;
    Box ground_;
    int columns_ = 0;  // 0: a straight hole, no detour anywhere
    int rows_ = 0;
    std::vector<double> detours_;

    double detour_at(Point place) const;
};

}  // namespace landwidth
