#include "geometry/lie_partition.hpp"

#include <limits>
#include <thread>

#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {

constexpr Box extent{{0, 0}, {300, 200}};

double total_area(const LiePartition& lies) {
    double sum = 0.0;
    for (const Lie lie : all_lies)
        sum += lies.region(lie).area();
    return sum;
}

double edge_distance(Point p, const std::vector<LieLayer>& layers, const std::optional<Region>& in_bounds) {
    double nearest = in_bounds ? distance_to_edge(p, in_bounds->polygons()) : infinity;
    for (const LieLayer& layer : layers)
        nearest = std::min(nearest, distance_to_edge(p, layer.region.polygons()));
    return nearest;
}

}  // namespace

TEST_CASE("an extent without an area is refused") {
    const std::vector<LieLayer> none;
    CHECK_THROWS_AS(LiePartition({{0, 0}, {0, 10}}, none, {}), std::invalid_argument);
    CHECK_THROWS_AS(LiePartition({{5, 0}, {0, 10}}, none, {}), std::invalid_argument);
    CHECK_THROWS_AS(LiePartition({{0, 0}, {not_a_number, 10}}, none, {}), std::invalid_argument);
    CHECK_THROWS_AS(LiePartition({{0, 0}, {infinity, 10}}, none, {}), std::invalid_argument);
}

TEST_CASE("ground that nothing covers is rough") {
    const std::vector<LieLayer> layers{{Lie::bunker, Region()}, {Lie::rough, rectangle(1, 1, 2, 2)}};
    const LiePartition lies(extent, layers, {});
    CHECK_THAT(lies.region(Lie::rough).area(), WithinAbs(300.0 * 200.0, 1e-6));
    CHECK(lies.region(Lie::bunker).empty());
    CHECK(lies.lie_at({150, 100}) == Lie::rough);
    CHECK(lies.lie_at({1.5, 1.5}) == Lie::rough);
    CHECK(lies.beyond() == Lie::rough);
    CHECK(lies.lie_at({-1, 100}) == Lie::rough);
    CHECK(lies.lie_at({not_a_number, 100}) == Lie::rough);
}

TEST_CASE("of two lies on one spot the first in lie_priority wins, whichever comes first on the map") {
    for (std::size_t first = 0; first < lie_count; ++first) {
        for (std::size_t second = first; second < lie_count; ++second) {
            const Lie winner = lie_priority[first];
            const Lie loser = lie_priority[second];
            const std::vector<LieLayer> one_way{{winner, rectangle(10, 10, 30, 30)},
                                                {loser, rectangle(20, 20, 40, 40)}};
            const std::vector<LieLayer> other_way{one_way[1], one_way[0]};
            for (const std::vector<LieLayer>& layers : {one_way, other_way}) {
                const LiePartition lies(extent, layers, {});
                CHECK(lies.lie_at({25, 25}) == winner);
                CHECK(lies.lie_at({15, 15}) == winner);
                CHECK(lies.lie_at({35, 35}) == loser);
                CHECK(lies.region(winner).contains({25, 25}));
                if (winner != loser) CHECK_FALSE(lies.region(loser).contains({25, 25}));
                CHECK_THAT(total_area(lies), WithinAbs(60000.0, 1e-6));
            }
        }
    }
}

TEST_CASE("a shared edge belongs to the lie that goes first") {
    const std::vector<LieLayer> layers{{Lie::fairway, rectangle(10, 10, 20, 20)},
                                       {Lie::bunker, rectangle(20, 10, 30, 20)}};
    const LiePartition lies(extent, layers, {});
    CHECK(lies.lie_at({20, 15}) == Lie::bunker);
    CHECK(lies.lie_at({20, 20}) == Lie::bunker);
    CHECK(lies.lie_at({10, 15}) == Lie::fairway);
    CHECK(lies.lie_at({15, 10}) == Lie::fairway);
    CHECK(lies.lie_at({10, 10}) == Lie::fairway);
    CHECK(lies.lie_at({30, 20}) == Lie::bunker);
}

