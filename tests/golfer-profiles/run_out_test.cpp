#include "golfer-profiles/run_out.hpp"

#include <cmath>
#include <limits>
#include <stdexcept>

#include "geometry/units.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

constexpr Firmness every_firmness[] = {Firmness::soft, Firmness::ordinary, Firmness::firm};

// A club golfer's drive and wedge as they come down.
constexpr Impact drive{27.5, 34 * radians_per_degree, 235};
constexpr Impact wedge{21, 47 * radians_per_degree, 850};

Impact impact(double speed_mps, double angle_deg, double spin_rad_per_s) {
    return {speed_mps, angle_deg * radians_per_degree, spin_rad_per_s};
}

double run(const Impact& ball, const Slope& slope = {}, Firmness firmness = Firmness::ordinary) {
    return run_out(ball, firmness, slope).along_m;
}

}  // namespace

// Between neighbours a hop more or less is worth some centimetres.
constexpr double hop_m = 0.1;

// Of full shots: they come down at 18 m/s and more, and the flat ones spin little.
TEST_CASE("faster, flatter and with less spin runs farther") {
    for (Firmness firmness : every_firmness) {
        for (double spin : {0.0, 250.0, 600.0}) {
            for (double angle = spin > 500 ? 35 : 20; angle <= 55; angle += 5) {
                for (double speed = 18; speed <= 40; speed += 2) {
                    CAPTURE(spin, angle, speed);
                    const double here = run(impact(speed, angle, spin), {}, firmness);
                    REQUIRE(run(impact(speed + 2, angle, spin), {}, firmness) > here - hop_m);
                    REQUIRE(run(impact(speed, angle + 5, spin), {}, firmness) < here + hop_m);
                    REQUIRE(run(impact(speed, angle, spin + 150), {}, firmness) < here + hop_m);
                }
            }
        }
    }
    REQUIRE(run(impact(30, 34, 235)) > run(impact(25, 34, 235)) + 3.0);
    REQUIRE(run(impact(27.5, 28, 235)) > run(impact(27.5, 40, 235)) + 3.0);
}

TEST_CASE("small changes of the impact change the run a little") {
    for (Firmness firmness : every_firmness) {
        double before = run(impact(10, 34, 235), {}, firmness);
        for (double speed = 10; speed < 40; speed += 0.005) {
            const double here = run(impact(speed, 34, 235), {}, firmness);
            REQUIRE_THAT(here, WithinAbs(before, hop_m));
            before = here;
        }
        for (double angle = 34; angle < 80; angle += 0.01) {
            const double here = run(impact(40, angle, 235), {}, firmness);
            REQUIRE_THAT(here, WithinAbs(before, hop_m));
            before = here;
        }
    }
}

TEST_CASE("downhill runs farther, uphill less") {
    for (Firmness firmness : every_firmness) {
        double before = std::numeric_limits<double>::infinity();
        for (double rise = -0.15; rise <= 0.15; rise += 0.01) {
            const double here = run(drive, {rise, 0}, firmness);
            REQUIRE(here < before + hop_m);
            before = here;
        }
        REQUIRE(run(drive, {-0.05, 0}, firmness) > 1.2 * run(drive, {}, firmness));
        REQUIRE(run(drive, {0.05, 0}, firmness) < 0.85 * run(drive, {}, firmness));
    }
}

TEST_CASE("a cross slope takes the ball down its side, mirrored") {
    for (double rise : {0.02, 0.05, 0.1}) {
        const RunOut to_left = run_out(drive, Firmness::ordinary, {0, rise});
        const RunOut to_right = run_out(drive, Firmness::ordinary, {0, -rise});
        REQUIRE(to_left.right_m < -1.0);
        REQUIRE_THAT(to_right.right_m, WithinAbs(-to_left.right_m, 1e-9));
        REQUIRE_THAT(to_right.along_m, WithinAbs(to_left.along_m, 1e-9));
    }
    REQUIRE(run_out(drive, Firmness::ordinary, {}).right_m == 0.0);
}

TEST_CASE("firm ground runs more than ordinary, soft less") {
    for (const Impact& ball : {drive, impact(24, 30, 350), impact(23, 40, 600)}) {
        REQUIRE(run(ball, {}, Firmness::firm) > run(ball));
        REQUIRE(run(ball, {}, Firmness::soft) < run(ball));
    }
    // Assumptions of this program for a driver: 1.5 to 1.8 times, and about half.
    REQUIRE(run(drive, {}, Firmness::firm) > 1.5 * run(drive));
    REQUIRE(run(drive, {}, Firmness::firm) < 1.8 * run(drive));
    REQUIRE_THAT(run(drive, {}, Firmness::soft), WithinAbs(0.5 * run(drive), 0.05 * run(drive)));
}

// Common practice, no source: a full wedge stops within a few yards of its mark, or comes back a little.
TEST_CASE("a wedge stops where it lands") {
    REQUIRE(run(wedge) < Yards{3}.metres());
    REQUIRE(run(wedge) > Yards{-3}.metres());
    REQUIRE(run(wedge, {0.1, 0}) < 0.0);
}

TEST_CASE("a ball dropped without spin stays, or goes down the slope") {
    const Impact dropped = impact(12, 90, 0);
    const RunOut flat = run_out(dropped, Firmness::ordinary, {});
    REQUIRE_THAT(flat.along_m, WithinAbs(0.0, 1e-9));
    REQUIRE_THAT(flat.right_m, WithinAbs(0.0, 1e-9));
    const RunOut down = run_out(dropped, Firmness::ordinary, {-0.06, -0.06});
    REQUIRE(down.along_m > 0.02);
    REQUIRE_THAT(down.right_m, WithinAbs(down.along_m, 1e-3));
}

TEST_CASE("no impact and no slope breaks it") {
    for (Firmness firmness : every_firmness) {
        for (double speed : {1e-9, 0.1, 5.0, 30.0, 60.0, 400.0}) {
            for (double angle : {1e-6, 5.0, 45.0, 90.0}) {
                for (double spin : {0.0, 300.0, 1500.0}) {
                    for (double along : {-1.0, -0.3, 0.0, 0.3, 1.0}) {
                        for (double right : {-1.0, 0.0, 0.2}) {
                            CAPTURE(speed, angle, spin, along, right);
                            const RunOut ball = run_out(impact(speed, angle, spin), firmness, {along, right});
                            REQUIRE(std::hypot(ball.along_m, ball.right_m) <= 150.0 + 1e-9);
                        }
                    }
                }
            }
        }
    }
}

TEST_CASE("what is no impact is refused") {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    const auto refused = [](const Impact& ball, const Slope& slope) {
        REQUIRE_THROWS_AS(run_out(ball, Firmness::ordinary, slope), std::invalid_argument);
    };
    refused(impact(0, 30, 200), {});
    refused(impact(nan, 30, 200), {});
    refused(impact(20, 0, 200), {});
    refused(impact(20, 91, 200), {});
    refused(impact(20, 30, -1), {});
    refused(drive, {1.1, 0});
    refused(drive, {0, nan});
}
