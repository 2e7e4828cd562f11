// Shots of a day brought to the reference day, against balls flown on both (ball_flight.hpp).
#include "golfer-profiles/sessions/to_reference.hpp"

#include <cmath>
#include <vector>

#include "golfer-profiles/sessions/session_conditions.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/launches.hpp"

using namespace landwidth;
using namespace landwidth::test;

namespace {

constexpr double half_curve = 0.5;

struct Swing {
    ClubKind kind;
    double ball_speed_mph, launch_deg, spin_rpm;
    double drag;  // of the ball, a factor as in BallAerodynamics
};

const std::vector<Swing> swings{
    {ClubKind::driver, 167, 10.9, 2686, 0.825}, {ClubKind::driver, 145, 13, 2900, 0.88},
    {ClubKind::driver, 110, 15.5, 3200, 1.0},   {ClubKind::fairway_wood, 140, 11, 3700, 0.95},
    {ClubKind::iron, 120, 16.3, 7097, 1.04},    {ClubKind::iron, 100, 18.5, 6000, 1.1},
    {ClubKind::wedge, 94, 27, 9700, 1.08}};

Launch launch_of(const Swing& swing) {
    return test::launch_of(swing.ball_speed_mph, swing.launch_deg, swing.spin_rpm);
}

BallAerodynamics aerodynamics_of(const Swing& swing) {
    return {.drag = swing.drag, .lift = usual_lift};
}

ShotOffset landing(const BallLaunch& ball, const AirFlow& flow, const BallAerodynamics& aerodynamics) {
    const FlightPoint place = fly(ball, flow, aerodynamics).landing;
    return {place.along_m, place.right_m};
}

Club club_of(const Swing& swing, bool with_launch) {
    Club club{.name = "club", .kind = swing.kind, .pattern = ShotPattern{}};
    const BallLaunch straight{launch_of(swing)};
    club.pattern->usual.centre = landing(straight, reference_air(), aerodynamics_of(swing));
    if (with_launch) club.launch = launch_of(swing);
    return club;
}

std::vector<AirFlow> days() {
    std::vector<AirFlow> all;
    for (const double mph : {0.0, 8.0, 15.0}) {
        for (int eighth = 0; eighth < (mph > 0.0 ? 8 : 1); ++eighth) {
            for (const double celsius : {0.0, 15.0, 35.0}) {
                for (const double altitude_m : {0.0, 1600.0}) {
                    AirFlow flow =
                        wind(mph * std::cos(eighth * 0.7853981634), mph * std::sin(eighth * 0.7853981634));
                    flow.air = air_of(weather_of(
                        {.temperature_k = celsius + kelvin_at_zero_celsius, .altitude_m = altitude_m}));
                    all.push_back(flow);
                }
            }
        }
    }
    return all;
}

// The furthest that `swing`, off the line by so much and `speed` times as fast, ends from the truth over all
// days, in the larger of yards and per cent of its carry: 1 is a yard or 1 %.
double worst_error(const Swing& swing, double right_rad, double tilt_rad, double speed, bool own_launch,
                   bool club_launch) {
    const ToReference to_reference(ClubFlight(club_of(swing, club_launch)), half_curve);
    Launch launch = launch_of(swing);
    launch.ball_speed_mps *= speed;
    launch.spin_rad_per_s *= speed;
    const BallLaunch ball{launch, right_rad, tilt_rad};
    const BallAerodynamics aerodynamics = aerodynamics_of(swing);
    const ShotOffset truth = landing(ball, reference_air(), aerodynamics);
    double worst = 0.0;
    for (const AirFlow& day : days()) {
        const auto found = to_reference.landing(landing(ball, day, aerodynamics), day,
                                                own_launch ? std::optional(launch) : std::nullopt);
        REQUIRE(found);
        const double off = std::hypot(found->carry_m - truth.carry_m, found->side_m - truth.side_m);
        worst = std::max(worst, off / std::max(metres_per_yard, 0.01 * truth.carry_m));
    }
    return worst;
}

}  // namespace

TEST_CASE("straight shots with their launch come within a yard or 1 % of the reference day") {
    for (const Swing& swing : swings) {
        CAPTURE(swing.ball_speed_mph, swing.launch_deg);
        REQUIRE(worst_error(swing, 0.0, 0.0, 1.0, true, true) < 0.5);
        REQUIRE(worst_error(swing, 0.0, 0.0, 1.0, true, false) < 0.5);
    }
}

TEST_CASE("so do shots off the line, half by direction and half by curve") {
    for (const Swing& swing : swings) {
        CAPTURE(swing.ball_speed_mph, swing.launch_deg);
        const ToReference helper(ClubFlight(club_of(swing, true)), half_curve);
        const ShotOffset curved =
            landing({launch_of(swing), 0.0, 0.1}, reference_air(), aerodynamics_of(swing));
        const double tilt_for_4_deg =
            0.1 * 4 * radians_per_degree / std::atan2(curved.side_m, curved.carry_m);
        REQUIRE(worst_error(swing, 4 * radians_per_degree, tilt_for_4_deg, 1.0, true, true) < 1.0);
        REQUIRE(worst_error(swing, -4 * radians_per_degree, -tilt_for_4_deg, 1.0, true, true) < 1.0);
    }
}

