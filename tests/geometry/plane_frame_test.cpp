#include "geometry/plane_frame.hpp"

#include <algorithm>
#include <limits>

#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {}  // namespace

TEST_CASE("places that are not on earth are refused") {
    CHECK_THROWS_AS(PlaneFrame({not_a_number, 0}), std::invalid_argument);
    CHECK_THROWS_AS(PlaneFrame({0, not_a_number}), std::invalid_argument);
    CHECK_THROWS_AS(PlaneFrame({infinity, 0}), std::invalid_argument);
    CHECK_THROWS_AS(PlaneFrame({0, 90.0001}), std::invalid_argument);
    const PlaneFrame frame({0, 0});
    CHECK_THROWS_AS(frame.to_plane({0, -91}), std::invalid_argument);
    CHECK_THROWS_AS(frame.to_plane({not_a_number, 0}), std::invalid_argument);
    CHECK_THROWS_AS(geodesic_distance({0, 0}, {0, 1e308}), std::invalid_argument);
}

TEST_CASE("the origin is the point (0, 0), also at the poles") {
    for (const LonLat origin :
         {LonLat{0, 0}, {12, 90}, {-170, -90}, {180, 45}, {-180, 45}, {720 + 10, -33}}) {
        const PlaneFrame frame(origin);
        const Point p = frame.to_plane(origin);
        CHECK_THAT(p.x, WithinAbs(0.0, 1e-8));
        CHECK_THAT(p.y, WithinAbs(0.0, 1e-8));
        CHECK(frame.origin() == origin);
        CHECK_THAT(geodesic_distance(origin, frame.to_lonlat({0, 0})), WithinAbs(0.0, 1e-8));
    }
}

TEST_CASE("east is x, north is y, bearings run clockwise from north") {
    const PlaneFrame frame({-40, 30});
    const Point north_east = frame.to_plane({-39.999, 30.001});
    CHECK(north_east.x > 0.0);
    CHECK(north_east.y > 0.0);
    CHECK_THAT(frame.true_bearing({0, 0}, {0, 100}).degrees(), WithinAbs(0.0, 1e-6));
    CHECK_THAT(frame.true_bearing({0, 0}, {100, 0}).degrees(), WithinAbs(90.0, 1e-6));
    CHECK_THAT(frame.true_bearing({0, 0}, {0, -100}).degrees(), WithinAbs(180.0, 1e-6));
    CHECK_THAT(frame.true_bearing({0, 0}, {-100, 0}).degrees(), WithinAbs(270.0, 1e-6));
    CHECK(frame.true_bearing({5, 5}, {5, 5}).degrees() == 0.0);
}

TEST_CASE("true north turns away from the plane's north with longitude") {
    // Meridians converge by the longitude difference times the sine of the latitude.
    const PlaneFrame frame({0, 60});
    const Point from{1000, 0};
    const double lon_deg = frame.to_lonlat(from).lon_deg;
    const double bearing_deg = frame.true_bearing(from, {1000, 1}).degrees();
    CHECK_THAT(bearing_deg, WithinAbs(lon_deg * std::sin(60 * radians_per_degree), 1e-4));
    CHECK(bearing_deg > 0.01);
}

TEST_CASE("to the plane and back is the same place, and distances are geodesic to 1e-7") {
    Dice dice(3);
    for (int i = 0; i < 2000; ++i) {
        const double lat = std::clamp(dice.between(-95.0, 95.0), -90.0, 90.0);
        const PlaneFrame frame({i % 3 == 0 ? 180.0 : dice.between(-180.0, 180.0), lat});
        const Point a = dice.between(0, 1000) * along_bearing(dice.between(-4, 4));
        const Point b = dice.between(0, 1000) * along_bearing(dice.between(-4, 4));
        const LonLat there = frame.to_lonlat(a);
        REQUIRE(std::abs(there.lon_deg) <= 180.0);
        REQUIRE(distance(frame.to_plane(there), a) < 1e-7);
        // A whole turn of longitude more is the same place.
        REQUIRE(distance(frame.to_plane({there.lon_deg + 360.0, there.lat_deg}), a) < 1e-6);
        const double geodesic_m = geodesic_distance(there, frame.to_lonlat(b));
        REQUIRE(std::abs(distance(a, b) - geodesic_m) < 1e-7 * geodesic_m + 1e-7);
    }
}
