// The flights of the day against flights flown one by one, at angles of the wind other than those it was
// worked out at.
#include "planner/engine/day/day_flight.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "golfer-profiles/club_flight.hpp"
#include "planner/engine/day/usual_ball.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/invented_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double curve_share = 0.5;

Conditions windy(double mph) {
    Conditions day;
    day.wind = Wind{mph * metres_per_second_per_mph, Bearing{}};
    return day;
}

DayFlight day_flight(const Club& club, const Conditions& day) {
    return {ClubFlight(club), day, club.pattern->run_m, curve_share};
}

Flight flown(const ClubFlight& club, double carry_m, const Conditions& day, double angle) {
    const double speed = day.wind ? day.wind->speed_mps : 0.0;
    return fly(club.launch_for(carry_m),
               {air_of(day.weather), speed * std::cos(angle), speed * std::sin(angle)}, club.aerodynamics());
}

// Over all clubs, of a ball that carries a share of the usual carry, at angles between those that were used.
struct Errors {
    double along_m = 0.0, right_m = 0.0;
};
Errors largest_errors(const Conditions& day, double share) {
    Errors errors;
    for (const Club& club : club_golfer().clubs) {
        const ClubFlight flights(club);
        const DayFlight quick = day_flight(club, day);
        const double carry_m = share * flights.carry_m();
        for (const double degrees : {20.0, 70.0, 110.0, 160.0, 200.0, 250.0, 290.0, 340.0}) {
            const double angle = degrees * radians_per_degree;
            const Flight flight = flown(flights, carry_m, day, angle);
            const LandingShift shift = quick.shift(static_cast<float>(carry_m), 1.0F);
            const WindAngle wind = WindAngle::of(angle);
            errors.along_m = std::max(errors.along_m,
                                      std::abs(carry_m + double{shift.along(wind)} - flight.landing.along_m));
            errors.right_m =
                std::max(errors.right_m, std::abs(double{shift.right(wind)} - flight.landing.right_m));
        }
    }
    return errors;
}

}  // namespace

TEST_CASE("where a ball lands in a wind is within a yard of a flight of its own", "[day]") {
    struct Case {
        double mph, most_yd;
    };
    for (const auto& [mph, most_yd] :
         {Case{5.0, 0.06}, Case{10.0, 0.13}, Case{20.0, 0.32}, Case{30.0, 0.6}}) {
        for (const double share : {0.5, 0.73, 0.95, 1.0, 1.13}) {
            const Errors errors = largest_errors(windy(mph), share);
            INFO(mph << " mph, " << share << " of the usual carry: along " << to_yards(errors.along_m)
                     << " yd, aside " << to_yards(errors.right_m) << " yd");
            CHECK(to_yards(errors.along_m) < most_yd);
            CHECK(to_yards(errors.right_m) < most_yd);
        }
    }
}

TEST_CASE("thin air and cold air: carries as flown", "[day]") {
    for (const Weather& weather : {standard_weather(1800.0), Weather{275.0, 101325.0, 0.5}}) {
        Conditions day;
        day.weather = weather;
        for (const double share : {0.6, 1.0, 1.2}) {
            const Errors errors = largest_errors(day, share);
            CHECK(to_yards(errors.along_m) < 0.02);
            CHECK(to_yards(errors.right_m) < 1e-6);
        }
    }
}

TEST_CASE("heights on the way are those of the flight", "[day]") {
    double largest_m = 0.0;
    for (const Club& club : club_golfer().clubs) {
        const ClubFlight flights(club);
        const DayFlight quick = day_flight(club, {});
        for (const double share : {0.5, 0.73, 0.95, 1.0, 1.13}) {
            const double carry_m = share * flights.carry_m();
            for (const FlightPoint& at : flown(flights, carry_m, {}, 0.0).path) {
                const double height =
                    double{quick.height(static_cast<float>(at.along_m), static_cast<float>(carry_m),
                                        static_cast<float>(carry_m), {})};
                largest_m = std::max(largest_m, std::abs(height - at.height_m));
            }
        }
    }
    WARN("heights differ by up to " << largest_m << " m");
    CHECK(largest_m < 0.15);
}