TEST_CASE("so do slower shots of a club whose launch is known") {
    for (const Swing& swing : swings) {
        CAPTURE(swing.ball_speed_mph, swing.launch_deg);
        REQUIRE(worst_error(swing, 0.0, 0.0, 0.93, false, true) < 0.5);
        REQUIRE(worst_error(swing, 0.0, 0.0, 0.7, false, true) < 0.7);
    }
}

TEST_CASE("a usual launch that is not recorded is found near enough") {
    // What the drives of a tour player and the irons of one are: the rest differs from the usual.
    REQUIRE(worst_error(swings[0], 0.0, 0.0, 1.0, false, false) < 0.5);
    REQUIRE(worst_error(swings[4], 0.0, 0.0, 1.0, false, false) < 0.5);
    // Unlike the usual: more is not known than the carry. Most of the correction is right all the same.
    for (const Swing& swing : swings) {
        CAPTURE(swing.ball_speed_mph, swing.launch_deg);
        REQUIRE(worst_error(swing, 0.0, 0.0, 1.0, false, false) < 2.5);
    }
}

TEST_CASE(
    "how far off a launch is that is not as usual and not recorded, and a curve that is not as assumed") {
    // As the header says it.
    const auto in_yards = [](const Swing& swing, double error) {
        return to_yards(error * 0.01 * club_of(swing, false).pattern->usual.centre.carry_m);
    };
    const Swing high{ClubKind::driver, 145, 15, 3500, 0.88};
    REQUIRE(in_yards(high, worst_error(high, 0.0, 0.0, 1.0, false, false)) < 11.0);
    REQUIRE(worst_error(high, 0.0, 0.0, 1.0, true, false) < 0.5);
    constexpr double tilt_of_6_deg = 0.25;
    const double all_curve = worst_error(swings[1], 0.0, tilt_of_6_deg, 1.0, true, true);
    REQUIRE(in_yards(swings[1], all_curve) < 6.0);
    REQUIRE(in_yards(swings[1], all_curve) > 1.0);
}

TEST_CASE("on the reference day no shot moves, to the last bit") {
    for (const Swing& swing : swings) {
        const ToReference to_reference(ClubFlight(club_of(swing, false)), half_curve);
        for (const ShotOffset shot : {ShotOffset{101.37, -17.3}, ShotOffset{88.123456789, 0.1}}) {
            for (const bool own : {false, true}) {
                const auto found = to_reference.landing(shot, reference_air(),
                                                        own ? std::optional(launch_of(swing)) : std::nullopt);
                REQUIRE(found);
                REQUIRE(*found == shot);
            }
        }
    }
}

TEST_CASE("heads and tails of a wind, cold and height move shots the way they should") {
    const ToReference drive(ClubFlight(club_of(swings[1], true)), half_curve);
    const ShotOffset shot{200, 0};
    const auto carry_from = [&](const AirFlow& flow) { return drive.landing(shot, flow, {})->carry_m; };
    REQUIRE(carry_from(wind(-10, 0)) > 210);
    REQUIRE(carry_from(wind(10, 0)) < 195);
    REQUIRE(carry_from(wind(-10, 0)) - 200 > 200 - carry_from(wind(10, 0)));
    AirFlow cold = reference_air(), high = reference_air();
    cold.air = air_of(weather_of({.temperature_k = 275.0}));
    high.air = air_of(weather_of({.altitude_m = 1600.0}));
    REQUIRE(carry_from(cold) > 201);
    REQUIRE(carry_from(high) < 195);
    // A ball straight on the line in a wind that blows to the right was started left of it.
    REQUIRE(drive.landing(shot, wind(0, 10), {})->side_m < -8);
}

TEST_CASE("hardly airborne balls stay, and none is invented in a storm") {
    const ToReference drive(ClubFlight(club_of(swings[1], true)), half_curve);
    REQUIRE(*drive.landing({9.0, 4.0}, wind(-15, 0), {}) == ShotOffset{9.0, 4.0});
    // 260 m against 60 mph is out of this club's reach.
    REQUIRE(!drive.landing({260.0, 0.0}, wind(-60, 0), {}));
    // A ball that does not spin goes where it was hit.
    Club spinless = club_of(swings[1], true);
    spinless.launch = test::launch_of(145, 13, 0);
    spinless.pattern->usual.centre.carry_m = 120;
    REQUIRE(ToReference(ClubFlight(spinless), half_curve).landing({120.0, 9.0}, wind(-5, 0), {}));
    // A recorded launch that no drag brings so far is set aside for the club's.
    const Launch topped{60 * metres_per_second_per_mph, 2 * radians_per_degree, 10.0};
    const AirFlow breeze = wind(-8, 0);
    REQUIRE(*drive.landing({200, 0}, breeze, topped) == *drive.landing({200, 0}, breeze, {}));
}
