// Units at the edges of the program. Inside, lengths are metres, angles radians, speeds m/s, masses kg.
//
// Source of the factors: by definition (international yard, foot, inch and avoirdupois pound of 1959).
#pragma once

#include <numbers>

namespace landwidth {

inline constexpr double metres_per_yard = 0.9144;
inline constexpr double metres_per_foot = 0.3048;
inline constexpr double metres_per_inch = 0.0254;
inline constexpr double metres_per_second_per_mph = 0.44704;
inline constexpr double kilograms_per_gram = 0.001;
inline constexpr double kilograms_per_ounce = 0.028349523125;
inline constexpr double radians_per_degree = std::numbers::pi / 180.0;

// A length in yards, for people and files. Explicit on the way in and out, so that it cannot be taken for
// metres.
struct Yards {
    double value = 0.0;
    constexpr double metres() const { return value * metres_per_yard; }
    static constexpr Yards of(double metres) { return {metres / metres_per_yard}; }
};

constexpr double to_yards(double metres) {
    return Yards::of(metres).value;
}

// A direction on the ground, radians clockwise from true north, any turn (not normalised).
struct Bearing {
    double radians = 0.0;
    friend constexpr bool operator==(const Bearing&, const Bearing&) = default;
    static constexpr Bearing from_degrees(double degrees) { return {degrees * radians_per_degree}; }
    // In [0, 360).
    double degrees() const;
};

}  // namespace landwidth
