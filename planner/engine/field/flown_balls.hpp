// The balls of a shot as they fly on the day: where they land seen from where they are hit, which way they
// then travel and how far they run.
//
// Lengths in cells of the grid, in the frame of the aim (along it and to its right). On the reference day and
// flat ground the balls are those of the set, to the last bit.
#pragma once

#include <array>

#include "planner/engine/field/play_grid.hpp"

namespace landwidth {

// A shot at one turn of the aim.
struct ShotInAir {
    const ShotOption* option;
    float sine, cosine;  // of the turn
    WindAngle wind;      // against the aim
    bool is_moved;       // by the day
    float curl;          // growth of a ball's direction off the aim
    int drift_turn;      // of the travel, in turn_steps; its sine and cosine
    float drift_sine, drift_cosine;
    float fall_factor;                  // what the wind makes of BallSet::fall
    std::array<float, run_kinds> runs;  // by the kind of ground, cells
};

ShotInAir shot_in_air(const PlayGrid& grid, const ShotOption& option, int turn);

// Balls [first, first + count) of a set, count at most `most`.
class FlownBalls {
  public:
    static constexpr std::size_t most = 64;

    // In coordinates of the grid.
    struct FromPlace {
        float x, y;
        float height_m;
    };
    void fly(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls, std::size_t first,
             std::size_t count, const FromPlace& from);

    const float* along() const { return along_; }
    const float* right() const { return right_; }
    const float* way_along() const { return way_along_; }
    const float* way_right() const { return way_right_; }
    // Whether the balls run by the slope they land on; else all as ShotInAir::runs says, straight on.
    bool is_sloped() const { return is_sloped_; }
    // How far a ball runs on a kind of ground, and how far to the right of its travel it then is.
    const float* runs(std::size_t kind) const { return runs_[kind].data(); }
    float run(const ShotInAir& shot, std::size_t ball, std::size_t kind) const {
        return is_sloped_ ? runs_[kind][ball] : shot.runs[kind];
    }
    const float* asides(std::size_t kind) const { return asides_[kind].data(); }
    float aside(std::size_t ball, std::size_t kind) const { return is_sloped_ ? asides_[kind][ball] : 0.0F; }

  private:
    void move(const ShotInAir& shot, const BallSet& balls, std::size_t first, std::size_t count);
    void land_on_slope(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls, std::size_t first,
                       std::size_t count, const FromPlace& from);
    void land_as_the_usual(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls,
                           std::size_t first, std::size_t count, const FromPlace& from);

    using Lengths = std::array<float, most>;
    const float* along_ = nullptr;
    const float* right_ = nullptr;
    const float* way_along_ = nullptr;
    const float* way_right_ = nullptr;
    bool is_sloped_ = false;
    Lengths own_along_, own_right_, own_way_along_, own_way_right_;
    std::array<Lengths, run_kinds> runs_, asides_;
};

}  // namespace landwidth
