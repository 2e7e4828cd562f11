#include "golfer-profiles/lie_change.hpp"

#include <algorithm>
#include <cmath>

namespace landwidth {

LieChange lie_change(double lie_rad, std::optional<double> loft_rad, double from_m, double to_m,
                     Range practice_per_m, bool silent) {
    LieChange change{.as_built_rad = lie_rad};
    const double sine = from_m * std::sin(lie_rad) / to_m;
    if (sine < 1.0) {
        change.flat_sole_rad = std::asin(sine);
        change.plays_upright_rad = lie_rad - *change.flat_sole_rad;
        // The normal of a face of this loft, turned about the line of play by the tip of the toe.
        if (loft_rad)
            change.face_off_line_rad = std::atan(std::tan(*loft_rad) * std::sin(*change.plays_upright_rad));
    }
    if (!silent) {
        const double a = practice_per_m.low * (to_m - from_m);
        const double b = practice_per_m.high * (to_m - from_m);
        change.practice_rad = Range{std::min(a, b), std::max(a, b)};
    }
    return change;
}

}  // namespace landwidth
