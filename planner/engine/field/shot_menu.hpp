// Everything the golfer can play from a lie: every club in full, part swings with wedges, low punches out of
// trees; each as a weighted set of balls ready to be laid over a grid.
//
// Lengths of balls in cells of the grid; x to the right of the aim, y along it. Directions of travel are
// counted in `turn_steps` steps to a full turn, clockwise. Made once for a golfer, used on every hole.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "planner/engine/day/bag_flights.hpp"
#include "planner/engine/field/lie_effects.hpp"

namespace landwidth {

inline constexpr int turn_steps = 2048;
// Travel over a grid is told apart in so many directions.
inline constexpr int travel_directions = 32;
inline constexpr int turns_per_direction = turn_steps / travel_directions;

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
    // What the day makes of it, cells; empty where the flight is that of the reference day. Along and across
    // the ball's own direction, see LandingShift; `curve` is its arc off the aim, for DayFlight::curl.
    std::vector<float> along0, along1, along2, right1, right2, curve;
    std::vector<float> fall;  // cells of carry that a landing place a metre higher costs
    // Shots among each other: the ground is looked at once for all.
    bool only_ranks = false;
    std::size_t size() const { return weight.size(); }
};

// Canopies are told by the distance at which this height hides as much: see PlayGrid.
inline constexpr double usual_canopy_m = 12.0;

// What the day does to the usual ball of a shot, lengths in cells: read for every turn of every aim.
struct UsualBallOfDay {
    float carry;
    LandingShift shift;
    float curl0, curl1;                       // growth of a ball's direction: curl0 + curl1 cos1
    float fall1;                              // the fall grows by fall1 cos1, as a share
    std::array<float, run_kinds> run0, run1;  // the run by run0 + run1 cos1
    float sideways;                           // of a run, per cell that the ground rises to the right
};

struct ShotOption {
    std::size_t club;                         // in the golfer's bag
    double swing;                             // of a full one
    ShotPattern pattern;                      // from this stance
    double total_m;                           // carry and run of the usual shot on mown ground
    std::array<float, run_kinds> run_cells;   // on the reference day
    std::array<float, run_kinds> run_shares;  // of what the day and slopes add to the run on fairway
    // A canopy of the usual height stops the ball when it stands fewer cells behind the landing place, or
    // fewer ahead of where it is hit.
    unsigned stopped_late;
    unsigned stopped_early;
    // No ball leaves further off the aim, in directions of travel of the grid.
    int spread_directions;
    std::shared_ptr<const DayFlight> flight;
    UsualBallOfDay of_day;
    BallSet rough_set;   // ranks options and aims
    BallSet choice_set;  // chooses among the best
    BallSet value_set;   // values the choice
};

// The full swing of a club from a stance as a menu has it, for a pattern that is in none; absent when the
// club is not for it. `number` of the club in the profile.
std::optional<ShotOption> full_swing(const Club& club, std::size_t number, Stance stance, double step_m,
                                     const BagFlights& flights, const EngineAssumptions& assumptions);

class ShotMenu {
  public:
    // step_m: side of the grid's cells. Throws InputError when no club but the putter has a pattern.
    ShotMenu(const Golfer& golfer, double step_m, const BagFlights& flights,
             const EngineAssumptions& assumptions);

    // Longest first; never empty.
    const std::vector<ShotOption>& options(Stance stance) const {
        return options_[static_cast<std::size_t>(stance)];
    }
    // Of any club of the profile, those on trial included: the grids then serve every bag made of them. On
    // fairway with the wind behind, on flat ground or also downhill.
    double longest_run_m(bool on_slopes) const {
        return on_slopes ? longest_run_downhill_m_ : longest_run_m_;
    }
    // The most cells from either end of a carry at which the usual canopy stops a ball.
    unsigned furthest_stop() const { return furthest_stop_; }

  private:
    std::array<std::vector<ShotOption>, stance_count> options_;
    void reach_to(const ShotPattern& pattern, const DayFlight& flight, double step_m);

    double longest_run_m_ = 0.0;
    double longest_run_downhill_m_ = 0.0;
    unsigned furthest_stop_ = 0;
};

}  // namespace landwidth
