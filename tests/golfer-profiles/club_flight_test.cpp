#include "golfer-profiles/club_flight.hpp"

#include <stdexcept>
#include <string>

#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/typical_club.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/launches.hpp"

using namespace landwidth;
using namespace landwidth::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Club club_of(ClubKind kind, double carry_yd, std::optional<double> loft_deg = {}) {
    Club club{.name = "club on trial", .kind = kind};
    if (loft_deg) club.loft_rad = *loft_deg * radians_per_degree;
    ShotPattern pattern;
    pattern.usual = {{Yards{carry_yd}.metres(), 0}, 8, 10, 0};
    club.pattern = pattern;
    return club;
}

double reference_carry(const ClubFlight& flight, const BallLaunch& ball) {
    return fly(ball, reference_air(), flight.aerodynamics()).landing.along_m;
}

void require_exact(const ClubFlight& flight) {
    for (double share : {0.05, 0.2, 0.5, 0.8, 0.95, 1.0, 1.05, 1.2, 1.5, 1.6}) {
        CAPTURE(share);
        const double carry = share * flight.carry_m();
        REQUIRE_THAT(reference_carry(flight, flight.launch_for(carry)), WithinRel(carry, 1e-6));
    }
}

constexpr ClubKind kinds[] = {ClubKind::driver, ClubKind::mini_driver,  ClubKind::fairway_wood,
                              ClubKind::hybrid, ClubKind::driving_iron, ClubKind::iron,
                              ClubKind::wedge};

}  // namespace

TEST_CASE("the reference carry of every preset club is the measured one") {
    for (const Preset& preset : presets()) {
        for (const Club& club : preset_golfer(preset.name).clubs) {
            if (!club.pattern) continue;
            CAPTURE(preset.name, club.name);
            const ClubFlight flight(club);
            REQUIRE(flight.carry_m() == club.pattern->usual.centre.carry_m);
            REQUIRE(flight.launch_is_inferred());
            REQUIRE_FALSE(flight.doubt());
            require_exact(flight);
        }
    }
}

TEST_CASE("so is that of every kind, and of golfers who hit it 1 to 450 yards") {
    for (ClubKind kind : kinds) {
        for (double carry_yd : {1.0, 20.0, 150.0, 320.0, 450.0}) {
            for (double loft_deg : {0.0, 30.0, 80.0}) {
                CAPTURE(club_kind_name(kind), carry_yd, loft_deg);
                require_exact(ClubFlight(club_of(kind, carry_yd, loft_deg)));
            }
        }
    }
}

TEST_CASE("a recorded launch is kept, and drag makes its carry") {
    Club club = club_of(ClubKind::driver, 222, 10.5);
    club.launch = launch_of(143, 12.5, 2900);
    const ClubFlight flight(club);
    REQUIRE_FALSE(flight.launch_is_inferred());
    REQUIRE_FALSE(flight.doubt());
    REQUIRE(flight.launch() == *club.launch);
    REQUIRE(flight.launch_for(flight.carry_m()).launch == *club.launch);
    require_exact(flight);
}

TEST_CASE("a launch that does not go with the carry is set aside, and said to be") {
    for (const Launch& launch : {launch_of(60, 12, 2500), launch_of(150, 0, 2500), launch_of(150, -3, 2500),
                                 launch_of(140, 80, 3000)}) {
        CAPTURE(launch.ball_speed_mps, launch.launch_rad);
        Club club = club_of(ClubKind::driver, 222);
        club.launch = launch;
        const ClubFlight flight(club);
        REQUIRE(flight.launch_is_inferred());
        REQUIRE_THAT(flight.doubt().value(), Contains("does not go with a carry of 222 yd"));
        require_exact(flight);
    }
}

TEST_CASE("farther means faster") {
    for (ClubKind kind : kinds) {
        const ClubFlight flight(club_of(kind, 150));
        double before = 0.0;
        for (double share = 0.05; share <= 1.6; share += 0.05) {
            const BallLaunch ball = flight.launch_for(share * flight.carry_m());
            REQUIRE(ball.launch.ball_speed_mps > before);
            REQUIRE(ball.launch.launch_rad == flight.launch().launch_rad);
            before = ball.launch.ball_speed_mps;
        }
    }
}

TEST_CASE("a punch is lower, lands flatter and carries less") {
    for (const Club& club :
         {club_of(ClubKind::driver, 220), club_of(ClubKind::iron, 140), club_of(ClubKind::wedge, 90)}) {
        const ClubFlight usual(club);
        const ClubFlight punch = usual.punch();
        const auto flown = [](const ClubFlight& f) {
            return fly(f.launch_for(f.carry_m()), reference_air(), f.aerodynamics());
        };
        REQUIRE_THAT(flown(punch).landing.along_m, WithinRel(punch.carry_m(), 1e-6));
        REQUIRE(punch.carry_m() < usual.carry_m());
        REQUIRE(flown(punch).peak.height_m < 0.7 * flown(usual).peak.height_m);
        REQUIRE(flown(punch).landing_angle_rad < flown(usual).landing_angle_rad);
        require_exact(punch);
    }
}

TEST_CASE("more loft launches higher with more spin") {
    double angle = 0.0;
    double spin_per_speed = 0.0;
    for (double loft_deg = 22; loft_deg <= 60; loft_deg += 2) {
        const Launch launch = usual_launch(ClubKind::iron, Yards{80}.metres(), loft_deg * radians_per_degree);
        REQUIRE(launch.launch_rad > angle);
        REQUIRE(launch.spin_rad_per_s / launch.ball_speed_mps > spin_per_speed);
        angle = launch.launch_rad;
        spin_per_speed = launch.spin_rad_per_s / launch.ball_speed_mps;
    }
}

TEST_CASE("what has no flight is refused") {
    Club putter{.name = "putter", .kind = ClubKind::putter};
    REQUIRE_THROWS_AS(ClubFlight(putter), std::logic_error);
    REQUIRE_THROWS_AS(usual_launch(ClubKind::putter, 10, {}), std::logic_error);
    REQUIRE_THROWS_AS(usual_launch(ClubKind::iron, 0, {}), std::invalid_argument);
    const ClubFlight flight(club_of(ClubKind::iron, 140));
    REQUIRE_THROWS_AS(flight.launch_for(0), std::invalid_argument);
    REQUIRE_THROWS_AS(flight.launch_for(-5), std::invalid_argument);
}
