// The balls of a club on a day as flight and run-out have them (ball_flight.hpp, run_out.hpp): flown one by
// one, or from a table of such flights where millions are asked for. Knows nothing of the engine's DayFlight.
//
// A ball is told by where it lands on the reference day: after `carry_m`, `off_rad` to the right of the aim.
// A share of that angle is curve, the rest the direction it starts in. Winds blow `wind_rad` to the right of
// the aim (0: from behind).
#pragma once

#include <vector>

#include "geometry/point.hpp"
#include "golfer-profiles/club_flight.hpp"
#include "golfer-profiles/run_out.hpp"
#include "planner/engine/day/conditions.hpp"

namespace landwidth::fixture {

class DayBalls {
  public:
    // run_m: of the club on fairway on the reference day; usual_carry_m: of the shot whose run is asked for.
    DayBalls(const ClubFlight& club, const Conditions& day, double run_m, double usual_carry_m,
             double curve_share);

    // In the frame of the aim, down to a height below where it was hit. strength: of the wind, as a factor.
    Flight flown(double carry_m, double off_rad, double wind_rad, double strength = 1.0,
                 double lowest_m = 0.0) const;

    // Where it lands on level ground, in the frame of the aim, from the table.
    struct Landed {
        double along_m, right_m;
        double heading_rad;  // of its travel, right of the aim
        double fall;         // metres of carry that a landing place a metre higher costs
    };
    Landed landed(double carry_m, double off_rad, double wind_rad) const;

    // What the usual ball runs further than on the reference day and level ground.
    double more_run_m(Firmness firmness, double wind_rad, const Slope& slope) const;
    // How far to the right of its travel it then is.
    double aside_m(Firmness firmness, double wind_rad, const Slope& slope) const;

  private:
    BallLaunch launched(double carry_m, double start_rad, double curve_rad) const;
    Landed& table(int carry, int angle, int off) {
        return table_[static_cast<std::size_t>((carry * (angles + 1) + angle) * offs + off)];
    }
    const Landed& table(int carry, int angle, int off) const {
        return const_cast<DayBalls*>(this)->table(carry, angle, off);
    }
    RunOut run(Firmness firmness, double wind_rad, const Slope& slope) const;

    static constexpr int angles = 32, offs = 3;
    AirFlow calm_;
    double wind_mps_;
    BallAerodynamics aerodynamics_;
    double curve_share_;
    double carry_step_m_;
    std::vector<BallLaunch> launches_;  // by carry
    std::vector<double> curve_per_tilt_;
    std::vector<Landed> table_;
    std::vector<Impact> impacts_;  // of the usual ball, by angle of the wind
    double level_run_m_;           // of the usual ball on the reference day, as modelled
    double run_scale_;
};

}  // namespace landwidth::fixture
