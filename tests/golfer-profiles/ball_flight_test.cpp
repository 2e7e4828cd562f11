// Ball flight against closed forms and the laws it must keep.
#include "golfer-profiles/ball_flight.hpp"

#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

#include "golfer-profiles/ball.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/launches.hpp"

using namespace landwidth;
using namespace landwidth::test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr BallAerodynamics vacuum{.drag = 0, .lift = 0};

BallLaunch with_curve(double right_deg, double tilt_deg) {
    BallLaunch ball = tour_drive();
    ball.right_rad = right_deg * radians_per_degree;
    ball.tilt_rad = tilt_deg * radians_per_degree;
    return ball;
}

void require_mirrored(const Flight& a, const Flight& b) {
    REQUIRE_THAT(a.landing.along_m, WithinAbs(b.landing.along_m, 1e-9));
    REQUIRE_THAT(a.landing.right_m, WithinAbs(-b.landing.right_m, 1e-9));
    REQUIRE_THAT(a.landing_heading_rad, WithinAbs(-b.landing_heading_rad, 1e-9));
    REQUIRE_THAT(a.peak.height_m, WithinAbs(b.peak.height_m, 1e-9));
}

}  // namespace

TEST_CASE("in a vacuum a ball flies a parabola") {
    for (double launch_deg : {2.0, 10.9, 30.0, 60.0, 89.0}) {
        for (double height_m : {0.0, -25.0, 0.02}) {
            CAPTURE(launch_deg, height_m);
            BallLaunch ball{launch_of(150, launch_deg, 3000)};
            ball.right_rad = 0.1;
            const double v = ball.launch.ball_speed_mps;
            const double up = v * std::sin(ball.launch.launch_rad);
            const double over_ground = v * std::cos(ball.launch.launch_rad);
            const double time = (up + std::sqrt(up * up - 2 * gravity_mps2 * height_m)) / gravity_mps2;
            const Flight flight = fly(ball, wind(30, 20), vacuum, height_m);
            REQUIRE_THAT(flight.time_s, WithinAbs(time, 1e-6));
            REQUIRE_THAT(flight.landing.along_m, WithinAbs(over_ground * time * std::cos(0.1), 1e-6));
            REQUIRE_THAT(flight.landing.right_m, WithinAbs(over_ground * time * std::sin(0.1), 1e-6));
            REQUIRE_THAT(flight.peak.height_m, WithinAbs(up * up / (2 * gravity_mps2), 1e-6));
            REQUIRE_THAT(flight.landing_speed_mps,
                         WithinAbs(std::sqrt(v * v - 2 * gravity_mps2 * height_m), 1e-6));
            REQUIRE_THAT(flight.landing_heading_rad, WithinAbs(0.1, 1e-9));
            REQUIRE(flight.landing.height_m == height_m);
        }
    }
}

// Straight up with a steady drag: height (vt^2 / 2g) ln(1 + v0^2 / vt^2), speed back at the ground
// v0 / sqrt(1 + v0^2 / vt^2), time (vt / g) (atan(v0 / vt) + asinh(v0 / vt)); vt the terminal speed.
TEST_CASE("with a steady drag a ball hit straight up flies as the closed form says") {
    for (double drag_coefficient : {0.1, 0.25, 0.5, 2.0}) {
        for (double v0 : {5.0, 30.0, 75.0}) {
            CAPTURE(drag_coefficient, v0);
            const AirFlow flow = reference_air();
            const double area = std::numbers::pi * ball_radius_m * ball_radius_m;
            const double vt = std::sqrt(2 * ball_mass_kg * gravity_mps2 /
                                        (flow.air.density_kg_per_m3 * drag_coefficient * area));
            // Steps finer than usual: at the top, where the ball stands still, the drag has a corner.
            const Flight flight = fly({{v0, std::numbers::pi / 2, 0}}, flow,
                                      {.drag = 1, .lift = 1, .steady_drag = drag_coefficient}, 0.0, 1e-10);
            const double share = v0 / vt;
            REQUIRE_THAT(flight.peak.height_m,
                         WithinRel(vt * vt / (2 * gravity_mps2) * std::log1p(share * share), 1e-6));
            REQUIRE_THAT(flight.landing_speed_mps, WithinRel(v0 / std::sqrt(1 + share * share), 1e-6));
            REQUIRE_THAT(flight.time_s,
                         WithinRel(vt / gravity_mps2 * (std::atan(share) + std::asinh(share)), 1e-6));
            REQUIRE_THAT(flight.landing_angle_rad, WithinAbs(std::numbers::pi / 2, 1e-6));
        }
    }
}

