// The strokes field of the published tour table, with the handicap adjustment.
// A place on a teeing area is closely mown and valued as fairway.
#pragma once

#include <array>
#include <vector>

#include "planner/engine/distance_left.hpp"
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
    // Keeps a reference to `table`. `ground` is where places will be asked for.
    PublishedField(const StrokesByDistance& table, const LineOfPlay& line, const Box& ground);

    Worth worth(Point place, Lie lie, int used) const override;

  private:
    const StrokesByDistance& table_;
    DistanceLeft left_;
};

}  // namespace landwidth
