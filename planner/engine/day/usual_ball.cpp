#include "planner/engine/day/usual_ball.hpp"

#include <algorithm>
#include <cmath>

namespace landwidth {

namespace {

WindAngle against(const HoleDay& day, double bearing) {
    return day.wind_to ? WindAngle::of(*day.wind_to - bearing) : WindAngle{};
}

Point landing_on_the_flat(Point from, double bearing, double carry_m, const DayFlight& flight,
                          const WindAngle& wind) {
    const Point ahead = along_bearing(bearing);
    const Point still = from + carry_m * ahead;
    if (!flight.differs()) return still;
    const LandingShift shift = flight.shift(static_cast<float>(carry_m), 1.0F);
    return still + double{shift.along(wind)} * ahead + double{shift.right(wind)} * to_the_right(ahead);
}

}  // namespace

Point carried(Point from, double bearing, double carry_m, const DayFlight& flight, const HoleDay& day) {
    return landing_on_the_flat(from, bearing, carry_m, flight, against(day, bearing));
}

UsualBall usual_ball(Point from, double aim, const ShotPattern& pattern, const DayFlight& flight,
                     const HoleDay& day) {
    constexpr int rounds = 3;
    const ShotOffset& centre = pattern.usual.centre;
    const Point ahead = along_bearing(aim);
    const Point still = from + centre.carry_m * ahead + centre.side_m * to_the_right(ahead);
    const double carry_m = distance(from, still);
    const auto carry = static_cast<float>(carry_m);
    const double off_aim = std::atan2(centre.side_m, centre.carry_m);
    const WindAngle wind = against(day, aim + off_aim);
    Point flat = still;
    if (flight.differs())
        flat = landing_on_the_flat(from, aim + off_aim * (1.0 + double{flight.curl(wind)}), carry_m, flight,
                                   wind);
    UsualBall ball{flat, unit(flat - from), 0.0, 0.0, 0.0, 0.0, 0.0};
    double run = pattern.run_m;
    if (flight.differs()) run += double{flight.more_run(carry, Surface::mown, wind)};
    const double fall = double{flight.fall(carry, wind)};
    if (day.heights != nullptr) {
        for (int round = 0; round < rounds; ++round) {
            const double over = day.heights->at(ball.landing) - day.heights->at(from);
            ball.landing = flat - over * fall * ball.way;
        }
        const Point rise = day.heights->gradient(ball.landing);
        run += double{flight.more_run_on_slope(static_cast<float>(dot(rise, ball.way)))};
        ball.aside_m = dot(rise, to_the_right(ball.way)) * double{flight.sideways_per_slope()};
    }
    ball.run_m = std::max(0.0, run);
    // In proportion to how far it runs.
    ball.aside_m *= pattern.run_m > 0.0 ? ball.run_m / pattern.run_m : 0.0;
    ball.peak_m = double{flight.peak(carry, static_cast<float>(distance(from, flat)), wind)};
    ball.landing_angle_rad = std::atan2(1.0, fall);
    ball.more_m = dot(ball.landing - still, ahead) + ball.run_m - pattern.run_m;
    return ball;
}

}  // namespace landwidth