// In a tail wind as fast as the ball's own way over the ground, a steady drag meets only the rise and fall:
// seen from the air the ball is hit straight up.
TEST_CASE("the air carries a ball along") {
    const Launch launch = launch_of(120, 40, 0);
    AirFlow flow = reference_air();
    const BallAerodynamics steady{.drag = 1, .lift = 1, .steady_drag = 0.3};
    const double up = launch.ball_speed_mps * std::sin(launch.launch_rad);
    const Flight straight_up = fly({{up, std::numbers::pi / 2, 0}}, flow, steady);
    flow.along_mps = launch.ball_speed_mps * std::cos(launch.launch_rad);
    const Flight carried = fly({launch}, flow, steady);
    REQUIRE_THAT(carried.time_s, WithinAbs(straight_up.time_s, 1e-6));
    REQUIRE_THAT(carried.peak.height_m, WithinAbs(straight_up.peak.height_m, 1e-5));
    REQUIRE_THAT(carried.landing.along_m, WithinAbs(flow.along_mps * straight_up.time_s, 1e-4));
}

// The carry must not hang on the steps: a tenth of a yard is asked, the promise is a tenth of a millimetre.
TEST_CASE("smaller steps change nothing") {
    const AirFlow flow = wind(-10, 8);
    for (const Launch& launch : {launch_of(167, 10.9, 2686), launch_of(120, 16, 7000),
                                 launch_of(85, 26, 9000), launch_of(20, 30, 3000), launch_of(180, 8, 2000)}) {
        const BallLaunch ball{launch, 0.02, 0.1};
        const Flight usual = fly(ball, flow);
        // Fifth order: 1/32 of the error allowed is half the step. And far beyond.
        for (double tolerance : {flight_tolerance / 32, 1e-12}) {
            const Flight fine = fly(ball, flow, {}, 0.0, tolerance);
            REQUIRE_THAT(usual.landing.along_m, WithinAbs(fine.landing.along_m, 1e-4));
            REQUIRE_THAT(usual.landing.right_m, WithinAbs(fine.landing.right_m, 1e-4));
            REQUIRE_THAT(usual.peak.height_m, WithinAbs(fine.peak.height_m, 1e-4));
        }
    }
}

TEST_CASE("in still air a ball never gains energy") {
    for (double tilt_deg : {0.0, 20.0}) {
        for (const Launch& launch :
             {launch_of(167, 10.9, 2686), launch_of(120, 16, 7000), launch_of(80, 30, 9500)}) {
            const BallLaunch ball{launch, 0.0, tilt_deg * radians_per_degree};
            const Flight whole = fly(ball, reference_air());
            // The speed at a height, from the flight that ends there.
            double before = 0.5 * launch.ball_speed_mps * launch.ball_speed_mps;
            for (double share = 0.99; share > -2.0; share -= 0.05) {
                const double height = share * whole.peak.height_m;
                const double speed = fly(ball, reference_air(), {}, height).landing_speed_mps;
                const double energy = 0.5 * speed * speed + gravity_mps2 * height;
                REQUIRE(energy < before);
                before = energy;
            }
            // And from the path: height gained is at most what is left of the start's energy.
            REQUIRE(whole.peak.height_m * gravity_mps2 < 0.5 * launch.ball_speed_mps * launch.ball_speed_mps);
        }
    }
}

TEST_CASE("energy along the path never rises in still air") {
    const Flight flight = fly(tour_drive(), reference_air());
    const double step = flight.time_s / static_cast<double>(flight.path.size() - 1);
    double before = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i + 1 < flight.path.size(); ++i) {
        const FlightPoint& a = flight.path[i - 1];
        const FlightPoint& b = flight.path[i + 1];
        const double along = (b.along_m - a.along_m) / (2 * step);
        const double up = (b.height_m - a.height_m) / (2 * step);
        const double energy = 0.5 * (along * along + up * up) + gravity_mps2 * flight.path[i].height_m;
        REQUIRE(energy < before);
        before = energy;
    }
}

TEST_CASE("left and right are mirrored") {
    require_mirrored(fly(with_curve(3, 12), wind(-5, 9)), fly(with_curve(-3, -12), wind(-5, -9)));
    require_mirrored(fly(with_curve(0, 40), wind(0, 0)), fly(with_curve(0, -40), wind(0, 0)));
    const Flight straight = fly(tour_drive(), reference_air());
    REQUIRE(straight.landing.right_m == 0.0);
    REQUIRE(straight.landing_heading_rad == 0.0);
}

TEST_CASE("a ball curves to where its axis tilts and drifts with the wind") {
    REQUIRE(fly(with_curve(0, 10), reference_air()).landing.right_m > 5.0);
    REQUIRE(fly(tour_drive(), wind(0, 10)).landing.right_m > 5.0);
    REQUIRE(fly(tour_drive(), wind(0, 10)).landing_heading_rad > 0.0);
}

