#include "geometry/region.hpp"

#include <limits>
#include <thread>

#include "geometry/line_of_play.hpp"
#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {

void check_stretches(const std::vector<Stretch>& found, const std::vector<Stretch>& expected) {
    REQUIRE(found.size() == expected.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        CHECK_THAT(found[i].from_m, WithinAbs(expected[i].from_m, 1e-9));
        CHECK_THAT(found[i].to_m, WithinAbs(expected[i].to_m, 1e-9));
    }
}

// Destroyed after the main thread's own data.
Region outlives_main;

}  // namespace

TEST_CASE("the empty region covers nothing") {
    const Region empty;
    const Region square = rectangle(0, 0, 10, 10);
    CHECK(empty.empty());
    CHECK(empty.area() == 0.0);
    CHECK_THROWS_AS(empty.bounds(), std::logic_error);
    CHECK_FALSE(empty.contains({0, 0}));
    CHECK(empty.distance_to({0, 0}) == infinity);
    CHECK_FALSE(empty.meets(square));
    CHECK_FALSE(square.meets(empty));
    CHECK(empty.grown(5).empty());
    CHECK(empty.common_with(square).empty());
    CHECK(square.common_with(empty).empty());
    CHECK(empty.without(square).empty());
    CHECK(square.without(empty).area() == 100.0);
    CHECK(empty.joined_with(square).area() == 100.0);
    CHECK(square.joined_with(empty).area() == 100.0);
    CHECK(empty.joined_with(empty).empty());
    CHECK(empty.simplified(1).empty());
    CHECK(empty.polygons().empty());
    CHECK(empty.stretches({0, 0}, {1, 1}).empty());
    CHECK(Region::united({}).empty());
    CHECK(Region::united(std::vector{empty, empty}).empty());
    CHECK(Region::united(std::vector{empty, square, empty}).area() == 100.0);
}

TEST_CASE("ground without an area is empty") {
    CHECK(rectangle(0, 0, 0, 10).empty());
    CHECK(Region::disc({0, 0}, 0).empty());
    CHECK(Region::around({{0, 0}, {10, 0}}, 0).empty());
    CHECK(Region::beside({{0, 0}, {10, 0}}, 0, Side::left).empty());
    CHECK(rectangle(0, 0, 10, 10).common_with(rectangle(10, 0, 20, 10)).empty());
    CHECK(rectangle(0, 0, 10, 10).common_with(rectangle(10, 10, 20, 20)).empty());
    CHECK(rectangle(0, 0, 10, 10).without(rectangle(-1, -1, 11, 11)).empty());
    CHECK(rectangle(0, 0, 10, 10).grown(-6).empty());
}

TEST_CASE("arguments that make no sense are refused") {
    CHECK_THROWS_AS(rectangle(10, 0, 0, 10), std::invalid_argument);
    CHECK_THROWS_AS(rectangle(not_a_number, 0, 10, 10), std::invalid_argument);
    CHECK_THROWS_AS(Region::disc({0, infinity}, 5), std::invalid_argument);
    CHECK_THROWS_AS(Region::disc({0, 0}, -5), std::invalid_argument);
    CHECK_THROWS_AS(Region::disc({0, 0}, not_a_number), std::invalid_argument);
    CHECK_THROWS_AS(Region::around({}, 5), std::invalid_argument);
    CHECK_THROWS_AS(Region::beside({{0, 0}}, 5, Side::left), std::invalid_argument);
    CHECK_THROWS_AS(Region::beside({{0, 0}, {0, 0}}, 5, Side::left), std::invalid_argument);
    const Region square = rectangle(0, 0, 10, 10);
    CHECK_THROWS_AS(square.grown(not_a_number), std::invalid_argument);
    CHECK_THROWS_AS(square.simplified(-1), std::invalid_argument);
    CHECK_THROWS_AS(square.stretches({not_a_number, 0}, {1, 1}), std::invalid_argument);
    CHECK_THROWS_AS(square.distance_to({not_a_number, 0}), std::invalid_argument);
    CHECK_FALSE(square.contains({not_a_number, 5}));
    CHECK_FALSE(square.contains({5, infinity}));
}