TEST_CASE("layers of one lie may overlap, nest and touch") {
    const std::vector<LieLayer> layers{{Lie::trees, rectangle(10, 10, 60, 60)},
                                       {Lie::trees, rectangle(20, 20, 30, 30)},
                                       {Lie::trees, rectangle(50, 50, 90, 90)},
                                       {Lie::trees, rectangle(60, 10, 70, 20)}};
    const LiePartition lies(extent, layers, {});
    CHECK_THAT(lies.region(Lie::trees).area(), WithinAbs(2500.0 + 1600.0 - 100.0 + 100.0, 1e-6));
    for (const Point p : {Point{25, 25}, {20, 25}, {55, 55}, {60, 15}, {80, 80}}) {
        CHECK(lies.lie_at(p) == Lie::trees);
    }
    CHECK(lies.lie_at({75, 30}) == Lie::rough);
}

TEST_CASE("many layers on one spot stay one lie") {
    // More than any narrow counter holds.
    std::vector<LieLayer> layers(300, LieLayer{Lie::trees, rectangle(10, 10, 20, 20)});
    layers.push_back({Lie::fairway, rectangle(12, 12, 14, 14)});
    const LiePartition lies(extent, layers, {});
    CHECK(lies.lie_at({15, 15}) == Lie::trees);
    CHECK(lies.lie_at({13, 13}) == Lie::fairway);
    CHECK(lies.lie_at({25, 15}) == Lie::rough);
}

TEST_CASE("an island in water is not water") {
    const std::vector<LieLayer> layers{
        {Lie::penalty_red, ground({{50, 50}, {150, 50}, {150, 150}, {50, 150}},
                                  {{{90, 90}, {110, 90}, {110, 110}, {90, 110}}})}};
    const LiePartition lies(extent, layers, {});
    CHECK(lies.lie_at({60, 60}) == Lie::penalty_red);
    CHECK(lies.lie_at({100, 100}) == Lie::rough);
    CHECK_THAT(lies.region(Lie::penalty_red).area(), WithinAbs(10000.0 - 400.0, 1e-6));
}

TEST_CASE("layers reaching out of the extent are cut") {
    const std::vector<LieLayer> layers{{Lie::fairway, rectangle(-500, 50, 500, 100)},
                                       {Lie::trees, rectangle(-500, -500, 500, -1)},
                                       {Lie::green, rectangle(400, 0, 500, 50)}};
    const LiePartition lies(extent, layers, {});
    CHECK_THAT(lies.region(Lie::fairway).area(), WithinAbs(300.0 * 50.0, 1e-6));
    CHECK(lies.region(Lie::trees).empty());
    CHECK(lies.region(Lie::green).empty());
    CHECK(lies.lie_at({0, 75}) == Lie::fairway);
    CHECK(lies.lie_at({300, 75}) == Lie::fairway);
    CHECK(lies.lie_at({-0.001, 75}) == Lie::rough);
    CHECK_THAT(total_area(lies), WithinAbs(60000.0, 1e-6));
}

TEST_CASE("outside a known boundary everything is out of bounds") {
    const std::vector<LieLayer> layers{{Lie::fairway, rectangle(50, 50, 250, 150)},
                                       {Lie::out_of_bounds, rectangle(80, 80, 90, 90)}};
    const LiePartition lies(extent, layers, rectangle(-100, 20, 200, 180));
    CHECK(lies.lie_at({100, 100}) == Lie::fairway);
    CHECK(lies.lie_at({225, 100}) == Lie::out_of_bounds);
    CHECK(lies.lie_at({85, 85}) == Lie::out_of_bounds);
    CHECK(lies.lie_at({10, 10}) == Lie::out_of_bounds);
    CHECK(lies.lie_at({10, 100}) == Lie::rough);
    CHECK(lies.lie_at({0, 100}) == Lie::rough);  // the extent's edge is no boundary
    CHECK(lies.beyond() == Lie::out_of_bounds);
    CHECK(lies.lie_at({-50, 100}) == Lie::out_of_bounds);
    CHECK_THAT(lies.region(Lie::out_of_bounds).area(), WithinAbs(60000.0 - 200.0 * 160.0 + 100.0, 1e-6));
    CHECK_THAT(total_area(lies), WithinAbs(60000.0, 1e-6));
}