TEST_CASE("heights in a wind are nearly those of the flight", "[day]") {
    // The shape on a calm day, made as high as the flight: a head wind's fall is steeper, 4.2 m measured.
    double largest_m = 0.0;
    const Conditions day = windy(15.0);
    for (const Club& club : club_golfer().clubs) {
        const ClubFlight flights(club);
        const DayFlight quick = day_flight(club, day);
        const double carry_m = flights.carry_m();
        for (const double degrees : {0.0, 60.0, 120.0, 180.0}) {
            const double angle = degrees * radians_per_degree;
            const Flight flight = flown(flights, carry_m, day, angle);
            const double lands_m = std::hypot(flight.landing.along_m, flight.landing.right_m);
            for (const FlightPoint& at : flight.path) {
                const double height = double{quick.height(
                    static_cast<float>(std::hypot(at.along_m, at.right_m)), static_cast<float>(carry_m),
                    static_cast<float>(lands_m), WindAngle::of(angle))};
                largest_m = std::max(largest_m, std::abs(height - at.height_m));
            }
        }
    }
    WARN("in 15 mph heights differ by up to " << largest_m << " m");
    CHECK(largest_m < 5.0);
}

TEST_CASE("a landing place a metre higher costs what the flight loses", "[day]") {
    // The steeper a ball falls the further it has come, which the flights of the day leave out: up to 0.025 m
    // by the square of the height, measured.
    for (const Club& club : club_golfer().clubs) {
        const ClubFlight flights(club);
        const double carry_m = flights.carry_m();
        const DayFlight quick = day_flight(club, {});
        const BallLaunch ball = flights.launch_for(carry_m);
        for (const double over_m : {-10.0, -3.0, 3.0, 10.0}) {
            const Flight flight = fly(ball, reference_air(), flights.aerodynamics(), over_m);
            const double lost = carry_m - flight.landing.along_m;
            INFO(club.name << ", " << over_m << " m higher: " << lost << " m lost");
            CHECK_THAT(over_m * double{quick.fall(static_cast<float>(carry_m), {})},
                       WithinAbs(lost, 0.027 * over_m * over_m + 0.02));
        }
    }
}

TEST_CASE("firm ground runs further and soft less, fairway and rough apart", "[day]") {
    const Club driver = club_golfer().clubs.front();
    const auto carry = static_cast<float>(driver.pattern->usual.centre.carry_m);
    const auto more = [&](Firmness fairway, Firmness rough, Surface surface) {
        Conditions day;
        day.fairway = fairway;
        day.rough = rough;
        return double{day_flight(driver, day).more_run(carry, surface, {})};
    };
    // A driver's ball on hard summer ground runs some yards further: common practice, no source.
    CHECK(more(Firmness::firm, Firmness::ordinary, Surface::mown) > yd(4, 0).x);
    CHECK(more(Firmness::soft, Firmness::ordinary, Surface::mown) < -yd(4, 0).x);
    CHECK_THAT(more(Firmness::firm, Firmness::ordinary, Surface::rough), WithinAbs(0.0, 1e-6));
    CHECK_THAT(more(Firmness::ordinary, Firmness::soft, Surface::mown), WithinAbs(0.0, 1e-6));
    CHECK(more(Firmness::ordinary, Firmness::soft, Surface::rough) < -yd(4, 0).x);
    CHECK(more(Firmness::ordinary, Firmness::firm, Surface::rough) > yd(4, 0).x);
    CHECK_THAT(more(Firmness::firm, Firmness::firm, Surface::green), WithinAbs(0.0, 1e-6));
}

TEST_CASE("gusts: as many above the mean as below, two standard deviations at most", "[day]") {
    const Wind gusty{6.0, Bearing{}, 9.0};
    double sum = 0.0, squares = 0.0;
    constexpr std::size_t count = 4096;
    for (std::size_t i = 0; i < count; ++i) {
        const double factor = double{gust_factor(gusty, i)};
        CHECK(factor >= 0.5 - 1e-6);
        CHECK(factor <= 1.5 + 1e-6);
        sum += factor / count;
        squares += factor * factor / count;
    }
    CHECK_THAT(sum, WithinAbs(1.0, 1e-6));
    // A normal of standard deviation 0.25 cut at twice that: 0.25 times 0.959 (closed form).
    CHECK_THAT(std::sqrt(squares - sum * sum), WithinAbs(0.25 * 0.959, 0.004));
    CHECK(gust_factor(Wind{6.0, Bearing{}}, 5) == 1.0F);
    CHECK(gust_factor({}, 5) == 1.0F);
}