TEST_CASE("rings that cannot be drawn are refused") {
    const auto repaired = [](Ring outer, std::vector<Ring> inners = {}) {
        return Region::repaired({std::move(outer), std::move(inners)});
    };
    CHECK_THROWS_AS(repaired({}), std::invalid_argument);
    CHECK_THROWS_AS(repaired({{0, 0}}), std::invalid_argument);
    CHECK_THROWS_AS(repaired({{0, 0}, {1, 1}, {0, 0}, {1, 1}, {0, 0}}), std::invalid_argument);
    CHECK_THROWS_AS(repaired({{0, 0}, {1, 1}, {not_a_number, 1}}), std::invalid_argument);
    CHECK_THROWS_AS(repaired({{0, 0}, {1, 1}, {1e308, 1}}), std::invalid_argument);
    CHECK_THROWS_AS(repaired({{0, 0}, {9, 0}, {9, 9}}, {{{1, 1}, {2, infinity}, {3, 3}}}),
                    std::invalid_argument);
}

TEST_CASE("a valid ring is taken as drawn, either way round, closed or not, with points doubled") {
    const Ring square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    for (const Ring& ring : {square, Ring{{0, 0}, {0, 10}, {10, 10}, {10, 0}, {0, 0}},
                             Ring{{0, 0}, {10, 0}, {10, 0}, {10, 10}, {0, 10}, {0, 10}, {0, 0}, {0, 0}}}) {
        const Region::Repaired result = Region::repaired({ring, {}});
        CHECK_FALSE(result.repair.has_value());
        CHECK_FALSE(result.place.has_value());
        CHECK(result.region.area() == 100.0);
    }
}

TEST_CASE("a bow-tie keeps both lobes") {
    const Region::Repaired result = Region::repaired({{{0, 0}, {10, 10}, {10, 0}, {0, 10}}, {}});
    CHECK_THAT(result.region.area(), WithinAbs(50.0, 1e-9));
    CHECK(result.region.contains({1, 5}));
    CHECK(result.region.contains({9, 5}));
    CHECK_FALSE(result.region.contains({5, 1}));
    CHECK(result.repair == "self-crossing ring");
    REQUIRE(result.place.has_value());
    CHECK_THAT(result.place->x, WithinAbs(5.0, 1e-9));
    CHECK_THAT(result.place->y, WithinAbs(5.0, 1e-9));
}

TEST_CASE("a pentagram keeps its points and loses what its ring goes round twice") {
    Ring star;
    for (int i = 0; i < 5; ++i)
        star.push_back(10.0 * along_bearing(2.0 * std::numbers::pi * (2 * i) / 5));
    const Region::Repaired result = Region::repaired({star, {}});
    CHECK(result.repair == "self-crossing ring");
    CHECK_FALSE(result.region.contains({0, 0}));
    CHECK(result.region.contains({0, 9}));
    // Star of radius R: the inner pentagon has radius R / phi^2; points = star polygon less pentagon.
    const double r = 10.0 / std::pow(std::numbers::phi, 2);
    const double star_area = 5.0 * 10.0 * r * std::sin(std::numbers::pi / 5);
    const double pentagon_area = 2.5 * r * r * std::sin(2.0 * std::numbers::pi / 5);
    CHECK_THAT(result.region.area(), WithinAbs(star_area - pentagon_area, 1e-9));
}