TEST_CASE("an empty boundary leaves nothing in bounds") {
    const std::vector<LieLayer> layers{{Lie::green, rectangle(10, 10, 20, 20)}};
    const LiePartition lies(extent, layers, Region());
    CHECK(lies.lie_at({15, 15}) == Lie::out_of_bounds);
    CHECK_THAT(lies.region(Lie::out_of_bounds).area(), WithinAbs(60000.0, 1e-6));
}

TEST_CASE("stretches of a path worked by hand") {
    const std::vector<LieLayer> layers{{Lie::fairway, rectangle(50, 50, 250, 150)},
                                       {Lie::bunker, rectangle(100, 90, 110, 110)},
                                       {Lie::fairway, rectangle(250, 50, 260, 150)}};
    const LiePartition lies(extent, layers, rectangle(0, 0, 280, 200));
    const std::vector<LieStretch> found = lies.stretches({20, 100}, {320, 100});
    const std::vector<LieStretch> expected{{0, 30, Lie::rough},    {30, 80, Lie::fairway},
                                           {80, 90, Lie::bunker},  {90, 240, Lie::fairway},
                                           {240, 260, Lie::rough}, {260, 300, Lie::out_of_bounds}};
    REQUIRE(found.size() == expected.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        CHECK_THAT(found[i].from_m, WithinAbs(expected[i].from_m, 1e-9));
        CHECK_THAT(found[i].to_m, WithinAbs(expected[i].to_m, 1e-9));
        CHECK(found[i].lie == expected[i].lie);
    }
    const std::vector<LieStretch> point = lies.stretches({105, 100}, {105, 100});
    REQUIRE(point.size() == 1);
    CHECK(point[0].lie == Lie::bunker);
    CHECK(point[0].to_m == 0.0);
    CHECK_THROWS_AS(lies.stretches({not_a_number, 0}, {0, 0}), std::invalid_argument);
    // Through a corner only: no stretch of its own.
    const std::vector<LieStretch> corner = lies.stretches({90, 100}, {110, 120});
    REQUIRE(corner.size() == 1);
    CHECK(corner[0].lie == Lie::fairway);
}

TEST_CASE("a path that starts and ends beyond the extent crosses it") {
    const LiePartition lies(extent, {}, Region::box(extent));
    const std::vector<LieStretch> found = lies.stretches({-10, 100}, {310, 100});
    REQUIRE(found.size() == 3);
    CHECK(found[0].lie == Lie::out_of_bounds);
    CHECK(found[1].lie == Lie::rough);
    CHECK_THAT(found[1].from_m, WithinAbs(10.0, 1e-9));
    CHECK_THAT(found[1].to_m, WithinAbs(310.0, 1e-9));
    CHECK(found[2].lie == Lie::out_of_bounds);
}

