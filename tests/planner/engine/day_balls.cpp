#include "tests/planner/engine/day_balls.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace landwidth::fixture {

namespace {

constexpr double whole_turn = 2.0 * std::numbers::pi;
// Carries of the table: 2.5 % of the usual one apart, to half as far again.
constexpr int carries = 60;
constexpr double carry_step_share = 0.025;
// Balls of the table land this far off the aim on either side.
constexpr double off_step_rad = 0.2;
constexpr double tilt_rad = 0.05;

Impact impact_of(const Flight& flight) {
    return {flight.landing_speed_mps, flight.landing_angle_rad, flight.landing_spin_rad_per_s};
}

double off_line(const Flight& flight) {
    return std::atan2(flight.landing.right_m, flight.landing.along_m);
}

}  // namespace

DayBalls::DayBalls(const ClubFlight& club, const Conditions& day, double run_m, double usual_carry_m,
                   double curve_share)
    : calm_{air_of(day.weather)},
      wind_mps_(day.wind ? day.wind->speed_mps : 0.0),
      aerodynamics_(club.aerodynamics()),
      curve_share_(curve_share),
      carry_step_m_(carry_step_share * club.carry_m()) {
    for (int i = 1; i <= carries; ++i) {
        BallLaunch ball = club.launch_for(carry_step_m_ * i);
        launches_.push_back(ball);
        ball.tilt_rad = tilt_rad;
        curve_per_tilt_.push_back(off_line(fly(ball, reference_air(), aerodynamics_)) / tilt_rad);
    }
    const auto reference_run = [&](double carry_m) {
        const Flight flight = fly(club.launch_for(carry_m), reference_air(), aerodynamics_);
        return run_out(impact_of(flight), Firmness::ordinary, {}).along_m;
    };
    // As the engine has it: the model's run is made that of the club where it is near enough.
    run_scale_ = std::clamp(run_m / std::max(reference_run(club.carry_m()), 3.0), 0.5, 2.0);
    level_run_m_ = reference_run(usual_carry_m);
    table_.resize(static_cast<std::size_t>(carries * (angles + 1) * offs));
    for (int angle = 0; angle <= angles; ++angle) {
        const double wind = angle * whole_turn / angles;
        impacts_.push_back(impact_of(flown(usual_carry_m, 0.0, wind)));
        for (int carry = 0; carry < carries; ++carry)
            for (int off = 0; off < offs; ++off) {
                const double off_rad = (off - 1) * off_step_rad;
                // In the frame of the ball's own direction, where little depends on that direction.
                const Flight flight = flown(carry_step_m_ * (carry + 1), off_rad, wind + off_rad);
                const double c = std::cos(off_rad);
                const double s = std::sin(off_rad);
                const FlightPoint& at = flight.landing;
                table(carry, angle, off) = {c * at.along_m + s * at.right_m, c * at.right_m - s * at.along_m,
                                            flight.landing_heading_rad - off_rad,
                                            1.0 / std::tan(flight.landing_angle_rad)};
            }
    }
}

BallLaunch DayBalls::launched(double carry_m, double start_rad, double curve_rad) const {
    const double row = std::clamp(carry_m / carry_step_m_ - 1.0, 0.0, carries - 1.0);
    const auto below = std::min(static_cast<std::size_t>(row), launches_.size() - 2);
    const double share = row - static_cast<double>(below);
    const auto mix = [share](double a, double b) { return a + share * (b - a); };
    BallLaunch ball = launches_[below];
    const Launch& above = launches_[below + 1].launch;
    ball.launch.ball_speed_mps = mix(ball.launch.ball_speed_mps, above.ball_speed_mps);
    ball.launch.spin_rad_per_s = mix(ball.launch.spin_rad_per_s, above.spin_rad_per_s);
    ball.right_rad = start_rad;
    ball.tilt_rad = curve_rad / mix(curve_per_tilt_[below], curve_per_tilt_[below + 1]);
    return ball;
}

Flight DayBalls::flown(double carry_m, double off_rad, double wind_rad, double strength,
                       double lowest_m) const {
    const double start = (1.0 - curve_share_) * off_rad;
    const double curve = curve_share_ * off_rad;
    BallLaunch ball = launched(carry_m, start, curve);
    if (curve != 0.0) {
        // A ball with a tilted axis falls short: hit so much harder that it lands where it should on the
        // reference day.
        const FlightPoint at = fly(ball, reference_air(), aerodynamics_).landing;
        const double curved = std::atan2(at.right_m, at.along_m) - start;
        ball =
            launched(carry_m * carry_m / std::hypot(at.along_m, at.right_m), start, curve * curve / curved);
    }
    AirFlow flow = calm_;
    flow.along_mps = strength * wind_mps_ * std::cos(wind_rad);
    flow.right_mps = strength * wind_mps_ * std::sin(wind_rad);
    return fly(ball, flow, aerodynamics_, lowest_m);
}

DayBalls::Landed DayBalls::landed(double carry_m, double off_rad, double wind_rad) const {
    double turn = (wind_rad - off_rad) / whole_turn;
    turn = (turn - std::floor(turn)) * angles;
    const double row = std::clamp(carry_m / carry_step_m_ - 1.0, 0.0, carries - 1.0);
    const double column = std::clamp(off_rad / off_step_rad + 1.0, 0.0, offs - 1.0);
    const int carry = std::min(static_cast<int>(row), carries - 2);
    const int angle = std::min(static_cast<int>(turn), angles - 1);
    const int off = std::min(static_cast<int>(column), offs - 2);
    Landed own{};
    for (int corner = 0; corner < 8; ++corner) {
        const int a = corner & 1, b = corner >> 1 & 1, c = corner >> 2;
        const double weight = (a == 1 ? row - carry : 1.0 - (row - carry)) *
                              (b == 1 ? turn - angle : 1.0 - (turn - angle)) *
                              (c == 1 ? column - off : 1.0 - (column - off));
        const Landed& at = table(carry + a, angle + b, off + c);
        own.along_m += weight * at.along_m;
        own.right_m += weight * at.right_m;
        own.heading_rad += weight * at.heading_rad;
        own.fall += weight * at.fall;
    }
    // Beyond the table a ball keeps the shape of its flight.
    const double beyond = carry_m / (carry_step_m_ * std::clamp(row + 1.0, 1.0, double{carries}));
    const double cosine = beyond * std::cos(off_rad);
    const double sine = beyond * std::sin(off_rad);
    return {cosine * own.along_m - sine * own.right_m, sine * own.along_m + cosine * own.right_m,
            own.heading_rad + off_rad, own.fall};
}

RunOut DayBalls::run(Firmness firmness, double wind_rad, const Slope& slope) const {
    const double turn = wind_rad / whole_turn;
    const auto angle = static_cast<std::size_t>(std::lround((turn - std::floor(turn)) * angles));
    return run_out(impacts_[angle], firmness, slope);
}

double DayBalls::more_run_m(Firmness firmness, double wind_rad, const Slope& slope) const {
    return run_scale_ * (run(firmness, wind_rad, slope).along_m - level_run_m_);
}

double DayBalls::aside_m(Firmness firmness, double wind_rad, const Slope& slope) const {
    return run_scale_ * run(firmness, wind_rad, slope).right_m;
}

}  // namespace landwidth::fixture