TEST_CASE("flawed inner rings are repaired by counting rings") {
    const Ring square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    const auto with = [&](std::vector<Ring> inners) { return Region::repaired({square, std::move(inners)}); };

    const Region::Repaired outside = with({{{20, 0}, {23, 0}, {23, 3}, {20, 3}}});
    CHECK(outside.repair == "inner ring outside the outer ring");
    CHECK_THAT(outside.region.area(), WithinAbs(109.0, 1e-9));

    const Region::Repaired nested =
        with({{{1, 1}, {9, 1}, {9, 9}, {1, 9}}, {{4, 4}, {6, 4}, {6, 6}, {4, 6}}});
    CHECK(nested.repair == "inner ring inside another inner ring");
    CHECK_THAT(nested.region.area(), WithinAbs(100.0 - 64.0 + 4.0, 1e-9));

    const Region::Repaired across = with({{{5, 5}, {15, 5}, {15, 8}, {5, 8}}});
    CHECK(across.repair.has_value());
    CHECK_THAT(across.region.area(), WithinAbs(100.0 - 15.0 + 15.0, 1e-9));

    const Region::Repaired two_points = with({{{3, 3}, {4, 4}}});
    CHECK(two_points.repair == "inner ring with fewer than three distinct points, left out");
    CHECK(two_points.place == Point{3, 3});
    CHECK(two_points.region.area() == 100.0);
    CHECK_FALSE(with({{}}).region.empty());
}

TEST_CASE("spikes and rings without an area go") {
    const Region::Repaired spike =
        Region::repaired({{{0, 0}, {10, 0}, {10, 5}, {20, 5}, {10, 5}, {10, 10}, {0, 10}}, {}});
    CHECK(spike.repair.has_value());
    CHECK_THAT(spike.region.area(), WithinAbs(100.0, 1e-9));
    CHECK_FALSE(spike.region.contains({15, 5}));
    const Region::Repaired flat = Region::repaired({{{0, 0}, {5, 5}, {10, 10}}, {}});
    CHECK(flat.region.empty());
    REQUIRE(flat.repair.has_value());
    CHECK(flat.repair->find("nothing is left") != std::string::npos);
}

TEST_CASE("a repaired random scribble holds what an odd number of its rings enclose") {
    Dice dice(53);
    const Box box{{0, 0}, {100, 100}};
    int repaired = 0;
    for (int round = 0; round < 60; ++round) {
        Ring scribble;
        for (int i = 0; i < 12; ++i)
            scribble.push_back(dice.in(box));
        const Ring inner = blob(dice, dice.in(box), 20, 8);
        const Region::Repaired result = Region::repaired({scribble, {inner}});
        repaired += result.repair.has_value() ? 1 : 0;
        for (int i = 0; i < 200; ++i) {
            const Point p = dice.in(box);
            if (distance_to_edge(p, {{scribble, {inner}}}) < 1e-6) continue;
            bool odd = false;
            for (const Ring& ring : {scribble, inner}) {
                for (std::size_t k = 0; k < ring.size(); ++k) {
                    const Point a = ring[k];
                    const Point b = ring[(k + 1) % ring.size()];
                    if ((a.y > p.y) == (b.y > p.y)) continue;
                    if (p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) odd = !odd;
                }
            }
            REQUIRE(result.region.contains(p) == odd);
        }
    }
    CHECK(repaired == 60);
}

TEST_CASE("regions are closed") {
    const Region square = ground({{0, 0}, {10, 0}, {10, 10}, {0, 10}}, {{{4, 4}, {6, 4}, {6, 6}, {4, 6}}});
    for (const Point p : {Point{0, 0}, {10, 10}, {5, 0}, {10, 5}, {4, 4}, {5, 4}, {6, 5}, {6, 6}}) {
        CHECK(square.contains(p));
        CHECK(square.distance_to(p) == 0.0);
    }
    for (const Point p : {Point{5, 5}, {-1e-12, 5}, {5, 10.0 + 1e-12}, {4.0 + 1e-12, 5}}) {
        CHECK_FALSE(square.contains(p));
    }
    CHECK(rectangle(0, 0, 10, 10).meets(rectangle(10, 0, 20, 10)));
    CHECK(rectangle(0, 0, 10, 10).meets(rectangle(10, 10, 20, 20)));
    CHECK_FALSE(rectangle(0, 0, 10, 10).meets(rectangle(10.001, 0, 20, 10)));
    CHECK_FALSE(square.meets(rectangle(4.5, 4.5, 5.5, 5.5)));
}

