#include "geometry/edge_crossing.hpp"

#include <limits>

#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {

void check_at(const std::optional<Point>& found, Point expected) {
    REQUIRE(found.has_value());
    CHECK_THAT(found->x, WithinAbs(expected.x, 1e-9));
    CHECK_THAT(found->y, WithinAbs(expected.y, 1e-9));
}

}  // namespace

TEST_CASE("degenerate paths and regions have no crossing or the start") {
    const Region pond = rectangle(10, -5, 20, 5);
    CHECK_FALSE(last_crossing(Region(), {0, 0}, {15, 0}).has_value());
    CHECK_FALSE(last_crossing(pond, {0, 0}, {0, 0}).has_value());
    CHECK_FALSE(last_crossing(pond, {0, 0}, {not_a_number, 0}).has_value());
    CHECK_THROWS_AS(last_crossing(pond, {not_a_number, 0}, {15, 0}), std::invalid_argument);
    check_at(last_crossing(pond, {15, 0}, {15, 0}), {15, 0});
    check_at(last_crossing(pond, {12, 0}, {18, 1}), {12, 0});
}

TEST_CASE("of several crossings the last one into the region counts") {
    const Region ponds = Region::united(std::vector{rectangle(10, -5, 20, 5), rectangle(30, -5, 40, 5)});
    check_at(last_crossing(ponds, {0, 0}, {35, 0}), {30, 0});
    check_at(last_crossing(ponds, {0, 0}, {15, 0}), {10, 0});
    check_at(last_crossing(ponds, {15, 0}, {35, 0}), {30, 0});
    check_at(last_crossing(ponds, {50, 0}, {15, 0}), {20, 0});
    CHECK_FALSE(last_crossing(ponds, {0, 0}, {25, 0}).has_value());
    CHECK_FALSE(last_crossing(ponds, {0, 0}, {45, 0}).has_value());
}

TEST_CASE("an oblique path crosses where similar triangles say") {
    // From (0, 0) towards (30, 40) the edge x = 15 is met at (15, 20).
    check_at(last_crossing(rectangle(15, 0, 100, 100), {0, 0}, {30, 40}), {15, 20});
}

TEST_CASE("a ball that stops on the edge crossed there") {
    const Region pond = rectangle(10, -5, 20, 5);
    check_at(last_crossing(pond, {0, 0}, {10, 0}), {10, 0});
    check_at(last_crossing(pond, {0, 10}, {20, 5}), {20, 5});
    check_at(last_crossing(pond, {10, 0}, {15, 0}), {10, 0});
}

TEST_CASE("a path that leaves the region for an island in it crossed the island's edge") {
    const Region pond =
        ground({{0, 0}, {100, 0}, {100, 100}, {0, 100}}, {{{40, 40}, {60, 40}, {60, 60}, {40, 60}}});
    check_at(last_crossing(pond, {50, 50}, {90, 50}), {60, 50});
    check_at(last_crossing(pond, {10, 50}, {90, 50}), {60, 50});
    CHECK_FALSE(last_crossing(pond, {10, 50}, {50, 50}).has_value());
}

TEST_CASE("grazing an island's corner from within is no crossing") {
    const Region pond = ground({{0, 0}, {100, 0}, {100, 100}, {0, 100}}, {{{50, 50}, {60, 60}, {40, 60}}});
    check_at(last_crossing(pond, {10, 50}, {90, 50}), {10, 50});
}

TEST_CASE("the crossing lies on the edge and the rest of the path inside") {
    Dice dice(11);
    const Box box{{0, 0}, {200, 200}};
    int crossed = 0;
    for (int i = 0; i < 2000; ++i) {
        const Region pond = ground(blob(dice, {100, 100}, 80, 15), {blob(dice, {100, 100}, 25, 9)});
        const Point from = dice.in(box);
        const Point to = dice.in(box);
        const std::optional<Point> found = last_crossing(pond, from, to);
        REQUIRE(found.has_value() == pond.contains(to));
        if (!found) continue;
        ++crossed;
        const bool on_edge = distance_to_edge(*found, pond.polygons()) < 1e-9;
        REQUIRE((on_edge || (*found == from && pond.contains(from))));
        for (const double share : {0.001, 0.25, 0.5, 0.75, 0.999}) {
            REQUIRE(pond.contains(*found + share * (to - *found)));
        }
    }
    CHECK(crossed > 500);
}
