// The ball and the gravity that flight and run-out share.
#pragma once

namespace landwidth {

// Equipment Rules: at most 45.93 g, at least 42.67 mm (from memory); balls are made to both limits.
inline constexpr double ball_mass_kg = 0.04593;
inline constexpr double ball_radius_m = 0.04267 / 2.0;
inline constexpr double gravity_mps2 = 9.80665;  // standard gravity, ISO 80000-3

}  // namespace landwidth