TEST_CASE("distances worked by hand") {
    const Region square = ground({{0, 0}, {10, 0}, {10, 10}, {0, 10}}, {{{2, 2}, {8, 2}, {8, 8}, {2, 8}}});
    CHECK_THAT(square.distance_to({13, 14}), WithinAbs(5.0, 1e-12));
    CHECK_THAT(square.distance_to({5, -3}), WithinAbs(3.0, 1e-12));
    CHECK_THAT(square.distance_to({5, 4}), WithinAbs(2.0, 1e-12));
    CHECK(square.distance_to({1, 1}) == 0.0);
    CHECK(square.bounds().min == Point{0, 0});
    CHECK(square.bounds().max == Point{10, 10});
}

TEST_CASE("discs and ground around a path are true to 0.2 %") {
    const double polygon_of_64 = 32.0 * std::sin(2.0 * std::numbers::pi / 64);  // of radius 1
    CHECK_THAT(Region::disc({7, -3}, 20).area(), WithinAbs(400.0 * polygon_of_64, 1e-6));
    const Region path = Region::around({{0, 0}, {100, 0}, {100, 0}}, 5);
    CHECK_THAT(path.area(), WithinAbs(1000.0 + 25.0 * polygon_of_64, 1e-6));
    CHECK_THAT(Region::around({{1, 1}, {1, 1}}, 5).area(), WithinAbs(25.0 * polygon_of_64, 1e-6));
    CHECK_THAT(rectangle(0, 0, 10, 20).grown(2).area(), WithinAbs(200.0 + 120.0 + 4.0 * polygon_of_64, 1e-6));
    CHECK_THAT(rectangle(0, 0, 10, 20).grown(-2).area(), WithinAbs(6.0 * 16.0, 1e-9));
}

TEST_CASE("beside a straight path lies a rectangle") {
    const std::vector<Point> path{{0, 0}, {0, 40}, {0, 100}};
    const Region right = Region::beside(path, 30, Side::right);
    const Region left = Region::beside(path, 30, Side::left);
    CHECK_THAT(right.area(), WithinAbs(3000.0, 1e-6));
    CHECK_THAT(left.area(), WithinAbs(3000.0, 1e-6));
    CHECK(right.contains({29, 99}));
    CHECK(left.contains({-29, 1}));
    CHECK_FALSE(right.contains({-1, 50}));
    CHECK_FALSE(right.contains({1, 101}));
}

TEST_CASE("beside a bend") {
    // Right, inside of the bend: two strips that share a square. Left, outside: two strips and a quarter
    // disc.
    const std::vector<Point> path{{0, 0}, {0, 100}, {100, 100}};
    const double quarter = 100.0 * 8.0 * std::sin(2.0 * std::numbers::pi / 64);
    CHECK_THAT(Region::beside(path, 10, Side::right).area(), WithinAbs(1000.0 + 1000.0 - 100.0, 1e-6));
    CHECK_THAT(Region::beside(path, 10, Side::left).area(), WithinAbs(2000.0 + quarter, 1e-6));
}

TEST_CASE("beside a closed path is inside or outside") {
    const std::vector<Point> anticlockwise{{0, 0}, {100, 0}, {100, 100}, {0, 100}, {0, 0}};
    const Region inside = Region::beside(anticlockwise, 10, Side::left);
    CHECK_THAT(inside.area(), WithinAbs(10000.0 - 6400.0, 1e-6));
    const Region outside = Region::beside(anticlockwise, 10, Side::right);
    CHECK_FALSE(outside.contains({5, 50}));
    CHECK(outside.contains({-5, 50}));
    CHECK(outside.contains({-5, -5}));
    // Wide enough to fill the inside.
    CHECK_THAT(Region::beside(anticlockwise, 60, Side::left).area(), WithinAbs(10000.0, 1e-6));
}

