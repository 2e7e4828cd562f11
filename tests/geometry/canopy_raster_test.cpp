#include "geometry/canopy_raster.hpp"

#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {

constexpr Box extent{{-40, 15}, {260, 215}};
constexpr double trees_m = 12.0;

}  // namespace

TEST_CASE("where nothing stands there is no canopy and no raster") {
    CHECK(CanopyRaster().empty());
    CHECK(CanopyRaster().at({0, 0}) == 0.0);
    const std::vector<LieLayer> mown{{Lie::fairway, rectangle(0, 0, 100, 100)}};
    const CanopyRaster none(LiePartition(extent, mown, {}), {}, trees_m, 1.0);
    CHECK(none.empty());
    CHECK(none.at({50, 50}) == 0.0);
    // A wood that is fairway all over.
    const std::vector<LieLayer> cleared{{Lie::trees, rectangle(10, 20, 90, 90)},
                                        {Lie::fairway, rectangle(0, 0, 100, 100)}};
    CHECK(CanopyRaster(LiePartition(extent, cleared, {}), {}, trees_m, 1.0).empty());
}

TEST_CASE("heights and steps that are none are refused") {
    const LiePartition lies(extent, {}, {});
    const auto wood = [](double height_m) {
        return std::vector<TallGround>{{rectangle(0, 20, 50, 60), height_m, true}};
    };
    for (const double bad : {0.0, -1.0, not_a_number}) {
        CHECK_THROWS_AS(CanopyRaster(lies, wood(bad), trees_m, 1.0), std::invalid_argument);
        CHECK_THROWS_AS(CanopyRaster(lies, wood(5.0), bad, 1.0), std::invalid_argument);
        CHECK_THROWS_AS(CanopyRaster(lies, wood(5.0), trees_m, bad), std::invalid_argument);
    }
    CHECK_THROWS_AS(CanopyRaster(lies, wood(5.0), trees_m, 1e-9), std::invalid_argument);
}

TEST_CASE("trees stand where the lie is trees, buildings anywhere, and the highest counts") {
    const std::vector<LieLayer> layers{{Lie::trees, rectangle(0, 20, 100, 120)},
                                       {Lie::fairway, rectangle(40, 20, 60, 120)}};
    const std::vector<TallGround> tall{
        {rectangle(0, 20, 70, 70), 18.04, true},     // over the fairway too
        {rectangle(0, 20, 30, 40), 25.0, true},      // a taller stand inside
        {rectangle(0, 30, 20, 50), 6.0, true},       // undergrowth
        {rectangle(45, 50, 55, 60), 9.5, false},     // a house on the fairway
        {rectangle(150, 150, 170, 170), 4.0, false}  // and one in the rough
    };
    const CanopyRaster canopy(LiePartition(extent, layers, {}), tall, trees_m, 1.0);
    CHECK_FALSE(canopy.empty());
    CHECK_THAT(canopy.at({35, 65}), WithinAbs(18.0, 1e-9));
    CHECK_THAT(canopy.at({10, 35}), WithinAbs(25.0, 1e-9));
    CHECK_THAT(canopy.at({10, 45}), WithinAbs(18.0, 1e-9));
    CHECK(canopy.at({50, 30}) == 0.0);
    CHECK_THAT(canopy.at({50, 55}), WithinAbs(9.5, 1e-9));
    CHECK_THAT(canopy.at({160, 160}), WithinAbs(4.0, 1e-9));
    CHECK_THAT(canopy.at({80, 100}), WithinAbs(trees_m, 1e-9));
    CHECK(canopy.at({200, 30}) == 0.0);
    for (const Point outside : {Point{-41, 100}, Point{261, 100}, Point{50, 1e9}, Point{not_a_number, 30}}) {
        CHECK(canopy.at(outside) == 0.0);
    }
}

TEST_CASE("what is lower than a decimetre still stands, and what is too high for the raster is held") {
    const std::vector<TallGround> tall{{rectangle(0, 20, 10, 30), 0.01, false},
                                       {rectangle(20, 20, 30, 30), 1e6, false}};
    const CanopyRaster canopy(LiePartition(extent, {}, {}), tall, trees_m, 1.0);
    CHECK_THAT(canopy.at({5, 25}), WithinAbs(0.1, 1e-9));
    CHECK_THAT(canopy.at({25, 25}), WithinAbs(6553.5, 1e-9));
}

TEST_CASE("every cell of random ground holds the highest thing at its centre") {
    Dice dice(97);
    constexpr double step_m = 1.25;
    for (int round = 0; round < 6; ++round) {
        const LiePartition lies(extent, random_layers(dice, extent, 40), {});
        std::vector<TallGround> tall;
        for (int i = 0; i < 25; ++i) {
            const double height_m = 0.5 * (1 + dice.below(40));
            tall.push_back(
                {ground(blob(dice, dice.in(extent), dice.between(5.0, 60.0), 12)), height_m, i % 3 != 0});
        }
        const CanopyRaster canopy(lies, tall, trees_m, step_m);
        int differing = 0;
        for (int row = 0; row < 160; ++row) {
            for (int column = 0; column < 240; ++column) {
                const Point centre = extent.min + step_m * Point{column + 0.5, row + 0.5};
                const bool wooded = lies.lie_at(centre) == Lie::trees;
                double highest = 0.0;
                for (const TallGround& piece : tall) {
                    if ((wooded || !piece.is_trees) && piece.region.contains(centre))
                        highest = std::max(highest, piece.height_m);
                }
                if (highest == 0.0 && wooded) highest = trees_m;
                if (std::abs(canopy.at(centre) - highest) > 1e-9) ++differing;
            }
        }
        CHECK(differing < 5);  // centres on an edge to rounding
    }
}
