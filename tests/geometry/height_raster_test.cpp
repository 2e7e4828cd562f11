#include "geometry/height_raster.hpp"

#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {

constexpr Box extent{{-30, 10}, {170, 90}};  // 200 m by 80 m

// A post every 10 m.
template <typename Height>
HeightRaster raster_of(const Height& height_m) {
    std::vector<float> heights;
    for (int row = 0; row < 9; ++row) {
        for (int column = 0; column < 21; ++column)
            heights.push_back(static_cast<float>(height_m(Point{-30 + 10.0 * column, 10 + 10.0 * row})));
    }
    return HeightRaster(extent, 21, 9, heights);
}

}  // namespace

TEST_CASE("rasters that are none are refused") {
    const std::vector<float> four(4, 0.0f);
    CHECK_NOTHROW(HeightRaster(extent, 2, 2, four));
    CHECK_THROWS_AS(HeightRaster(extent, 1, 4, four), std::invalid_argument);
    CHECK_THROWS_AS(HeightRaster(extent, 4, 1, four), std::invalid_argument);
    CHECK_THROWS_AS(HeightRaster(extent, 2, 3, four), std::invalid_argument);
    CHECK_THROWS_AS(HeightRaster(extent, -2, -2, four), std::invalid_argument);
    CHECK_THROWS_AS(HeightRaster({{0, 0}, {0, 10}}, 2, 2, four), std::invalid_argument);
    CHECK_THROWS_AS(HeightRaster({{0, 0}, {10, infinity}}, 2, 2, four), std::invalid_argument);
    for (const double bad : {not_a_number, infinity, -infinity}) {
        CHECK_THROWS_AS(HeightRaster(extent, 2, 2, {0.0f, static_cast<float>(bad), 0.0f, 0.0f}),
                        std::invalid_argument);
    }
}

TEST_CASE("posts are read back, rows from the bottom") {
    const HeightRaster raster({{0, 0}, {20, 10}}, 3, 2, {1, 2, 3, 4, 5, 6});
    CHECK(raster.at({0, 0}) == 1.0);
    CHECK(raster.at({20, 0}) == 3.0);
    CHECK(raster.at({0, 10}) == 4.0);
    CHECK(raster.at({20, 10}) == 6.0);
    CHECK(raster.at({10, 5}) == 3.5);
}

TEST_CASE("between posts heights are bilinear: exact on a plane and on x times y") {
    const HeightRaster plane = raster_of([](Point p) { return 12.0 + 0.25 * p.x - 0.5 * p.y; });
    const HeightRaster saddle = raster_of([](Point p) { return p.x * p.y / 64.0; });
    Dice dice(5);
    for (int i = 0; i < 200; ++i) {
        const Point p = dice.in(extent);
        CHECK_THAT(plane.at(p), WithinAbs(12.0 + 0.25 * p.x - 0.5 * p.y, 1e-5));
        CHECK_THAT(saddle.at(p), WithinAbs(p.x * p.y / 64.0, 1e-4));
        CHECK_THAT(plane.gradient(p).x, WithinAbs(0.25, 1e-6));
        CHECK_THAT(plane.gradient(p).y, WithinAbs(-0.5, 1e-6));
    }
}

TEST_CASE("the gradient of a bowl is its slope, smoothed over one spacing of posts") {
    const HeightRaster bowl = raster_of([](Point p) { return 0.001 * (p.x * p.x + p.y * p.y); });
    // Of a parabola the symmetric difference of posts is the slope itself: at a post and halfway exact.
    for (const Point p : {Point{0, 50}, Point{40, 30}, Point{55, 35}}) {
        CHECK_THAT(bowl.gradient(p).x, WithinAbs(0.002 * p.x, 1e-5));
        CHECK_THAT(bowl.gradient(p).y, WithinAbs(0.002 * p.y, 1e-5));
    }
}

TEST_CASE("outside, heights are those of the nearest rim") {
    const HeightRaster plane = raster_of([](Point p) { return p.x + 2.0 * p.y; });
    CHECK(plane.at({-500, 50}) == plane.at({-30, 50}));
    CHECK(plane.at({1e9, 1e9}) == plane.at({170, 90}));
    CHECK(plane.at({60, -1e9}) == plane.at({60, 10}));
    CHECK_THAT(plane.gradient({170, 90}).x, WithinAbs(1.0, 1e-6));
    CHECK_THAT(plane.gradient({-30, 10}).y, WithinAbs(2.0, 1e-6));
}