TEST_CASE("beside a winding path with legs far shorter than the ground is deep") {
    Dice dice(59);
    int checked = 0;
    for (int round = 0; round < 30; ++round) {
        std::vector<Point> path{{0, 0}};
        double bearing = 0.0;
        for (int i = 0; i < 60; ++i) {
            bearing = std::clamp(bearing + dice.between(-0.3, 0.3), -1.0, 1.0);
            path.push_back(path.back() + 5.0 * along_bearing(bearing));
        }
        const LineOfPlay line(path);
        const double width_m = dice.between(5.0, 60.0);
        const Region left = Region::beside(path, width_m, Side::left);
        const Region right = Region::beside(path, width_m, Side::right);
        CHECK_THAT(left.common_with(right).area(), WithinAbs(0.0, 1e-6));
        for (int i = 0; i < 400; ++i) {
            const Point p = dice.in({{-150, -50}, {200, 350}});
            const LineOfPlay::Place place = line.place_of(p);
            if (place.station_m <= 0.0 || place.station_m >= line.length()) continue;
            // Rounded corners are polygons: 0.5 % short at most.
            const double away_m = std::abs(place.offset_m);
            if (away_m > 0.99 * width_m && away_m < width_m + 1e-6) continue;
            ++checked;
            REQUIRE(right.contains(p) == (place.offset_m > 0.0 && away_m < width_m));
            REQUIRE(left.contains(p) == (place.offset_m < 0.0 && away_m < width_m));
        }
    }
    CHECK(checked > 3000);
}

TEST_CASE("unions, intersections and differences of random ground add up") {
    Dice dice(61);
    const Box box{{0, 0}, {100, 100}};
    for (int round = 0; round < 100; ++round) {
        const Region a = ground(blob(dice, dice.in(box), 40, 17), {});
        const Region b = ground(blob(dice, dice.in(box), 40, 17), {});
        const Region both = a.common_with(b);
        REQUIRE_THAT(a.joined_with(b).area(), WithinAbs(a.area() + b.area() - both.area(), 1e-6));
        REQUIRE_THAT(a.without(b).area(), WithinAbs(a.area() - both.area(), 1e-6));
        REQUIRE_THAT(Region::united(std::vector{a, b, both}).area(),
                     WithinAbs(a.joined_with(b).area(), 1e-6));
        REQUIRE(a.meets(b) == !both.empty());
        for (int i = 0; i < 50; ++i) {
            const Point p = dice.in(box);
            REQUIRE(both.contains(p) == (a.contains(p) && b.contains(p)));
            REQUIRE(a.without(b).contains(p) == (a.contains(p) && !b.contains(p)));
        }
    }
}

TEST_CASE("simplified ground stays within the tolerance") {
    Dice dice(67);
    Ring coast;
    for (int i = 0; i < 400; ++i) {
        const double bearing = 2.0 * std::numbers::pi * i / 400;
        coast.push_back(dice.between(49.8, 50.2) * along_bearing(bearing));
    }
    const Region drawn = ground(coast);
    const Region simple = drawn.simplified(1.0);
    REQUIRE(simple.polygons().size() == 1);
    CHECK(simple.polygons()[0].outer.size() < 60);
    for (const Point p : coast)
        REQUIRE(distance_to_edge(p, simple.polygons()) <= 1.0 + 1e-9);
}

