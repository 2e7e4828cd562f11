#include "geometry/units.hpp"

#include <cmath>

namespace landwidth {

double Bearing::degrees() const {
    const double within_a_turn = std::fmod(radians / radians_per_degree, 360.0);
    const double degrees = within_a_turn < 0.0 ? within_a_turn + 360.0 : within_a_turn;
    // A hair below 0 rounds up to 360 when a turn is added.
    return degrees < 360.0 ? degrees : 0.0;
}

}  // namespace landwidth
