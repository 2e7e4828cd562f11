#include "golfer-profiles/sessions/to_reference.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <stdexcept>

namespace landwidth {

// One number to find, its logarithm: a drag or a speed. The carry is nearly a power of either.
struct ToReference::Search {
    std::function<Ball(double)> ball;
    double start;
    double power;  // about how the carry grows with it
    double lowest, highest;
};

namespace {

constexpr double hardly_airborne_m = 10.0;
// What is left over is made up for by taking differences.
constexpr double near_enough_m = 0.2;
constexpr int most_flights = 25;
// Of the integrator: landings are good to a few millimetres, and sooner found.
constexpr double tolerance = 1e-5;

// As far as ClubFlight believes a recorded launch.
constexpr double least_drag = 0.3, most_drag = 2.5;
constexpr double carry_by_drag = -0.5, carry_by_speed = 1.5;
// A ball of the club is hit at most so many times as fast as usual, and at least so slowly.
constexpr double slowest_ratio = 0.02, fastest_ratio = 1.6;

// Side spin by which curve is measured, and the most a ball has: assumption.
constexpr double measured_tilt_rad = 0.1;
constexpr double most_tilt_rad = 0.6;

ShotOffset landing_of(const Flight& flight) {
    return {flight.landing.along_m, flight.landing.right_m};
}

double range_of(const ShotOffset& place) {
    return std::hypot(place.carry_m, place.side_m);
}

double direction_of(const ShotOffset& place) {
    return std::atan2(place.side_m, place.carry_m);
}

}  // namespace

ToReference::ToReference(const ClubFlight& club, double curve_share)
    : club_(club), curve_share_(curve_share) {
    const BallLaunch curving{.launch = club.launch(), .tilt_rad = measured_tilt_rad};
    const ShotOffset lands = landing_of(fly(curving, reference_air(), club.aerodynamics()));
    curve_per_tilt_ = direction_of(lands) / measured_tilt_rad;
}

BallLaunch ToReference::aimed(const Launch& launch, double off_line_rad) const {
    // A ball without spin does not curve.
    constexpr double least_curve_per_tilt = 1e-3;
    if (curve_per_tilt_ < least_curve_per_tilt) return {.launch = launch, .right_rad = off_line_rad};
    const double tilt =
        std::clamp(curve_share_ * off_line_rad / curve_per_tilt_, -most_tilt_rad, most_tilt_rad);
    return {.launch = launch, .right_rad = off_line_rad - tilt * curve_per_tilt_, .tilt_rad = tilt};
}

ToReference::Ball ToReference::own_ball(const Launch& launch, double log_drag) const {
    return {launch, {.drag = std::exp(log_drag), .lift = club_.aerodynamics().lift}};
}

ToReference::Ball ToReference::club_ball(double log_speed) const {
    return {club_.launch_at(std::exp(log_speed)), club_.aerodynamics()};
}

// A secant in the logarithm of what is looked for; the direction follows by itself, as it turns with the aim.
std::optional<ShotOffset> ToReference::found(const ShotOffset& landed, const AirFlow& flow,
                                             const Search& search) const {
    const double range = range_of(landed);
    const double direction = direction_of(landed);
    const double flattest = std::min(0.5 * search.power, 3.0 * search.power);
    const double steepest = std::max(0.5 * search.power, 3.0 * search.power);
    double value = std::clamp(search.start, search.lowest, search.highest);
    double off_line = direction;
    double power = search.power;
    double value_before = value;
    double log_range_before = 0.0;
    for (int flight = 0; flight < most_flights; ++flight) {
        const Ball ball = search.ball(value);
        const BallLaunch launch = aimed(ball.launch, off_line);
        const ShotOffset there = landing_of(fly(launch, flow, ball.aerodynamics, 0.0, tolerance));
        if (std::hypot(there.carry_m - landed.carry_m, there.side_m - landed.side_m) < near_enough_m) {
            const ShotOffset reference =
                landing_of(fly(launch, reference_air(), ball.aerodynamics, 0.0, tolerance));
            return ShotOffset{landed.carry_m + (reference.carry_m - there.carry_m),
                              landed.side_m + (reference.side_m - there.side_m)};
        }
        const double log_range = std::log(range_of(there));
        if (flight > 0 && value != value_before)
            power = std::clamp((log_range - log_range_before) / (value - value_before), flattest, steepest);
        value_before = value;
        log_range_before = log_range;
        value = std::clamp(value + (std::log(range) - log_range) / power, search.lowest, search.highest);
        off_line += direction - direction_of(there);
    }
    return std::nullopt;
}

std::optional<ShotOffset> ToReference::landing(const ShotOffset& landed, const AirFlow& flow,
                                               const std::optional<Launch>& own) const {
    if (landed.carry_m < hardly_airborne_m) return landed;
    const auto tried = [&](const Search& search) -> std::optional<ShotOffset> {
        try {
            return found(landed, flow, search);
        } catch (const std::domain_error&) {  // a ball that the wind holds up, or that never rises
            return std::nullopt;
        }
    };
    if (own && own->launch_rad > 0.0 && own->ball_speed_mps > 0.0) {
        const auto by_own = tried({[&](double log_drag) { return own_ball(*own, log_drag); },
                                   std::log(club_.aerodynamics().drag), carry_by_drag, std::log(least_drag),
                                   std::log(most_drag)});
        if (by_own) return by_own;
    }
    return tried({[&](double log_speed) { return club_ball(log_speed); },
                  std::log(range_of(landed) / club_.carry_m()) / carry_by_speed, carry_by_speed,
                  std::log(slowest_ratio), std::log(fastest_ratio)});
}

}  // namespace landwidth
