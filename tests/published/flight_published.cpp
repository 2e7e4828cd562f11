// Air and ball flight against published values and common practice.
#include <cmath>

#include "golfer-profiles/air.hpp"
#include "golfer-profiles/presets.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/launches.hpp"

using namespace landwidth;
using namespace landwidth::test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// A 95 mph swinger's driver, as this program infers it from a carry of 222 yd.
ClubFlight club_golfers_driver() {
    Club club{.name = "driver", .kind = ClubKind::driver, .loft_rad = 10.5 * radians_per_degree};
    ShotPattern pattern;
    pattern.usual = {{Yards{222}.metres(), 0}, 12, 15, 0};
    club.pattern = pattern;
    return ClubFlight(club);
}

double carry_of(const ClubFlight& club, const AirFlow& flow) {
    return carry_yd({club.launch()}, flow, club.aerodynamics());
}

ClubFlight tour_driver() {
    return ClubFlight(preset_golfer("tour").clubs[0]);
}
ClubFlight bogey_driver() {
    return ClubFlight(preset_golfer("bogey-man").clubs[0]);
}

}  // namespace

// ISO 2533.
TEST_CASE("standard atmosphere") {
    REQUIRE_THAT(air_of(standard_weather(0)).density_kg_per_m3, WithinAbs(1.225, 0.0005));
    // The standard's own table, from memory: 1.1117, 1.0581 and 1.0066 at 1000, 1500 and 2000 m. The
    // facts' 1.048 at 1609 m is what it gives at 1600 m; at 1609 m the standard's formula gives 1.0467.
    REQUIRE_THAT(air_of(standard_weather(1000)).density_kg_per_m3, WithinAbs(1.1117, 0.0001));
    REQUIRE_THAT(air_of(standard_weather(1500)).density_kg_per_m3, WithinAbs(1.0581, 0.0001));
    REQUIRE_THAT(air_of(standard_weather(2000)).density_kg_per_m3, WithinAbs(1.0066, 0.0001));
    REQUIRE_THAT(air_of(standard_weather(1600)).density_kg_per_m3, WithinAbs(1.048, 0.001));
    REQUIRE_THAT(air_of(standard_weather(1609)).density_kg_per_m3, WithinAbs(1.048, 0.0015));
    REQUIRE_THAT(standard_weather(0).temperature_k, WithinAbs(288.15, 1e-9));
    REQUIRE_THAT(standard_weather(0).pressure_pa, WithinAbs(101325, 1e-9));
    // The standard's own table, from memory: dynamic viscosity 1.7894e-5 at sea level; 89874.6 Pa and 281.651
    // K at 1000 m.
    REQUIRE_THAT(air_of(standard_weather(0)).viscosity_pa_s, WithinAbs(1.7894e-5, 1e-9));
    REQUIRE_THAT(standard_weather(1000).pressure_pa, WithinAbs(89876, 5));
    REQUIRE_THAT(standard_weather(1000).temperature_k, WithinAbs(281.651, 0.001));
}

// A. Smits and D. Smith, A new aerodynamic model of a golf ball in flight, Science and Golf II, 1994 (from
// memory); the carry they give for this drive was computed apart from this program.
TEST_CASE("the published coefficients' own example") {
    REQUIRE_THAT(carry_yd(tour_drive()), WithinAbs(249, 0.5));
}

// Tour players' means, from memory. The drag that makes them of the published coefficients is what the table
// in usual_launch.cpp says for the kind.
TEST_CASE("usual launches carry as far as tour players do") {
    struct Row {
        ClubKind kind;
        double loft_deg, ball_speed_mph, launch_deg, spin_rpm, carry_yd;
        double worst;
    };
    for (const Row& row : {Row{ClubKind::driver, 10.5, 167, 10.9, 2686, 275, 0.005},
                           Row{ClubKind::fairway_wood, 15, 158, 9.2, 3655, 243, 0.01},
                           Row{ClubKind::hybrid, 20, 146, 10.2, 4437, 225, 0.05},
                           Row{ClubKind::iron, 25, 132, 12.1, 5361, 194, 0.03},
                           Row{ClubKind::iron, 32, 120, 16.3, 7097, 172, 0.03},
                           Row{ClubKind::iron, 41, 109, 20.4, 8647, 148, 0.03},
                           Row{ClubKind::wedge, 46, 102, 24.2, 9304, 136, 0.01}}) {
        CAPTURE(club_kind_name(row.kind), row.loft_deg);
        const Launch usual =
            usual_launch(row.kind, Yards{row.carry_yd}.metres(), row.loft_deg * radians_per_degree);
        const Launch tour = launch_of(row.ball_speed_mph, row.launch_deg, row.spin_rpm);
        REQUIRE_THAT(usual.ball_speed_mps, WithinRel(tour.ball_speed_mps, row.worst));
        REQUIRE_THAT(usual.launch_rad, WithinRel(tour.launch_rad, 0.05));
        REQUIRE_THAT(usual.spin_rad_per_s, WithinRel(tour.spin_rad_per_s, 0.05));
    }
}

