// Numbers for files that other programs read: rounded to what they mean.
#pragma once

#include <cmath>

namespace landwidth {

// The nearest number of so many decimals (0..9); never -0; NaN and infinities stay.
inline double rounded(double value, int decimals) {
    const double unit = std::pow(10.0, decimals);
    return std::round(value * unit) / unit + 0.0;
}

// A direction in degrees in [0, 360), as the decimals allow.
inline double rounded_direction(double degrees, int decimals) {
    const double direction = rounded(degrees, decimals);
    return direction >= 360.0 ? 0.0 : direction;
}

}  // namespace landwidth
