// Everything the golfer can play from a lie: every club in full, part swings with wedges, low punches out of
// trees; each as a weighted set of balls ready to be laid over a grid.
//
// Lengths of balls in cells of the grid; x to the right of the aim, y along it. Directions of travel are
// counted in `turn_steps` steps to a full turn, clockwise. Made once for a golfer, used on every hole.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "planner/engine/field/flight_clearance.hpp"
#include "planner/engine/field/lie_effects.hpp"

namespace landwidth {

inline constexpr int turn_steps = 2048;

// How a landing ball runs on, by where it lands; see run_kind.
enum class RunKind : std::uint8_t { none, mown, rough, green, trees };
inline constexpr std::size_t run_kinds = 5;
RunKind run_kind(Lie lie);

// The balls of one shot, as parallel arrays.
struct BallSet {
    std::vector<float> along, right;          // landing place from the ball, cells
    std::vector<float> way_along, way_right;  // unit step of its travel
    std::vector<float> weight;                // add to 1
    std::vector<std::int16_t> turn;           // of its travel from the aim, in turn_steps
    std::size_t size() const { return weight.size(); }
};

struct ShotOption {
    std::size_t club;     // in the golfer's bag
    double swing;         // of a full one
    ShotPattern pattern;  // from this stance
    double total_m;       // carry and run of the usual shot on mown ground
    std::array<float, run_kinds> run_cells;
    // Share of balls that woods so many cells behind the landing place stop; beyond: none.
    std::vector<float> stopped_late;
    // The same for woods so far ahead of where the ball is hit.
    std::vector<float> stopped_early;
    BallSet rough_set;   // ranks options and aims
    BallSet choice_set;  // chooses among the best
    BallSet value_set;   // values the choice
};

// The full swing of a club from a stance as a menu has it, for a pattern that is in none; absent when the
// club is not for it. `number` of the club in the profile.
std::optional<ShotOption> full_swing(const Club& club, std::size_t number, Stance stance, double step_m,
                                     const FlightClearance& clearance, const EngineAssumptions& assumptions);

class ShotMenu {
  public:
    // step_m: side of the grid's cells. Throws InputError when no club but the putter has a pattern.
    ShotMenu(const Golfer& golfer, double step_m, const FlightClearance& clearance,
             const EngineAssumptions& assumptions);

    // Longest first; never empty.
    const std::vector<ShotOption>& options(Stance stance) const {
        return options_[static_cast<std::size_t>(stance)];
    }
    // Of any club of the profile, those on trial included: the grids then serve every bag made of them.
    double longest_run_m() const { return longest_run_m_; }
    double longest_carry_m() const { return longest_carry_m_; }

  private:
    std::array<std::vector<ShotOption>, stance_count> options_;
    double longest_run_m_ = 0.0;
    double longest_carry_m_ = 0.0;
};

}  // namespace landwidth