TEST_CASE("a random partition is a partition and lie_at, regions and stretches agree") {
    Dice dice(23);
    for (int round = 0; round < 12; ++round) {
        const std::vector<LieLayer> layers = random_layers(dice, extent, 40);
        std::optional<Region> in_bounds;
        if (round % 2 == 0) in_bounds = ground(blob(dice, {150, 100}, 220, 30));
        const LiePartition lies(extent, layers, in_bounds);
        CHECK_THAT(total_area(lies), WithinAbs(60000.0, 60000.0 * 1e-9));

        for (int i = 0; i < 1500; ++i) {
            const Point p = dice.in(extent);
            if (edge_distance(p, layers, in_bounds) < 1e-6) continue;
            int regions = 0;
            for (const Lie lie : all_lies)
                regions += lies.region(lie).contains(p) ? 1 : 0;
            REQUIRE(regions == 1);
            REQUIRE(lies.region(lies.lie_at(p)).contains(p));
            // By definition, from the map.
            Lie by_map = Lie::rough;
            for (const Lie lie : lie_priority) {
                const bool mapped = std::any_of(layers.begin(), layers.end(),
                                                [&](const LieLayer& layer) {
                                                    return layer.lie == lie && layer.region.contains(p);
                                                }) ||
                                    (lie == Lie::out_of_bounds && in_bounds && !in_bounds->contains(p));
                if (!mapped) continue;
                by_map = lie;
                break;
            }
            REQUIRE(lies.lie_at(p) == by_map);
        }
        for (int i = 0; i < 100; ++i) {
            const Point from = dice.in(extent.grown(20));
            const Point to = dice.in(extent.grown(20));
            const std::vector<LieStretch> path = lies.stretches(from, to);
            REQUIRE(path.front().from_m == 0.0);
            REQUIRE(path.back().to_m == distance(from, to));
            for (std::size_t s = 0; s < path.size(); ++s) {
                REQUIRE(path[s].to_m > path[s].from_m);
                if (s > 0) REQUIRE(path[s].from_m == path[s - 1].to_m);
                if (s > 0) REQUIRE(path[s].lie != path[s - 1].lie);
                const double length_m = path[s].to_m - path[s].from_m;
                if (length_m < 1e-6) continue;
                for (const double share : {0.01, 0.3, 0.6, 0.99}) {
                    const double at_m = path[s].from_m + share * length_m;
                    REQUIRE(lies.lie_at(from + at_m * unit(to - from)) == path[s].lie);
                }
            }
        }
    }
}

TEST_CASE("turned, moved and mirrored ground has the same lies") {
    Dice dice(29);
    const std::vector<LieLayer> layers = random_layers(dice, extent, 40);
    const Box wide{{-3000, -3000}, {3000, 3000}};
    const LiePartition here(wide, layers, {});
    for (const bool mirrored : {false, true}) {
        const Motion motion{
            mirrored, dice.between(-3, 3), {dice.between(-500, 500), dice.between(-500, 500)}};
        const LiePartition there(wide, motion(layers), {});
        for (const Lie lie : all_lies) {
            CHECK_THAT(there.region(lie).area(), WithinAbs(here.region(lie).area(), 1e-4));
        }
        for (int i = 0; i < 5000; ++i) {
            const Point p = dice.in(extent);
            if (edge_distance(p, layers, {}) < 1e-6) continue;
            REQUIRE(there.lie_at(motion(p)) == here.lie_at(p));
        }
    }
}

TEST_CASE("several threads may read one partition and outlive it") {
    Dice dice(31);
    const std::vector<LieLayer> layers = random_layers(dice, extent, 40);
    std::optional<LiePartition> lies(std::in_place, extent, layers, Region::box(extent));
    const LiePartition expected(extent, layers, Region::box(extent));
    std::vector<double> areas(4, 0.0);
    std::vector<int> different(4, 0);
    std::vector<std::thread> threads;
    for (std::size_t t = 0; t < areas.size(); ++t) {
        threads.emplace_back([&, t, mine = *lies] {
            Dice own(t);
            areas[t] = total_area(mine);
            for (int i = 0; i < 2000; ++i) {
                const Point p = own.in(extent);
                if (mine.lie_at(p) != expected.lie_at(p)) ++different[t];
            }
        });
    }
    lies.reset();
    for (std::thread& thread : threads)
        thread.join();
    for (std::size_t t = 0; t < areas.size(); ++t) {
        CHECK_THAT(areas[t], WithinAbs(60000.0, 1e-4));
        CHECK(different[t] == 0);
    }
}

TEST_CASE("every lie has a name") {
    for (const Lie lie : all_lies)
        CHECK(lie_name(lie).find("unknown") == std::string_view::npos);
    CHECK(lie_name(Lie::out_of_bounds) == "out of bounds");
    CHECK(lie_name(Lie::penalty_red) == "red penalty area");
}
