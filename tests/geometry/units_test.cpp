#include "geometry/units.hpp"

#include <limits>

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

TEST_CASE("a bearing in degrees is in [0, 360)") {
    CHECK(Bearing{}.degrees() == 0.0);
    CHECK_THAT(Bearing::from_degrees(90.0).degrees(), WithinAbs(90.0, 1e-12));
    CHECK_THAT(Bearing::from_degrees(-90.0).degrees(), WithinAbs(270.0, 1e-12));
    CHECK_THAT(Bearing::from_degrees(360.0 * 5 + 12.5).degrees(), WithinAbs(12.5, 1e-9));
    CHECK(Bearing{-std::numeric_limits<double>::denorm_min()}.degrees() < 360.0);
    CHECK(Bearing{-1e-18}.degrees() < 360.0);
    CHECK(Bearing{2.0 * std::numbers::pi}.degrees() < 360.0);
}

TEST_CASE("yards are those of 1959") {
    CHECK(Yards{100.0}.metres() == 91.44);
    CHECK_THAT(to_yards(91.44), WithinAbs(100.0, 1e-12));
    CHECK_THAT(3.0 * metres_per_foot, WithinAbs(metres_per_yard, 1e-15));
    CHECK_THAT(12.0 * metres_per_inch, WithinAbs(metres_per_foot, 1e-15));
}
