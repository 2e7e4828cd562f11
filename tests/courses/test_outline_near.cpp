// Long outlines near a hole cover the ground they cover whole.
#include <cmath>
#include <numbers>
#include <random>

#include "courses/assembly/feature_shapes.hpp"
#include "courses/assembly/outline_near.hpp"
#include "geometry/units.hpp"
#include "tests/catch.hpp"

using namespace landwidth;

namespace {

// A ragged ring of `points` about a middle, as far as `reach_deg` of latitude.
LonLatPath ragged_ring(LonLat middle, double reach_deg, int points, std::mt19937& random) {
    std::uniform_real_distribution<double> ragged(0.4, 1.0);
    const double stretch = 1.0 / std::cos(middle.lat_deg * radians_per_degree);
    LonLatPath ring;
    for (int i = 0; i < points; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / points;
        const double far = reach_deg * ragged(random);
        const double lon = middle.lon_deg + stretch * far * std::cos(angle);
        ring.push_back({std::remainder(lon, 360.0), middle.lat_deg + far * std::sin(angle)});
    }
    ring.push_back(ring.front());
    return ring;
}

Region drawn(const PlaneFrame& frame, const LonLatPolygon& polygon) {
    RepairLog repairs;
    const PlaneDrawing drawing(frame, repairs);
    MapFeature wood{"way/1", "", "", Tags{{"natural", "wood"}}, std::vector<LonLatPolygon>{polygon}};
    return drawing.area(wood, polygon);
}

}  // namespace

TEST_CASE("a long outline near a hole covers the same ground with fewer points") {
    std::mt19937 random(12);
    std::uniform_real_distribution<double> latitude(-65.0, 65.0), share(-1.0, 1.0);
    for (int trial = 0; trial < 60; ++trial) {
        // Every third lies across the 180th meridian; some reach over half a county.
        const LonLat middle{trial % 3 == 0 ? 179.999 : 20.0 * share(random), latitude(random)};
        const double reach = trial % 4 == 0 ? 0.3 : 0.01;
        LonLatPolygon wood{ragged_ring(middle, reach, 3000, random), {}};
        wood.inners.push_back(ragged_ring(middle, 0.3 * reach, 1500, random));
        const LonLat tee{std::remainder(middle.lon_deg + 0.7 * reach * share(random), 360.0),
                         middle.lat_deg + 0.7 * reach * share(random)};
        const PlaneFrame frame(tee);
        const Box extent{{-180.0, -180.0}, {180.0, 500.0}};
        DegreeBox here = DegreeBox::around(tee);
        for (const Point corner : {extent.min, extent.max})
            here.add(frame.to_lonlat(corner));

        const std::optional<LonLatPolygon> near = outline_near(wood, here.grown(100.0));
        REQUIRE(near);
        CHECK(near->outer.size() < wood.outer.size());
        const Region box = Region::box(extent);
        const Region whole = drawn(frame, wood).common_with(box);
        const Region part = drawn(frame, *near).common_with(box);
        // What rounding leaves where outlines meet the box.
        CHECK(whole.without(part).area() < 1e-3);
        CHECK(part.without(whole).area() < 1e-3);
    }
}

TEST_CASE("a short outline stays as it is, and areas are told within a hundredth") {
    std::mt19937 random(3);
    const LonLat middle{-4.0, 56.0};
    const LonLatPolygon wood{ragged_ring(middle, 0.05, 900, random), {ragged_ring(middle, 0.01, 50, random)}};
    CHECK_FALSE(outline_near(wood, DegreeBox::around(middle).grown(300.0)));
    const double area = drawn(PlaneFrame(middle), wood).area();
    CHECK(std::abs(rough_area(wood) / area - 1.0) < 0.01);
}