TEST_CASE("turning the aim turns the flight") {
    const Flight ahead = fly(with_curve(0, 8), reference_air());
    const Flight turned = fly(with_curve(30, 8), reference_air());
    const double angle = 30 * radians_per_degree;
    REQUIRE_THAT(
        turned.landing.along_m,
        WithinAbs(ahead.landing.along_m * std::cos(angle) - ahead.landing.right_m * std::sin(angle), 1e-6));
    REQUIRE_THAT(
        turned.landing.right_m,
        WithinAbs(ahead.landing.along_m * std::sin(angle) + ahead.landing.right_m * std::cos(angle), 1e-6));
    REQUIRE_THAT(turned.landing_heading_rad, WithinAbs(ahead.landing_heading_rad + angle, 1e-7));
}

TEST_CASE("a path leads from the ball over its peak to the landing") {
    for (double height_m : {0.0, 20.0, -30.0}) {
        const Flight flight = fly(with_curve(2, 10), wind(4, -6), {}, height_m);
        REQUIRE(flight.path.size() >= 16);
        REQUIRE(flight.path.front().along_m == 0.0);
        REQUIRE(flight.path.front().height_m == 0.0);
        REQUIRE(flight.path.back().along_m == flight.landing.along_m);
        REQUIRE(flight.path.back().height_m == height_m);
        double highest = 0.0;
        for (std::size_t i = 1; i < flight.path.size(); ++i) {
            REQUIRE(flight.path[i].along_m > flight.path[i - 1].along_m);
            highest = std::max(highest, flight.path[i].height_m);
        }
        REQUIRE(highest <= flight.peak.height_m + 1e-3);
        REQUIRE_THAT(highest, WithinAbs(flight.peak.height_m, 0.3));
    }
    // A point of the path is a landing at its height.
    const Flight flight = fly(tour_drive(), reference_air());
    const FlightPoint& late = flight.path[flight.path.size() - 5];
    REQUIRE_THAT(fly(tour_drive(), reference_air(), {}, late.height_m).landing.along_m,
                 WithinAbs(late.along_m, 0.01));
}

TEST_CASE("a higher landing comes sooner") {
    double before = std::numeric_limits<double>::infinity();
    for (double height = -40; height < 35; height += 2.5) {
        const double carry = fly(tour_drive(), reference_air(), {}, height).landing.along_m;
        REQUIRE(carry < before);
        before = carry;
    }
}

TEST_CASE("a ball that cannot get there is refused, and so is nonsense") {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    const AirFlow still = reference_air();
    REQUIRE_THROWS_AS(fly(tour_drive(), still, {}, 80.0), std::domain_error);
    REQUIRE_THROWS_AS(fly({launch_of(100, -5, 2000)}, still), std::domain_error);
    REQUIRE_NOTHROW(fly({launch_of(100, -5, 2000)}, still, {}, -1.0));
    REQUIRE_THROWS_AS(fly({launch_of(0, 10, 2000)}, still), std::invalid_argument);
    REQUIRE_THROWS_AS(fly({launch_of(nan, 10, 2000)}, still), std::invalid_argument);
    REQUIRE_THROWS_AS(fly({launch_of(100, nan, 2000)}, still), std::invalid_argument);
    REQUIRE_THROWS_AS(fly({launch_of(100, 10, -1)}, still), std::invalid_argument);
    REQUIRE_THROWS_AS(fly({{fastest_ball_mps * 1.01, 0.2, 0}}, still), std::invalid_argument);
    REQUIRE_THROWS_AS(fly(tour_drive(), still, {.drag = -1}), std::invalid_argument);
    REQUIRE_THROWS_AS(fly(tour_drive(), still, {}, nan), std::invalid_argument);
    REQUIRE_THROWS_AS(fly(tour_drive(), wind(nan, 0)), std::invalid_argument);
}

TEST_CASE("odd launches fly") {
    for (double mph : {1.0, 15.0, 100.0, 250.0}) {
        for (double deg : {0.5, 12.0, 45.0, 80.0, 89.9}) {
            for (double rpm : {0.0, 3000.0, 15000.0}) {
                for (double along : {-60.0, 0.0, 60.0}) {
                    CAPTURE(mph, deg, rpm, along);
                    const Flight flight = fly({launch_of(mph, deg, rpm)}, wind(along, 30));
                    REQUIRE(std::isfinite(flight.landing.along_m));
                    REQUIRE(std::isfinite(flight.landing.right_m));
                    REQUIRE(flight.landing_angle_rad > 0.0);
                    REQUIRE(flight.landing_angle_rad <= std::numbers::pi / 2);
                    REQUIRE(flight.peak.height_m > 0.0);
                }
            }
        }
    }
}
