#include "golfer-profiles/club_flight.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <stdexcept>

#include "geometry/units.hpp"
#include "golfer-profiles/profile_format.hpp"

namespace landwidth {

namespace {

// Between a ball that meets a third of the published drag and one that meets two and a half times as much
// lies every ball and a good deal of error in a launch monitor. Assumption.
constexpr double least_drag = 0.3, most_drag = 2.5;

// Of the carry. The promise is 1e-6; the integrator's own noise is below this.
constexpr double carry_accuracy = 2e-7;

// How the carry of a club grows with the speed of its ball, about; and how often a secant is tried.
constexpr double typical_power = 1.5;
constexpr int most_secants = 12;

const boost::math::tools::eps_tolerance<double> root_accuracy(40);

double reference_carry(const Launch& launch, const BallAerodynamics& aerodynamics) {
    static const AirFlow air = reference_air();
    return fly({launch}, air, aerodynamics).landing.along_m;
}

// The drag with which this launch carries so far, absent when none in the range does.
std::optional<double> drag_for(const Launch& launch, double lift, double carry_m, double least, double most) {
    const auto beyond = [&](double drag) {
        return reference_carry(launch, {.drag = drag, .lift = lift}) - carry_m;
    };
    const double at_least = beyond(least);
    const double at_most = beyond(most);
    if (at_least < 0.0 || at_most > 0.0) return std::nullopt;
    std::uintmax_t evaluations = 100;
    const auto drag =
        boost::math::tools::toms748_solve(beyond, least, most, at_least, at_most, root_accuracy, evaluations);
    return 0.5 * (drag.first + drag.second);
}

std::optional<double> drag_of_recorded(const Launch& launch, double lift, double carry_m) {
    if (!(launch.launch_rad > 0.0)) return std::nullopt;  // a topped ball has no carry to calibrate
    return drag_for(launch, lift, carry_m, least_drag, most_drag);
}

std::string doubt_about(const Launch& launch, double carry_m) {
    return fmt::format(
        "the recorded launch ({:.0f} mph, {:.1f} deg, {:.0f} rpm) does not go with a carry of {:.0f} yd in "
        "any "
        "likely drag; a usual launch for that carry is taken instead",
        launch.ball_speed_mps / metres_per_second_per_mph, launch.launch_rad / radians_per_degree,
        launch.spin_rad_per_s / radians_per_second_per_rpm, to_yards(carry_m));
}

// The club's ball hit `ratio` times as fast. A slower one spins less in proportion. A faster one does not
// spin more but less: with more spin it would only rise higher, and balls that fly past their club (fliers,
// thin hits) are known to spin little. Assumption.
Launch scaled(const Launch& launch, double ratio) {
    return {launch.ball_speed_mps * ratio, launch.launch_rad,
            launch.spin_rad_per_s * std::min(ratio, 1.0 / ratio)};
}

}  // namespace

AirFlow reference_air() {
    return {.air = air_of(standard_weather(0.0))};
}

ClubFlight::ClubFlight(const Club& club) {
    if (!club.pattern) throw std::logic_error("a club without a pattern has no usual flight");
    carry_m_ = club.pattern->usual.centre.carry_m;
    aerodynamics_.lift = usual_lift;
    if (club.launch) {
        if (const auto drag = drag_of_recorded(*club.launch, aerodynamics_.lift, carry_m_)) {
            launch_ = *club.launch;
            aerodynamics_.drag = *drag;
            return;
        }
        doubt_ = doubt_about(*club.launch, carry_m_);
    }
    inferred_ = true;
    launch_ = usual_launch(club.kind, carry_m_, club.loft_rad);
    // No golfer hits so far as some profiles say: then a ball of hardly any drag does.
    const auto drag = drag_for(launch_, aerodynamics_.lift, carry_m_, 0.0, most_drag);
    if (!drag) throw std::invalid_argument("a carry that no ball has");
    aerodynamics_.drag = *drag;
}

ClubFlight ClubFlight::punch() const {
    ClubFlight low = *this;
    low.launch_.launch_rad *= 0.5;
    low.carry_m_ = reference_carry(low.launch_, aerodynamics_);
    return low;
}

Launch ClubFlight::launch_at(double ratio) const {
    return scaled(launch_, ratio);
}

BallLaunch ClubFlight::launch_for(double carry_m) const {
    if (!(carry_m > 0.0 && std::isfinite(carry_m)))
        throw std::invalid_argument("a carry that is not above 0");
    // In logarithms: the carry is nearly a power of the speed, so that a secant needs few flights.
    const auto log_over = [&](double log_ratio) {
        return std::log(reference_carry(scaled(launch_, std::exp(log_ratio)), aerodynamics_) / carry_m);
    };
    const double highest = std::log(0.999 * fastest_ball_mps / launch_.ball_speed_mps);
    double ratio = 0.0;
    double over = std::log(carry_m_ / carry_m);
    double slope = typical_power;
    for (int flight = 0; flight < most_secants; ++flight) {
        if (std::abs(over) < carry_accuracy) return {scaled(launch_, std::exp(ratio))};
        const double next = std::min(ratio - over / slope, highest);
        if (next == ratio) break;
        const double next_over = log_over(next);
        slope = std::clamp((next_over - over) / (next - ratio), 0.25 * typical_power, 4.0 * typical_power);
        ratio = next;
        over = next_over;
    }
    // A ball that balloons, or about as far as the club can: slow and sure.
    const double lowest = -10.0;
    if (log_over(highest) < 0.0) throw std::domain_error("a carry out of this club's reach");
    std::uintmax_t evaluations = 200;
    const auto found =
        boost::math::tools::toms748_solve(log_over, lowest, highest, root_accuracy, evaluations);
    return {scaled(launch_, std::exp(0.5 * (found.first + found.second)))};
}

}  // namespace landwidth
