// The usual ball of a shot on the day, over the ground of a hole.
#pragma once

#include "golfer-profiles/shot_pattern.hpp"
#include "planner/engine/day/day_flight.hpp"
#include "planner/engine/day/hole_day.hpp"

namespace landwidth {

struct UsualBall {
    Point landing;
    Point way;                 // unit step of its travel there
    double run_m;              // on fairway
    double aside_m;            // to the right of the way, of a ball that runs on fairway
    double peak_m;             // over where it was hit
    double landing_angle_rad;  // below the horizon
    double more_m;  // what it goes further along the aim, run on fairway included, than on the reference day
};

// Hit from a place on a plane bearing.
UsualBall usual_ball(Point from, double aim, const ShotPattern& pattern, const DayFlight& flight,
                     const HoleDay& day);

// Where a ball hit straight that on the reference day carries `carry_m` lands on the day, as if the ground
// were flat.
Point carried(Point from, double bearing, double carry_m, const DayFlight& flight, const HoleDay& day);

}  // namespace landwidth
