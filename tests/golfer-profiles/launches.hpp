// Launches as launch monitors print them, and carries in yards.
#pragma once

#include "geometry/units.hpp"
#include "golfer-profiles/ball_flight.hpp"
#include "golfer-profiles/club_flight.hpp"
#include "golfer-profiles/profile_format.hpp"

namespace landwidth::test {

inline Launch launch_of(double ball_speed_mph, double launch_deg, double spin_rpm) {
    return {ball_speed_mph * metres_per_second_per_mph, launch_deg * radians_per_degree,
            spin_rpm * radians_per_second_per_rpm};
}

// The published coefficients' own example.
inline BallLaunch tour_drive() {
    return {launch_of(167, 10.9, 2686)};
}

inline double carry_yd(const BallLaunch& ball, const AirFlow& flow = reference_air(),
                       const BallAerodynamics& aerodynamics = {}) {
    return to_yards(fly(ball, flow, aerodynamics).landing.along_m);
}

inline AirFlow wind(double along_mph, double right_mph) {
    AirFlow flow = reference_air();
    flow.along_mps = along_mph * metres_per_second_per_mph;
    flow.right_mps = right_mph * metres_per_second_per_mph;
    return flow;
}

}  // namespace landwidth::test
