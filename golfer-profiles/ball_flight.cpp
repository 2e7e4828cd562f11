#include "golfer-profiles/ball_flight.hpp"

#include <algorithm>
#include <array>
#include <boost/math/tools/toms748_solve.hpp>
#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <stdexcept>

#include "golfer-profiles/ball.hpp"

namespace landwidth {

namespace {

constexpr int path_points = 33;
// A flight takes some tens of steps; this many only happen to a ball that something holds in the air.
constexpr int most_steps = 20000;

// Where the coefficients were measured (from memory); beyond, they are held at the ends. That keeps drag
// above 0: the sine would carry on swinging.
constexpr double lowest_reynolds = 40000.0;
constexpr double highest_reynolds = 250000.0;
constexpr double highest_spin_ratio = 1.4;

double published_drag(double reynolds, double spin_ratio) {
    const double held = std::clamp(reynolds, lowest_reynolds, highest_reynolds);
    return 0.24 + 0.18 * spin_ratio + 0.06 * std::sin(std::numbers::pi * (held - 90000.0) / 200000.0);
}

double published_lift(double spin_ratio) {
    return 0.54 * std::pow(spin_ratio, 0.4);
}

constexpr double spin_loss = 2e-5;

// Position, velocity (along, right, up), spin.
using State = std::array<double, 7>;
enum Part : std::size_t { along, right, height, v_along, v_right, v_up, spin };

// The right-hand side of the equations of motion.
class Motion {
  public:
    Motion(const BallLaunch& ball, const AirFlow& flow, const BallAerodynamics& aerodynamics)
        : flow_(flow), aerodynamics_(aerodynamics) {
        // The axis keeps its direction. These axes are left-handed, hence the sign: lift = axis x velocity
        // points up for backspin.
        const double across = -std::cos(ball.tilt_rad);
        axis_ = {-std::sin(ball.right_rad) * across, std::cos(ball.right_rad) * across,
                 std::sin(ball.tilt_rad)};
        per_speed_ = 0.5 * flow.air.density_kg_per_m3 * std::numbers::pi * ball_radius_m * ball_radius_m /
                     ball_mass_kg;
        reynolds_per_speed_ = flow.air.density_kg_per_m3 * 2.0 * ball_radius_m / flow.air.viscosity_pa_s;
    }

    void operator()(const State& x, State& change, double /*t*/) const {
        const std::array<double, 3> w{x[v_along] - flow_.along_mps, x[v_right] - flow_.right_mps, x[v_up]};
        const double speed = std::sqrt(w[0] * w[0] + w[1] * w[1] + w[2] * w[2]);
        const double surface_speed = ball_radius_m * x[spin];
        // Held at the end of the measured range also where the ball hangs still in the air.
        const double spin_ratio = surface_speed < highest_spin_ratio * speed
                                      ? surface_speed / speed
                                      : (surface_speed > 0.0 ? highest_spin_ratio : 0.0);
        const double drag =
            per_speed_ * speed * aerodynamics_.drag *
            (aerodynamics_.steady_drag ? *aerodynamics_.steady_drag
                                       : published_drag(reynolds_per_speed_ * speed, spin_ratio));
        const double lift = per_speed_ * speed * aerodynamics_.lift * published_lift(spin_ratio);
        change[along] = x[v_along];
        change[right] = x[v_right];
        change[height] = x[v_up];
        change[v_along] = lift * (axis_[1] * w[2] - axis_[2] * w[1]) - drag * w[0];
        change[v_right] = lift * (axis_[2] * w[0] - axis_[0] * w[2]) - drag * w[1];
        change[v_up] = lift * (axis_[0] * w[1] - axis_[1] * w[0]) - drag * w[2] - gravity_mps2;
        change[spin] = -spin_loss * x[spin] * speed / ball_radius_m;
    }

