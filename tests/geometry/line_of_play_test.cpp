#include "geometry/line_of_play.hpp"

#include <limits>

#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {

const double half_root = std::sqrt(0.5);

void check_same(Point found, Point expected) {
    CHECK_THAT(found.x, WithinAbs(expected.x, 1e-9));
    CHECK_THAT(found.y, WithinAbs(expected.y, 1e-9));
}

void check_place(LineOfPlay::Place found, double station_m, double offset_m) {
    CHECK_THAT(found.station_m, WithinAbs(station_m, 1e-9));
    CHECK_THAT(found.offset_m, WithinAbs(offset_m, 1e-9));
}

const LineOfPlay& dogleg_right() {
    static const LineOfPlay line({{0, 0}, {0, 200}, {100, 200}});
    return line;
}

}  // namespace

TEST_CASE("a line of play needs two distinct finite points") {
    CHECK_THROWS_AS(LineOfPlay({}), std::invalid_argument);
    CHECK_THROWS_AS(LineOfPlay({{1, 1}}), std::invalid_argument);
    CHECK_THROWS_AS(LineOfPlay({{1, 1}, {1, 1}, {1, 1}}), std::invalid_argument);
    CHECK_THROWS_AS(LineOfPlay({{1, 1}, {not_a_number, 2}}), std::invalid_argument);
    CHECK_THROWS_AS(LineOfPlay({{1, 1}, {2, std::numeric_limits<double>::infinity()}}),
                    std::invalid_argument);
}

TEST_CASE("repeated points are dropped") {
    const LineOfPlay line({{0, 0}, {0, 0}, {0, 10}, {0, 10}, {0, 30}});
    CHECK(line.vertices() == std::vector<Point>{{0, 0}, {0, 10}, {0, 30}});
    CHECK(line.stations() == std::vector<double>{0, 10, 30});
}

TEST_CASE("the example of the header") {
    const LineOfPlay& line = dogleg_right();
    CHECK(line.length() == 300.0);
    CHECK(line.tee() == Point{0, 0});
    CHECK(line.pin() == Point{100, 200});
    check_same(line.point_at(250), {50, 200});
    check_place(line.place_of({10, 100}), 100, 10);
}

TEST_CASE("stations before the tee and beyond the pin continue the end legs") {
    const LineOfPlay& line = dogleg_right();
    check_same(line.point_at(-20), {0, -20});
    check_same(line.point_at(310), {110, 200});
    check_same(line.direction_at(-20), {0, 1});
    check_same(line.direction_at(310), {1, 0});
    check_place(line.place_of({5, -20}), 0, 5);
    check_place(line.place_of({130, 204}), 300, -4);
    CHECK(line.point_at(300) == line.pin());
    CHECK(line.point_at(0) == line.tee());
}

TEST_CASE("the direction turns evenly through a corner") {
    const LineOfPlay& line = dogleg_right();
    check_same(line.direction_at(184.9), {0, 1});
    check_same(line.direction_at(200), {half_root, half_root});
    check_same(line.direction_at(215.1), {1, 0});
    // A third of the way through the turn, 30 of its 90 degrees.
    check_same(line.direction_at(195), {0.5, std::sqrt(0.75)});
    check_same(line.direction_at(200, 0.0), {1, 0});
    check_same(line.direction_at(199.999, 0.0), {0, 1});
}

TEST_CASE("turns closer together than the blend do not overlap") {
    const LineOfPlay line({{0, 0}, {0, 100}, {5, 105}, {5, 205}});
    const double corner = 100.0;
    const double next_corner = 100.0 + std::sqrt(50.0);
    check_same(line.direction_at(0.5 * (corner + next_corner)), {half_root, half_root});
    check_same(line.direction_at(corner - std::sqrt(12.5) - 1e-9), {0, 1});
    // Nowhere a jump.
    for (double station = 50.0; station < 150.0; station += 0.01) {
        REQUIRE(distance(line.direction_at(station), line.direction_at(station + 0.01)) < 0.005);
    }
}

