// The wind card: for every hole the tee club in still air and with the wind from eight directions.
//
// Computed over larger cells than a plan (see with_coarser_field), so that nine rounds take the time of a
// few: margins near 0 can differ from a plan's by the last hundredths; those are marked as toss-ups.
#pragma once

#include <array>
#include <vector>

#include "planner/engine/round_plan.hpp"

namespace landwidth {

inline constexpr std::size_t wind_card_directions = 8;

struct WindCardVerdict {
    std::size_t club;     // index in the golfer's bag
    Bearing aim_bearing;  // true
    double expected_strokes;
    double margin;          // over the next club, strokes; 0 with a single club
    std::size_t over;       // that club; `club` with a single one
    bool toss_up;           // the margin is within what the coarser cells can tell
    double tail_wind_mps;   // along the first leg of the hole
    double cross_wind_mps;  // to the right
    double drift_m;         // of the usual shot, right positive
    double carry_m;         // of the usual shot
};

struct WindCardHole {
    WindCardVerdict still;
    // From north, north-east, ... true, clockwise.
    std::array<WindCardVerdict, wind_card_directions> wind_from;
    // Directions whose club is another than in still air, where neither is a toss-up.
    std::vector<std::size_t> flips;
};

struct WindCard {
    double speed_mps;
    std::optional<double> gusts_mps;
    std::vector<WindCardHole> holes;  // as in the course
    double still_strokes;             // of the round
    std::array<double, wind_card_directions> strokes;
    Conditions conditions;  // without the wind
    Assumptions assumptions;
    std::vector<std::string> warnings;
};

// `wind` gives speed and gusts; its bearing is not used. Aim for strokes and the personal field only, else
// UsageError.
WindCard wind_card(const Course& course, const Golfer& golfer, const PlanRequest& request, const Wind& wind);

}  // namespace landwidth
