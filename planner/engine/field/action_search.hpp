// Finding the shot for a cell: from everything the golfer can play down to the few worth a close look.
#pragma once

#include <array>
#include <functional>
#include <span>
#include <vector>

#include "planner/engine/field/field_layer.hpp"
#include "planner/engine/field/shot_worth.hpp"

namespace landwidth {

// What the sums of a shot come to at a cell.
//
// For strokes a replayed ball refers back to the cell itself, v = (1 + ordinary + replay (1 + v)), solved
// exactly; a ball that trees keep where it is does too. On other aims both are costs already known, with the
// strokes used.
class ShotCost {
  public:
    // own: the costs being solved for (strokes).
    static ShotCost of_strokes(const float* own, float stuck_share) {
        return {own, nullptr, nullptr, stuck_share};
    }
    // after_one, after_two: by cell, with one and two strokes more used.
    static ShotCost of_aim(const float* after_one, const float* after_two, float stuck_share) {
        return {nullptr, after_one, after_two, stuck_share};
    }
    // A place from which nearly every ball comes back is worth this: nobody plays on for ever.
    static constexpr float most_strokes = 60.0F;
    float of(const ShotSums& sums, Stance stance, int cell) const {
        const float stuck = stance == Stance::trees ? stuck_share_ : 0.0F;
        const float free = 1.0F - stuck;
        if (own_ != nullptr) {
            const float gone = 1.0F - free * sums.replay - stuck;
            const float strokes = 1.0F + free * (sums.ordinary + sums.replay);
            return strokes < most_strokes * gone ? strokes / gone : most_strokes;
        }
        return free * (sums.ordinary + sums.replay * after_two_[cell]) + stuck * after_one_[cell];
    }
    // What playing again from the cell costs, a penalty stroke included.
    float replay(int cell) const { return own_ != nullptr ? 1.0F + own_[cell] : after_two_[cell]; }
    float stuck_share() const { return stuck_share_; }

  private:
    ShotCost(const float* own, const float* one, const float* two, float stuck)
        : own_(own), after_one_(one), after_two_(two), stuck_share_(stuck) {}
    const float* own_;
    const float* after_one_;
    const float* after_two_;
    float stuck_share_;
};

// A shot and what it costs.
struct Ranked {
    Action action;
    float cost;
};

class ActionSearch {
  public:
    // Keeps references. `line` is the hole's.
    ActionSearch(const PlayGrid& grid, const ShotMenu& menu, const LineOfPlay& line, ShotWorth& worth,
                 const ShotCost& cost);

    static constexpr std::size_t most_kept = 5;
    // The best few of everything: every option at a few aims, then the best options over a fan of aims.
    std::vector<Ranked> everything(int cell);
    // Neither far too long for a place nor far too short.
    bool is_sensible(int cell, const ShotOption& option) const;
    // The same among the options that `allowed` lets through; may be empty.
    std::vector<Ranked> everything(int cell, const std::function<bool(const ShotOption&)>& allowed);
    // Shots near this one: the next longer and shorter options, and aims a little to the sides.
    std::vector<Action> beside(int cell, Action action) const;
    // Adds a shot unless one much like it is there.
    void add_unlike(std::vector<Action>& shots, int cell, Action action) const;
    // The best of the shots given.
    Ranked best_of(int cell, std::span<const Action> shots);
    float cost(int cell, Action action, BallSet ShotOption::*balls);

    Stance stance(int cell) const { return stance_on(grid_.lie(cell)); }
    const ShotOption& option(int cell, Action action) const {
        return menu_.options(stance(cell))[static_cast<std::size_t>(action.option)];
    }
    // The same club at the same target, seen from another cell of the same stance.
    Action re_aimed(int from, Action action, int to) const;

  private:
    int close_step(int cell) const;
    std::vector<int> aims_of(int cell, const ShotOption& option) const;

    const PlayGrid& grid_;
    const ShotMenu& menu_;
    const LineOfPlay& line_;
    ShotWorth& worth_;
    const ShotCost& cost_;
};

}  // namespace landwidth