// Women on tour, from memory: not fitted but for the drag's rise with slowness, which is set between them.
TEST_CASE("usual launches of slower golfers") {
    struct Row {
        ClubKind kind;
        double loft_deg, ball_speed_mph, launch_deg, spin_rpm, carry_yd;
    };
    for (const Row& row :
         {Row{ClubKind::driver, 10.5, 140, 13.2, 2611, 218}, Row{ClubKind::iron, 32, 104, 19.0, 6699, 141},
          Row{ClubKind::wedge, 46, 86, 25.6, 8403, 107}}) {
        CAPTURE(club_kind_name(row.kind));
        const Launch usual =
            usual_launch(row.kind, Yards{row.carry_yd}.metres(), row.loft_deg * radians_per_degree);
        REQUIRE_THAT(usual.ball_speed_mps, WithinRel(row.ball_speed_mph * metres_per_second_per_mph, 0.03));
        REQUIRE_THAT(usual.launch_rad,
                     WithinAbs(row.launch_deg * radians_per_degree, 1.5 * radians_per_degree));
        REQUIRE_THAT(usual.spin_rad_per_s, WithinRel(row.spin_rpm * radians_per_second_per_rpm, 0.05));
    }
}

// Common figures, from memory.
TEST_CASE("launch, peak and descent of common clubs") {
    const auto flown = [](const ClubFlight& f) {
        return fly({f.launch()}, reference_air(), f.aerodynamics());
    };
    const Launch drive = club_golfers_driver().launch();
    REQUIRE(drive.launch_rad > 12 * radians_per_degree);
    REQUIRE(drive.launch_rad < 14 * radians_per_degree);
    REQUIRE(drive.spin_rad_per_s > 2650 * radians_per_second_per_rpm);
    REQUIRE(drive.spin_rad_per_s < 3200 * radians_per_second_per_rpm);
    for (const Club& club : preset_golfer("tour").clubs) {
        if (!club.pattern) continue;
        CAPTURE(club.name);
        const Flight flight = flown(ClubFlight(club));
        // Full swings of tour players rise about 25 to 32 m; this model's driver a little more, the least
        // wedges less.
        if (club.kind != ClubKind::wedge) {
            REQUIRE(flight.peak.height_m > 25);
            REQUIRE(flight.peak.height_m < 35);
        }
        if (club.kind == ClubKind::driver) {
            REQUIRE(flight.landing_angle_rad > 36 * radians_per_degree);
            REQUIRE(flight.landing_angle_rad < 40 * radians_per_degree);
        }
        if (club.name == "pitching wedge") {
            REQUIRE_THAT(flight.landing_angle_rad / radians_per_degree, WithinAbs(50, 2));
        }
    }
    // Slower players hit it lower.
    REQUIRE(flown(club_golfers_driver()).peak.height_m < flown(tour_driver()).peak.height_m);
    REQUIRE(flown(bogey_driver()).peak.height_m < flown(club_golfers_driver()).peak.height_m);
}

// Common practice, no source: 2 to 3 yd near a club golfer's driver. All else equal means the same strike, so
// that spin rises with the speed (2.03 yd). At the same rpm the model gives a little less, 1.87 yd.
TEST_CASE("a mile per hour of ball speed") {
    const ClubFlight driver = club_golfers_driver();
    const auto gained = [&](double spin_share) {
        Launch faster = driver.launch();
        const double ratio = 1.0 + metres_per_second_per_mph / faster.ball_speed_mps;
        faster.ball_speed_mps *= ratio;
        faster.spin_rad_per_s *= std::pow(ratio, spin_share);
        return carry_yd({faster}, reference_air(), driver.aerodynamics()) - carry_of(driver, reference_air());
    };
    REQUIRE(gained(1.0) > 2.0);
    REQUIRE(gained(1.0) < 3.0);
    REQUIRE_THAT(gained(0.0), WithinAbs(1.87, 0.02));
}

// Common practice, no source: 8 to 12 % farther at a mile above the sea. The model falls short of it
// (tour 6.9 %, club golfer 5.8 %, bogey man 4.6 %): thin air takes lift away as well. These are its own
// figures, held here so that nobody changes them unseen.
TEST_CASE("a drive a mile up") {
    AirFlow high = reference_air();
    high.air = air_of(standard_weather(5280 * metres_per_foot));
    const auto gained = [&](const ClubFlight& driver) {
        return 100 * (carry_of(driver, high) / carry_of(driver, reference_air()) - 1.0);
    };
    REQUIRE_THAT(gained(tour_driver()), WithinAbs(6.9, 0.1));
    REQUIRE_THAT(gained(club_golfers_driver()), WithinAbs(5.8, 0.1));
    REQUIRE_THAT(gained(bogey_driver()), WithinAbs(4.6, 0.1));
}

// Common practice, no source: a head wind costs more than the same wind behind gives; at 10 mph a drive loses
// some 8 to 20 yd and gains some 5 to 15. A tour player's, which is longer in the air, a little more.
TEST_CASE("ten miles per hour of wind") {
    struct Row {
        ClubFlight driver;
        double most_lost, most_gained;
    };
    for (const Row& row :
         {Row{club_golfers_driver(), 20, 15}, Row{bogey_driver(), 20, 15}, Row{tour_driver(), 22, 18}}) {
        const double still = carry_of(row.driver, reference_air());
        const double lost = still - carry_of(row.driver, wind(-10, 0));
        const double gained = carry_of(row.driver, wind(10, 0)) - still;
        CAPTURE(to_yards(row.driver.carry_m()), lost, gained);
        REQUIRE(lost > gained + 1.0);
        REQUIRE(lost > 8);
        REQUIRE(lost < row.most_lost);
        REQUIRE(gained > 5);
        REQUIRE(gained < row.most_gained);
    }
}
