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
    float sideways;                     // of a run, per cell that the ground rises to the right
};

ShotInAir shot_in_air(const PlayGrid& grid, const ShotOption& option, int turn);

// Balls [first, first + count) of a set, count at most `most`.
class FlownBalls {
  public:
    static constexpr std::size_t most = 64;

    // From a place in coordinates of the grid, `height_m` high.
    void fly(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls, std::size_t first,
             std::size_t count, float from_x, float from_y, float height_m);

    const float* along() const { return along_; }
    const float* right() const { return right_; }
    const float* way_along() const { return way_along_; }
    const float* way_right() const { return way_right_; }
    bool is_sloped() const { return is_sloped_; }
    // How far a ball runs on a kind of ground, and how far to the right of its travel it then is.
    float run(const ShotInAir& shot, std::size_t ball, std::size_t kind) const {
        if (!is_sloped_) return shot.runs[kind];
        const float run = shot.runs[kind] + shot.option->run_shares[kind] * more_run_[ball];
        return run > 0.0F ? run : 0.0F;
    }
    float aside(const ShotInAir& shot, std::size_t ball, std::size_t kind) const {
        // In proportion to how far it runs.
        const float level_run = shot.option->run_cells[kind];
        if (!is_sloped_ || !(level_run > 0.0F)) return 0.0F;
        return shot.option->run_shares[kind] * aside_[ball] * run(shot, ball, kind) / level_run;
    }

  private:
    void move(const ShotInAir& shot, const BallSet& balls, std::size_t first, std::size_t count);
    void land_on_slope(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls, std::size_t first,
                       std::size_t count, float from_x, float from_y, float height_m);

    using Lengths = std::array<float, most>;
    const float* along_ = nullptr;
    const float* right_ = nullptr;
    const float* way_along_ = nullptr;
    const float* way_right_ = nullptr;
    bool is_sloped_ = false;
    Lengths own_along_, own_right_, own_way_along_, own_way_right_, more_run_, aside_;
};

}  // namespace landwidth
