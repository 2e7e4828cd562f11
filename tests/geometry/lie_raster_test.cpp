#include "geometry/lie_raster.hpp"

#include <limits>

#include "geometry/units.hpp"
#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {

constexpr Box extent{{-40, 15}, {260, 215}};

Point centre_of(const LieRaster& raster, int column, int row) {
    return extent.min + raster.step_m() * Point{column + 0.5, row + 0.5};
}

// Length of the edges at which the lie changes, the extent's own left out.
double length_of_edges(const LiePartition& lies) {
    const Point size = lies.extent().max - lies.extent().min;
    double doubled = -2.0 * (size.x + size.y);
    const auto add = [&](const Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i)
            doubled += distance(ring[i], ring[(i + 1) % ring.size()]);
    };
    for (const Lie lie : all_lies) {
        for (const PolygonRings& polygon : lies.region(lie).polygons()) {
            add(polygon.outer);
            for (const Ring& inner : polygon.inners)
                add(inner);
        }
    }
    return 0.5 * doubled;
}

}  // namespace

TEST_CASE("steps that are no steps are refused") {
    const LiePartition lies(extent, {}, {});
    CHECK_THROWS_AS(LieRaster(lies, 0.0), std::invalid_argument);
    CHECK_THROWS_AS(LieRaster(lies, -1.0), std::invalid_argument);
    CHECK_THROWS_AS(LieRaster(lies, not_a_number), std::invalid_argument);
    CHECK_THROWS_AS(LieRaster(lies, 1e-9), std::invalid_argument);
    CHECK_THROWS_AS(misread_share(LieRaster(lies, 1.0), lies, 0), std::invalid_argument);
}

TEST_CASE("outside the raster is beyond") {
    for (const bool bounded : {false, true}) {
        const LiePartition lies(extent, {}, bounded ? std::optional(Region::box(extent)) : std::nullopt);
        const LieRaster raster(lies, 1.0);
        CHECK(raster.columns() == 300);
        CHECK(raster.rows() == 200);
        CHECK(raster.at({100, 100}) == Lie::rough);
        for (const Point p : {Point{-40.001, 100},
                              {260.001, 100},
                              {0, 14.9},
                              {0, 1e308},
                              {not_a_number, 100},
                              {0, not_a_number}}) {
            CHECK(raster.at(p) == (bounded ? Lie::out_of_bounds : Lie::rough));
        }
    }
}

TEST_CASE("a step longer than the extent leaves no cells") {
    const LieRaster raster(LiePartition(extent, {}, {}), 1000.0);
    CHECK(raster.columns() == 0);
    CHECK(raster.at({100, 100}) == Lie::rough);
}

TEST_CASE("a small raster worked by hand") {
    // 2 m cells; centres at 1, 3, 5, 7, 9. The bunker from 2.5 to 7.5 holds the centres 3, 5 and 7.
    const Box small{{0, 0}, {10, 10}};
    const std::vector<LieLayer> layers{{Lie::fairway, rectangle(-5, 0, 15, 6)},
                                       {Lie::bunker, rectangle(2.5, 2.5, 7.5, 7.5)}};
    const LieRaster raster(LiePartition(small, layers, {}), 2.0);
    const char* expected[] = {"fffff", "fbbbf", "fbbbf", "rbbbr", "rrrrr"};  // from the bottom
    for (int row = 0; row < 5; ++row) {
        for (int column = 0; column < 5; ++column) {
            const char letter = expected[row][column];
            const Lie lie = letter == 'f' ? Lie::fairway : letter == 'b' ? Lie::bunker : Lie::rough;
            CHECK(raster.at({2.0 * column + 1.0, 2.0 * row + 1.0}) == lie);
        }
    }
}

TEST_CASE("a last column is kept when its centres are within the extent") {
    const Box small{{0, 0}, {10, 10}};
    const std::vector<LieLayer> all_green{{Lie::green, Region::box(small)}};
    const LiePartition lies(small, all_green, {});
    const LieRaster kept(lies, 2.8);  // centres at 1.4, 4.2, 7.0, 9.8
    CHECK(kept.columns() == 4);
    CHECK(kept.at({9.8, 9.8}) == Lie::green);
    const LieRaster left_out(lies, 3.0);  // the next centre would be at 10.5
    CHECK(left_out.columns() == 3);
    CHECK(left_out.at({9.5, 5.0}) == lies.beyond());
}

TEST_CASE("every cell of random ground holds the lie at its centre") {
    Dice dice(41);
    for (int round = 0; round < 8; ++round) {
        const std::vector<LieLayer> layers = random_layers(dice, extent, 50);
        std::optional<Region> in_bounds;
        if (round % 2 == 1) in_bounds = ground(blob(dice, {110, 115}, 200, 40));
        const LiePartition lies(extent, layers, in_bounds);
        const LieRaster raster(lies, dice.between(0.4, 1.7));
        int on_edge = 0;
        for (int row = 0; row < raster.rows(); ++row) {
            for (int column = 0; column < raster.columns(); ++column) {
                const Point centre = centre_of(raster, column, row);
                if (raster.at(centre) == lies.lie_at(centre)) continue;
                double nearest = in_bounds ? distance_to_edge(centre, in_bounds->polygons()) : 1e300;
                for (const LieLayer& layer : layers) {
                    nearest = std::min(nearest, distance_to_edge(centre, layer.region.polygons()));
                }
                REQUIRE(nearest < 1e-6);
                ++on_edge;
            }
        }
        CHECK(on_edge < 5);
    }
}

TEST_CASE("misreadings are as many as edges are long and steps wide") {
    // Where an edge runs through a cell, the part without the centre is misread. Averaged over the places of
    // an edge of length L that is L * step / 4 for one along the cells, L * step * sqrt(2) / 6 for one at 45
    // degrees: between 0.235 and 0.25 of L * step, as long as the ground is coarser than the step.
    Dice dice(43);
    const Box hole{{0, 0}, {600, 400}};
    std::vector<LieLayer> layers;
    for (int i = 0; i < 40; ++i) {
        layers.push_back({all_lies[static_cast<std::size_t>(i) % lie_count],
                          Region::disc(dice.in(hole), dice.between(8.0, 50.0))});
    }
    const LiePartition lies(hole, layers, {});
    const double edges_per_area = length_of_edges(lies) / (600.0 * 400.0);
    double coarser = 0.0;
    for (const double step_yd : {2.0, 1.0, 0.5, 0.25}) {
        const double step_m = Yards{step_yd}.metres();
        const double share = misread_share(LieRaster(lies, step_m), lies, 400'000);
        const double edge_share = edges_per_area * step_m;
        CHECK(share < 0.25 * edge_share * 1.05);
        CHECK(share > 0.235 * edge_share * 0.90);
        if (coarser > 0.0) CHECK_THAT(share / coarser, WithinAbs(0.5, 0.05));
        coarser = share;
    }
}

TEST_CASE("the raster keeps the area of each lie") {
    Dice dice(47);
    const std::vector<LieLayer> layers = random_layers(dice, extent, 50);
    const LiePartition lies(extent, layers, {});
    const LieRaster raster(lies, 0.25);
    std::array<double, lie_count> areas{};
    for (int row = 0; row < raster.rows(); ++row) {
        for (int column = 0; column < raster.columns(); ++column) {
            areas[index_of(raster.at(centre_of(raster, column, row)))] += 0.25 * 0.25;
        }
    }
    for (const Lie lie : all_lies) {
        CHECK_THAT(areas[index_of(lie)], WithinAbs(lies.region(lie).area(), 1e-4 * 60000.0));
    }
}