TEST_CASE("the place of a point around a corner") {
    const LineOfPlay& line = dogleg_right();
    // Outside of the corner: left of the line by the distance to the corner.
    check_place(line.place_of({-3, 204}), 200, -5);
    // Inside of the corner both legs are 10 m away: the one nearer to the tee.
    check_place(line.place_of({10, 190}), 190, 10);
    check_place(line.place_of({0, 200}), 200, 0);
}

TEST_CASE("the side at a hairpin is that of the bend") {
    // The second leg comes back at 10 degrees to the first; the point beyond the tip is on its outside.
    const LineOfPlay line({{0, 0}, {0, 100}, {100 * std::sin(0.1745), 100 - 100 * std::cos(0.1745)}});
    const LineOfPlay::Place outside = line.place_of({2, 110});
    CHECK_THAT(outside.station_m, WithinAbs(100.0, 1e-9));
    CHECK(outside.offset_m < 0.0);
}

TEST_CASE("where a closed path starts its side is that of the corner") {
    // Clockwise round a thin triangle that starts at its tip; beyond the tip is outside, on the left.
    const LineOfPlay thin({{0, 0}, {100, 10}, {100, -10}, {0, 0}});
    const LineOfPlay::Place beyond_tip = thin.place_of({-10, -2});
    CHECK(beyond_tip.station_m == 0.0);
    CHECK_THAT(beyond_tip.offset_m, WithinAbs(-std::sqrt(104.0), 1e-9));
    CHECK(thin.place_of({50, 0}).offset_m > 0.0);
}

TEST_CASE("another tee shortens or lengthens the line") {
    const LineOfPlay& line = dogleg_right();
    CHECK(line.from_tee({5, 40}).vertices() == std::vector<Point>{{5, 40}, {0, 200}, {100, 200}});
    CHECK(line.from_tee({-8, -30}).vertices() == std::vector<Point>{{-8, -30}, {0, 200}, {100, 200}});
    // Past the corner, and beside it, only the pin is ahead.
    CHECK(line.from_tee({30, 190}).vertices() == std::vector<Point>{{30, 190}, {100, 200}});
    CHECK(line.from_tee({20, 185}).vertices() == std::vector<Point>{{20, 185}, {100, 200}});
    CHECK(line.from_tee({-25, 180}).vertices() == std::vector<Point>{{-25, 180}, {100, 200}});
    CHECK_THROWS_AS(line.from_tee(line.pin()), std::invalid_argument);
}

TEST_CASE("place_of and point_at agree on random lines") {
    Dice dice(5);
    for (int i = 0; i < 500; ++i) {
        std::vector<Point> vertices{{0, 0}};
        for (int leg = 0; leg < 4; ++leg) {
            vertices.push_back(vertices.back() +
                               dice.between(40, 150) * along_bearing(dice.between(-0.7, 0.7)));
        }
        const LineOfPlay line(vertices);
        const double station = dice.between(0.0, line.length());
        const Point on_line = line.point_at(station);
        const LineOfPlay::Place place = line.place_of(on_line);
        REQUIRE_THAT(place.station_m, WithinAbs(station, 1e-9));
        REQUIRE_THAT(place.offset_m, WithinAbs(0.0, 1e-9));
        REQUIRE_THAT(length(line.direction_at(station)), WithinAbs(1.0, 1e-12));

        // Offsets are distances to the nearest point, stations its place; a mirror turns the sign only.
        const Point aside = on_line + Point{dice.between(-30, 30), dice.between(-5, 5)};
        const LineOfPlay::Place found = line.place_of(aside);
        if (found.station_m > 0.0 && found.station_m < line.length()) {
            REQUIRE_THAT(std::abs(found.offset_m),
                         WithinAbs(distance(aside, line.point_at(found.station_m)), 1e-9));
        }
        const Motion motion{true, dice.between(-3, 3), {dice.between(-100, 100), 20}};
        const LineOfPlay mirrored(motion(vertices));
        const LineOfPlay::Place there = mirrored.place_of(motion(aside));
        REQUIRE_THAT(there.station_m, WithinAbs(found.station_m, 1e-8));
        REQUIRE_THAT(there.offset_m, WithinAbs(-found.offset_m, 1e-8));
    }
}
