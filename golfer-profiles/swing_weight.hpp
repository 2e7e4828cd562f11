// Swing weight: how heavy a club's head end feels, as the trade writes it, "D2.5".
//
// It is the moment of the club's mass about a fulcrum 14 in from the butt, head side positive: total mass
// times how far the balance point lies beyond the fulcrum. The scale runs in points of 1.75 inch-ounces, ten
// points a letter, A to G; D0 is 213.5 inch-ounces (fulcrum, point and D0: common practice, from memory).
//
// Example: 318 g balancing 33.9 in from the butt are 11.217 oz x 19.9 in = 223.2 inch-ounces, 5.6 points
// above D0: D5.6.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "geometry/units.hpp"

namespace landwidth {

inline constexpr double swing_weight_fulcrum_m = 14.0 * metres_per_inch;
inline constexpr double kilogram_metres_per_point = 1.75 * kilograms_per_ounce * metres_per_inch;

struct SwingWeight {
    // A mass moment and no torque: the scale's own unit, ounces times inches, in SI. Below 0 when the
    // balance point lies between butt and fulcrum.
    double moment_kg_m = 0.0;

    double inch_ounces() const { return moment_kg_m / (kilograms_per_ounce * metres_per_inch); }
    // Above A0, which is 0; D0 is 30. Not limited to the letters.
    double points() const;
    static SwingWeight of_points(double points);
};

// total_kg > 0, balance_m from the butt.
SwingWeight swing_weight_of(double total_kg, double balance_m);
// Balance point from the butt, metres, of a club of total_kg > 0.
double balance_of(SwingWeight weight, double total_kg);
// Total mass, kg, of a club that balances at balance_m; nothing at the fulcrum itself or where the mass
// would have to be negative.
std::optional<double> total_of(SwingWeight weight, double balance_m);

// To a tenth of a point, "D2", "D2.5"; nothing for what lies outside A0 to G9.9.
std::optional<std::string> swing_weight_text(SwingWeight weight);
// A letter A to G of either case and a number from 0 to below 10; nothing for anything else.
std::optional<SwingWeight> swing_weight_of_text(std::string_view text);

}  // namespace landwidth