TEST_CASE("stretches worked by hand") {
    const Region square = ground({{0, 0}, {10, 0}, {10, 10}, {0, 10}}, {{{4, 4}, {6, 4}, {6, 6}, {4, 6}}});
    check_stretches(square.stretches({-5, 5}, {25, 5}), {{5, 9}, {11, 15}});
    check_stretches(square.stretches({25, 5}, {-5, 5}), {{15, 19}, {21, 25}});
    check_stretches(square.stretches({1, 1}, {9, 1}), {{0, 8}});
    check_stretches(square.stretches({5, 5}, {5, 30}), {{1, 5}});
    check_stretches(square.stretches({-5, 0}, {15, 0}), {{5, 15}});  // along an edge
    check_stretches(square.stretches({-5, 4}, {15, 4}), {{5, 15}});  // along the inner ring
    check_stretches(square.stretches({-5, 5}, {5, -5}), {});         // touches a corner
    check_stretches(square.stretches({-5, 15}, {5, 25}), {});
    check_stretches(square.stretches({2, 6}, {6, 2}), {{0, std::sqrt(32.0)}});  // grazes the inner corner
    check_stretches(square.stretches({5, 1}, {5, 1}), {});
}

TEST_CASE("stretches hold the inside of random paths and nothing else") {
    Dice dice(71);
    const Box box{{0, 0}, {100, 100}};
    for (int round = 0; round < 300; ++round) {
        const Region region = ground(blob(dice, {50, 50}, 45, 25), {blob(dice, {50, 50}, 18, 9)});
        const Point from = dice.in(box);
        const Point to = dice.in(box);
        const std::vector<Stretch> stretches = region.stretches(from, to);
        for (int i = 0; i < 40; ++i) {
            const double at_m = dice.between(0.0, distance(from, to));
            const bool within = std::any_of(stretches.begin(), stretches.end(), [&](const Stretch& stretch) {
                return stretch.from_m <= at_m && at_m <= stretch.to_m;
            });
            const Point p = from + at_m * unit(to - from);
            if (distance_to_edge(p, region.polygons()) < 1e-9) continue;
            REQUIRE(within == region.contains(p));
        }
    }
}

TEST_CASE("copies share their geometry across threads and outlive where they were made") {
    Region made_elsewhere;
    std::thread([&] { made_elsewhere = Region::disc({0, 0}, 10).without(Region::disc({0, 0}, 5)); }).join();
    std::vector<int> hits(4, 0);
    std::vector<std::thread> threads;
    for (std::size_t t = 0; t < hits.size(); ++t) {
        threads.emplace_back([&, t, copy = made_elsewhere] {
            for (int i = 0; i < 200; ++i) {
                hits[t] += copy.contains({7, 0}) && copy.meets(rectangle(6, 0, 8, 1)) ? 1 : 0;
            }
        });
    }
    for (std::thread& thread : threads)
        thread.join();
    for (const int hit : hits)
        CHECK(hit == 200);
    outlives_main = made_elsewhere;
}

TEST_CASE("paths cut a box into pieces") {
    using Path = std::vector<Point>;
    const Box box{{0, 0}, {100, 100}};
    const auto count = [&box](const std::vector<Path>& paths) { return Region::pieces(box, paths).size(); };
    const Path upright{{50, -10}, {50, 110}};
    const Path level{{-10, 50}, {110, 50}};
    const Path half{{50, -10}, {50, 50}};
    const Path loop{{40, 40}, {60, 40}, {60, 60}, {40, 60}, {40, 40}};
    const Path beyond{{140, 40}, {160, 40}, {160, 60}, {140, 40}};
    CHECK(count({}) == 1);
    CHECK(count({upright}) == 2);
    CHECK(count({upright, level}) == 4);
    // An end that reaches nothing cuts nothing, nor does a loop beyond the box.
    CHECK(count({half}) == 1);
    CHECK(count({loop, beyond}) == 2);
    double area = 0.0;
    for (const Region& piece : Region::pieces(box, {loop, upright}))
        area += piece.area();
    CHECK(std::abs(area - 10000.0) < 1e-6);
    const Path point{{50, 50}};
    CHECK_THROWS_AS(count({point}), std::invalid_argument);
}
