// What a place costs, as bands on the map.
#include "planner/reports/cost_shading.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <regex>
#include <set>

#include "planner/reports/cost_contours.hpp"
#include "planner/reports/hole_map.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

// GDAL keeps cells off the level by a hundred-thousandth of a cell or so.
constexpr double exact_m = 1e-4;

constexpr float blank = std::numeric_limits<float>::quiet_NaN();

CostMap lattice(int columns, int rows, std::vector<float> strokes) {
    return {.corner = {100.0, 200.0},
            .along_row = {2.0, 0.0},
            .along_rows = {0.0, 3.0},
            .columns = columns,
            .rows = rows,
            .strokes = std::move(strokes)};
}

double doubled_area(const Ring& ring) {
    double sum = 0.0;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i)
        sum += cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
    return sum;
}

// The even-odd rule; `p` on no edge.
bool inside(const std::vector<Ring>& rings, Point p) {
    bool odd = false;
    for (const Ring& ring : rings) {
        for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
            const Point a = ring[i];
            const Point b = ring[i + 1];
            if ((a.y > p.y) == (b.y > p.y)) continue;
            if (a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x) > p.x) odd = !odd;
        }
    }
    return odd;
}

// 0 black, 1 white: relative luminance of sRGB (IEC 61966-2-1).
double luminance(const std::string& colour) {
    const auto channel = [&](std::size_t at) {
        const double value = std::stoi(colour.substr(at, 2), nullptr, 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

}  // namespace

TEST_CASE("nothing costs as much: no edges", "[shading]") {
    CHECK(edges_of_cost(lattice(3, 2, {blank, blank, blank, blank, blank, blank}), 0.0, 0.1).empty());
    CHECK(edges_of_cost(lattice(3, 2, {2, 2, 2, 2, 2, 2}), 2.5, 0.1).empty());
}

TEST_CASE("ground that all costs as much has its own outline", "[shading]") {
    const auto rings = edges_of_cost(lattice(4, 3, std::vector<float>(12, 3.0F)), 2.5, 0.01);
    REQUIRE(rings.size() == 1);
    CHECK(rings[0].front() == rings[0].back());
    Point low = rings[0][0];
    Point high = rings[0][0];
    for (const Point p : rings[0]) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    // Half way between the outer cells and where there are none: the lattice's own edge.
    CHECK_THAT(low.x, WithinAbs(100.0, exact_m));
    CHECK_THAT(high.x, WithinAbs(108.0, exact_m));
    CHECK_THAT(low.y, WithinAbs(200.0, exact_m));
    CHECK_THAT(high.y, WithinAbs(209.0, exact_m));
    // 8 m by 9 m less four corners of half a cell's quarter: 4 * (1 * 1.5 / 2) = 3.
    CHECK_THAT(std::abs(doubled_area(rings[0])) / 2.0, WithinAbs(72.0 - 3.0, 20.0 * exact_m));
}

TEST_CASE("a jump is drawn half way, a slope where it crosses", "[shading]") {
    // A row of five: 2, 2, 4 jumps between centres 103 and 105.
    const auto jump = edges_of_cost(lattice(5, 1, {2, 2, 4, 4, 4}), 2.5, 0.01);
    REQUIRE(jump.size() == 1);
    double left = 1e9;
    for (const Point p : jump[0])
        left = std::min(left, p.x);
    CHECK_THAT(left, WithinAbs(104.0, exact_m));
    // From 2.46 to 2.54 the level of 2.48 is crossed a quarter of the way: 103 + 2 / 4.
    const auto slope = edges_of_cost(lattice(4, 1, {2.38F, 2.46F, 2.54F, 2.62F}), 2.48, 0.01);
    REQUIRE(slope.size() == 1);
    left = 1e9;
    for (const Point p : slope[0])
        left = std::min(left, p.x);
    CHECK_THAT(left, WithinAbs(103.5, exact_m));
}

TEST_CASE("every cell lies on its side of every edge, blank ones outside", "[shading]") {
    std::mt19937 random(11);
    for (int round = 0; round < 40; ++round) {
        CostMap map = lattice(17, 23, {});
        for (int i = 0; i < 17 * 23; ++i) {
            const auto roll = random() % 9;
            map.strokes.push_back(roll == 0 ? blank : 2.0F + 0.25F * static_cast<float>(roll));
        }
        const auto rings = edges_of_cost(map, 3.1, 0.0);
        std::size_t wrong = 0;
        for (int row = 0; row < map.rows; ++row) {
            for (int column = 0; column < map.columns; ++column) {
                const Point centre =
                    map.corner + (column + 0.5) * map.along_row + (row + 0.5001) * map.along_rows;
                const float cost = map.strokes[static_cast<std::size_t>(row * map.columns + column)];
                if (inside(rings, centre) != (cost >= 3.1F)) ++wrong;
            }
        }
        CHECK(wrong == 0);
    }
}

TEST_CASE("bands are as fine as ten allow", "[shading]") {
    CHECK(cost_bands({}).count == 0);
    CHECK(cost_bands({blank, blank}).count == 0);
    const CostBands one = cost_bands({2.3F, blank});
    CHECK(one.count == 1);
    CHECK(one.lowest == 2.25);
    const CostBands fine = cost_bands({1.9F, 2.0F, 3.0F, 4.1F});
    CHECK(fine.step == 0.25);
    CHECK(fine.lowest == 1.75);
    CHECK(fine.count == 10);  // 1.75 to 4.25
    CHECK(fine.from(9) == 4.0);
    const CostBands coarse = cost_bands({1.9F, 2.0F, 3.0F, 4.3F});
    CHECK(coarse.step == 0.5);
    CHECK(coarse.lowest == 1.5);
    CHECK(coarse.count == 6);  // 1.5 to 4.5
    // Few dear cells do not stretch the bands.
    std::vector<float> costs(960, 3.1F);
    costs.insert(costs.end(), 40, 25.0F);
    CHECK(cost_bands(costs).count == 1);
}

TEST_CASE("every band is darker than the one before, also in grey", "[shading]") {
    for (int count = 1; count <= 10; ++count) {
        for (int band = 1; band < count; ++band) {
            INFO(band << " of " << count);
            // L* of CIE 1976: a difference of 2 and a half can just be told apart side by side (common
            // practice, no source).
            const auto lightness = [](double y) { return 116.0 * std::cbrt(y) - 16.0; };
            CHECK(lightness(luminance(band_colour(band - 1, count))) -
                      lightness(luminance(band_colour(band, count))) >
                  5.0);
        }
    }
    CHECK(band_colour(0, 1) == band_colour(0, 10));
}

TEST_CASE("the map carries the bands below its ground, one path each, and a key", "[shading]") {
    const fixture::PlanFixture made = fixture::own_field();
    const HoleMap map = hole_map(made.view(), 0, "h");
    const auto shade = map.svg.find("<g class=\"shade\">");
    const auto ground = map.svg.find("<g class=\"ground\">");
    REQUIRE(shade != std::string::npos);
    REQUIRE(ground != std::string::npos);
    CHECK(shade < ground);
    const std::string layer = map.svg.substr(shade, ground - shade);
    std::set<std::string> fills;
    static const std::regex path("<path fill=\"(#[0-9a-f]{6})\" d=\"M[^\"]+z\"/>");
    for (auto it = std::sregex_iterator(layer.begin(), layer.end(), path); it != std::sregex_iterator(); ++it)
        fills.insert((*it)[1]);
    // Costs run from 1.6 at the hole to about 5.7: half strokes.
    std::size_t entries = 0;
    for (auto at = map.cost_key.find("<li>"); at != std::string::npos; at = map.cost_key.find("<li>", at + 1))
        ++entries;
    CHECK(fills.size() == entries);
    CHECK(entries >= 6);
    CHECK(entries <= 10);
    for (const char* words : {"below 2.00", "2.00 to 2.50", "4.00 to 4.50", "or more"}) {
        INFO(words);
        CHECK(map.cost_key.find(words) != std::string::npos);
    }
    CHECK(map.svg.size() < 60'000);
}

TEST_CASE("without a cost map the map is what it was", "[shading]") {
    const HoleMap map = hole_map(fixture::two_holes().view(), 0, "h");
    CHECK(map.cost_key.empty());
    CHECK(map.svg.find("class=\"shade\"") == std::string::npos);
    fixture::PlanFixture nowhere = fixture::own_field();
    std::fill(nowhere.plan.holes[0].cost_map->strokes.begin(), nowhere.plan.holes[0].cost_map->strokes.end(),
              blank);
    CHECK(hole_map(nowhere.view(), 0, "h").cost_key.empty());
}