  private:
    AirFlow flow_;
    BallAerodynamics aerodynamics_;
    std::array<double, 3> axis_{};
    double per_speed_ = 0.0;
    double reynolds_per_speed_ = 0.0;
};

State start_of(const BallLaunch& ball) {
    const Launch& launch = ball.launch;
    const double over_ground = launch.ball_speed_mps * std::cos(launch.launch_rad);
    return {0.0,
            0.0,
            0.0,
            over_ground * std::cos(ball.right_rad),
            over_ground * std::sin(ball.right_rad),
            launch.ball_speed_mps * std::sin(launch.launch_rad),
            launch.spin_rad_per_s};
}

void check(const BallLaunch& ball, const AirFlow& flow, const BallAerodynamics& aerodynamics,
           double landing_height_m) {
    const double speed = ball.launch.ball_speed_mps;
    const std::array<double, 9> plain{
        speed,          ball.launch.launch_rad, ball.launch.spin_rad_per_s,
        ball.right_rad, ball.tilt_rad,          flow.along_mps,
        flow.right_mps, landing_height_m,       aerodynamics.steady_drag.value_or(0.0)};
    const bool finite = std::all_of(plain.begin(), plain.end(), [](double v) { return std::isfinite(v); });
    const auto not_below_0 = [](double v) { return v >= 0.0 && std::isfinite(v); };
    if (!finite || !(speed > 0.0 && speed <= fastest_ball_mps) || !not_below_0(ball.launch.spin_rad_per_s) ||
        !not_below_0(aerodynamics.drag) || !not_below_0(aerodynamics.lift) ||
        !not_below_0(aerodynamics.steady_drag.value_or(0.0)) || !not_below_0(flow.air.density_kg_per_m3) ||
        !(flow.air.viscosity_pa_s > 0.0))
        throw std::invalid_argument("a launch, an air or a landing height that no ball has");
}

// A moment of the flight and what is needed to draw the path between two of them.
struct Moment {
    double time_s;
    State state;
};

// Cubic through the places and velocities at both ends: within a millimetre or so over a step of the flight.
FlightPoint between(const Moment& from, const Moment& to, double time_s) {
    const double step = to.time_s - from.time_s;
    const double u = step > 0.0 ? (time_s - from.time_s) / step : 1.0;
    const double rest = 1.0 - u;
    const auto part = [&](std::size_t place, std::size_t velocity) {
        return rest * rest * ((1.0 + 2.0 * u) * from.state[place] + u * step * from.state[velocity]) +
               u * u * ((1.0 + 2.0 * rest) * to.state[place] - rest * step * to.state[velocity]);
    };
    return {part(along, v_along), part(right, v_right), part(height, v_up)};
}

FlightPoint place_of(const State& state) {
    return {state[along], state[right], state[height]};
}

// `moments` from the start to the landing.
std::vector<FlightPoint> path_through(const std::vector<Moment>& moments) {
    std::vector<FlightPoint> path;
    path.reserve(path_points);
    const double time_s = moments.back().time_s;
    std::size_t to = 1;
    for (int i = 0; i + 1 < path_points; ++i) {
        const double t = time_s * i / (path_points - 1);
        while (to + 1 < moments.size() && moments[to].time_s < t)
            ++to;
        path.push_back(between(moments[to - 1], moments[to], t));
    }
    path.push_back(place_of(moments.back().state));
    return path;
}

// When `part` of the state passes `level` within a step. Exactly one end lies above it.
template <typename Stepper>
Moment crossing(const Stepper& stepper, double from_s, double to_s, Part part, double level) {
    State state{};
    const auto over = [&](double t) {
        stepper.calc_state(t, state);
        return state[part] - level;
    };
    const double at_from = over(from_s);
    const double at_to = over(to_s);
    if (at_from == 0.0 || at_to == 0.0 || (at_from > 0.0) == (at_to > 0.0)) {
        // Rounding puts the crossing at an end.
        const double t = std::abs(at_from) < std::abs(at_to) ? from_s : to_s;
        stepper.calc_state(t, state);
        return {t, state};
    }
    std::uintmax_t most = 50;
    const auto bracket = boost::math::tools::toms748_solve(
        over, from_s, to_s, at_from, at_to, boost::math::tools::eps_tolerance<double>(48), most);
    const double t = 0.5 * (bracket.first + bracket.second);
    stepper.calc_state(t, state);
    return {t, state};
}

Flight landed(const std::vector<Moment>& moments, const Moment& peak, double landing_height_m) {
    const Moment& end = moments.back();
    const State& x = end.state;
    const double over_ground = std::hypot(x[v_along], x[v_right]);
    Flight flight;
    flight.path = path_through(moments);
    flight.peak = place_of(peak.state);
    flight.landing = {x[along], x[right], landing_height_m};
    flight.path.back() = flight.landing;
    flight.time_s = end.time_s;
    flight.landing_speed_mps = std::hypot(over_ground, x[v_up]);
    flight.landing_angle_rad = std::atan2(-x[v_up], over_ground);
    flight.landing_spin_rad_per_s = x[spin];
    flight.landing_heading_rad = std::atan2(x[v_right], x[v_along]);
    return flight;
}

}  // namespace

Flight fly(const BallLaunch& ball, const AirFlow& flow, const BallAerodynamics& aerodynamics,
           double landing_height_m, double tolerance) {
    check(ball, flow, aerodynamics, landing_height_m);
    using boost::numeric::odeint::make_dense_output;
    using boost::numeric::odeint::runge_kutta_dopri5;
    const Motion motion(ball, flow, aerodynamics);
    auto stepper = make_dense_output(tolerance, tolerance, runge_kutta_dopri5<State>());
    std::vector<Moment> moments{{0.0, start_of(ball)}};
    moments.reserve(64);
    stepper.initialize(moments.front().state, 0.0, 0.05);
    Moment peak = moments.front();
    for (int step = 0; step < most_steps; ++step) {
        const Moment from = moments.back();
        stepper.do_step(motion);
        const Moment to{stepper.current_time(), stepper.current_state()};
        // A step may rise and fall: what falls begins at its top.
        const Moment top = from.state[v_up] > 0.0 && to.state[v_up] <= 0.0
                               ? crossing(stepper, from.time_s, to.time_s, v_up, 0.0)
                               : from;
        for (const Moment* moment : {&top, &to})
            if (moment->state[height] > peak.state[height]) peak = *moment;
        const bool falls = to.state[v_up] < 0.0;
        if (falls && top.state[height] > landing_height_m && to.state[height] <= landing_height_m) {
            moments.push_back(crossing(stepper, top.time_s, to.time_s, height, landing_height_m));
            return landed(moments, peak, landing_height_m);
        }
        if (falls && to.state[height] <= std::min(0.0, landing_height_m))
            throw std::domain_error("the ball never gets as high as it is to land");
        moments.push_back(to);
    }
    throw std::domain_error("the ball does not come down");
}

}  // namespace landwidth
