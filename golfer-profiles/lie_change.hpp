// What another length does to how the head lies on the ground: geometry, and the trade's rule beside it.
//
// Geometry: with the hands as high as before, height = length times the sine of the shaft's angle over the
// ground. A shorter club then stands steeper than its head was built for, so that the toe points down (it
// plays flat), a longer one lies flatter, toe up (it plays upright).
//
// Example: 45.5 in at 58 deg are 38.6 in of height; 44.5 in reach it at 60.1 deg, so the head as it is plays
// 2.1 deg flat. The trade says half an inch is about a degree.
#pragma once

#include <optional>

#include "golfer-profiles/length_change.hpp"

namespace landwidth {

struct LieChange {
    double as_built_rad;
    // By geometry: the lie that keeps the sole flat. Absent where the club is too short to reach the hands.
    std::optional<double> flat_sole_rad = {};
    // How the head as it is then plays: upright positive.
    std::optional<double> plays_upright_rad = {};
    // The same by the trade's rule; absent where rules on length are silent.
    std::optional<Range> practice_rad = {};
    // Where the loft is known: how far off the line the face then points, towards the golfer's own side
    // (a right-hander's left) positive: a tipped toe turns the loft.
    std::optional<double> face_off_line_rad = {};
};

// Lie in (0, pi/2), loft in [0, pi/2), radians; `practice_per_m` is how much flatter a metre less plays,
// radians, low >= 0; `silent` as length_silence says.
LieChange lie_change(double lie_rad, std::optional<double> loft_rad, double from_m, double to_m,
                     Range practice_per_m, bool silent);

}  // namespace landwidth
