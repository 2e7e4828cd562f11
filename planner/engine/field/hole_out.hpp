// Close to the hole: in how many strokes the golfer holes out, from the green and from the short game around
// it.
//
// The means are those of StrokesByDistance: the published table and putting shares with the handicap
// adjustment. How they spread: on the green one-, two- and three-putts as published; off it one shot and then
// the putts from wherever makes the mean right (assumption), with a second shot at it in some of the cases
// where no putt is long enough.
#pragma once

#include <array>
#include <vector>

#include "planner/engine/field/golfer_aim.hpp"
#include "planner/engine/published_field.hpp"

namespace landwidth {

inline constexpr std::size_t most_close_strokes = 8;
// shares[n]: holed out in n strokes.
using CloseShares = std::array<double, most_close_strokes + 1>;

class HoleOut {
  public:
    // Keeps a reference to `table`.
    HoleOut(const StrokesByDistance& table, const Golfer& golfer, const EngineAssumptions& assumptions);

    // Whether a ball there is close: nothing is left to choose.
    bool is_close(Lie lie, double distance_m) const {
        return lie == Lie::green || distance_m <= short_game_m_;
    }
    double strokes(Lie lie, double distance_m) const { return table_.strokes(lie, distance_m); }
    CloseShares shares(Lie lie, double distance_m) const;
    // The mean of the golfer's aim with so many strokes used. For strokes: the strokes still to come.
    double cost(Lie lie, double distance_m, const GolferAim& aim, int used) const;

  private:
    const StrokesByDistance& table_;
    HandicapAdjustment adjustment_;
    double short_game_m_;
};

}  // namespace landwidth
