// The flight of a golf ball: three dimensions, drag, lift and the loss of spin.
//
// Coefficients by A. Smits and D. Smith, A new aerodynamic model of a golf ball in flight, Science and Golf
// II, 1994 (from memory): Cd = 0.24 + 0.18 S + 0.06 sin(pi (Re - 90000) / 200000), Cl = 0.54 S^0.4 with S = r
// omega / v, spin falling at 2e-5 omega v / r. Side spin is a tilted axis. Integrated with an adaptive
// Runge-Kutta method of Boost.Odeint.
//
// Metres, seconds, radians, kg. Axes: along the aim on the ground, to the right of it, up.
#pragma once

#include <optional>
#include <vector>

#include "golfer-profiles/air.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct BallLaunch {
    Launch launch;
    double right_rad = 0.0;  // direction of the start, right of the aim positive
    double tilt_rad = 0.0;   // of the spin axis: positive curves the ball to the right
};

// The air and how it moves: a wind is where it blows to. The same at every height (assumption).
struct AirFlow {
    Air air;
    double along_mps = 0.0;  // a tail wind is positive
    double right_mps = 0.0;  // positive blows to the right
};

// How this ball flies: factors on the published coefficients; 0 and 0 is a vacuum.
struct BallAerodynamics {
    double drag = 1.0;  // >= 0
    double lift = 1.0;  // >= 0
    // Holds the drag coefficient at this value whatever the spin and speed, for comparison with closed forms.
    std::optional<double> steady_drag = {};
};

struct FlightPoint {
    double along_m;
    double right_m;
    double height_m;  // over where the ball was hit
};

struct Flight {
    std::vector<FlightPoint> path;  // from the start to the landing, at least 16 points
    FlightPoint peak;
    FlightPoint landing;  // height_m is the height asked for
    double time_s;
    double landing_speed_mps;
    double landing_angle_rad;  // below the horizon, (0, pi/2]
    double landing_spin_rad_per_s;
    double landing_heading_rad;  // over the ground, right of the aim positive
};

// Far beyond any golfer: it takes this to carry half as far again as the longest club a profile may hold.
inline constexpr double fastest_ball_mps = 400.0;

// Of the integrator, a step: metres, m/s and rad/s, and relative to them. Carries are then good to a tenth of
// a millimetre, for balls over 190 mph to half of one. Another is for tests.
inline constexpr double flight_tolerance = 1e-7;

// Until the ball comes down to `landing_height_m` over where it was hit. Throws std::domain_error when it
// never gets above that, std::invalid_argument for values that are not finite and for speeds not above 0 or
// above fastest_ball_mps. About 20 microseconds for a drive.
Flight fly(const BallLaunch& ball, const AirFlow& flow, const BallAerodynamics& aerodynamics = {},
           double landing_height_m = 0.0, double tolerance = flight_tolerance);

}  // namespace landwidth
