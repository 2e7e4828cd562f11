#include "geometry/landing_width.hpp"

#include <limits>

#include "tests/catch.hpp"
#include "tests/geometry/random_ground.hpp"

using namespace landwidth;
using namespace landwidth::testing;
using Catch::Matchers::WithinAbs;

namespace {

constexpr Box extent{{-300, -100}, {300, 500}};
const LineOfPlay straight({{0, 0}, {0, 400}});

LiePartition with(const std::vector<LieLayer>& layers, const std::optional<Region>& in_bounds = {}) {
    return LiePartition(extent, layers, in_bounds);
}

void check_fairway(const Transect& transect, double left_m, double right_m) {
    REQUIRE(transect.fairway.has_value());
    CHECK_THAT(transect.fairway->left_m, WithinAbs(left_m, 1e-9));
    CHECK_THAT(transect.fairway->right_m, WithinAbs(right_m, 1e-9));
    CHECK_THAT(transect.fairway->width_m(), WithinAbs(right_m - left_m, 1e-9));
}

void check_trouble(const std::optional<Trouble>& trouble, double offset_m, Lie lie) {
    REQUIRE(trouble.has_value());
    CHECK_THAT(trouble->offset_m, WithinAbs(offset_m, 1e-9));
    CHECK(trouble->lie == lie);
}

}  // namespace

TEST_CASE("a transect needs a place, a direction and a reach") {
    const LiePartition lies = with({});
    CHECK_THROWS_AS(transect_across(lies, {0, 0}, {0, 0}, 50), std::invalid_argument);
    CHECK_THROWS_AS(transect_across(lies, {not_a_number, 0}, {0, 1}, 50), std::invalid_argument);
    CHECK_THROWS_AS(transect_across(lies, {0, 0}, {not_a_number, 1}, 50), std::invalid_argument);
    CHECK_THROWS_AS(transect_across(lies, {0, 0}, {0, 1}, 0), std::invalid_argument);
    CHECK_THROWS_AS(transect_at(lies, straight, 100, -5), std::invalid_argument);
}

TEST_CASE("no fairway and no trouble") {
    const Transect transect = transect_at(with({}), straight, 200, 60);
    CHECK(transect.station_m == 200.0);
    CHECK(transect.centre == Point{0, 200});
    CHECK(transect.across == Point{1, 0});
    CHECK_FALSE(transect.fairway.has_value());
    CHECK_FALSE(transect.left.has_value());
    CHECK_FALSE(transect.right.has_value());
}

TEST_CASE("mown ground of other holes is no landing width") {
    const LiePartition lies =
        with({{Lie::fairway, rectangle(-12, 100, 20, 350)}, {Lie::fairway, rectangle(20, 100, 50, 350)}});
    const Region next = rectangle(20, 100, 50, 350);
    check_fairway(transect_at(lies, straight, 200, 60), -12, 50);
    check_fairway(transect_at(lies, straight, 200, 60, next), -12, 20);
    // Cut in two, the stretch with the line counts.
    check_fairway(transect_at(lies, straight, 200, 60, rectangle(-5, 190, -1, 210)), -1, 50);
    // Nothing is left of what is all another hole's.
    CHECK_FALSE(transect_at(lies, straight, 200, 60, rectangle(-20, 100, 60, 350)).fairway.has_value());
    // Only a sliver is left between two outlines of one edge.
    CHECK_FALSE(transect_at(lies, straight, 200, 60, rectangle(-11.995, 100, 60, 350)).fairway.has_value());
}

TEST_CASE("a straight hole worked by hand") {
    const LiePartition lies = with({{Lie::fairway, rectangle(-12, 100, 20, 350)},
                                    {Lie::bunker, rectangle(22, 190, 30, 210)},
                                    {Lie::trees, rectangle(-80, 0, -40, 400)},
                                    {Lie::out_of_bounds, rectangle(100, 0, 200, 400)}});
    const Transect at_bunker = transect_at(lies, straight, 200, 60);
    check_fairway(at_bunker, -12, 20);
    check_trouble(at_bunker.left, 40, Lie::trees);
    check_trouble(at_bunker.right, 22, Lie::bunker);

    const Transect past_bunker = transect_at(lies, straight, 220, 60);
    check_fairway(past_bunker, -12, 20);
    CHECK_FALSE(past_bunker.right.has_value());

    check_trouble(transect_at(lies, straight, 220, 120).right, 100, Lie::out_of_bounds);
    CHECK_FALSE(transect_at(lies, straight, 90, 60).fairway.has_value());
}

TEST_CASE("a bunker or water within the fairway ends the stretch") {
    const LiePartition lies = with({{Lie::fairway, rectangle(-30, 100, 30, 300)},
                                    {Lie::bunker, rectangle(5, 190, 10, 210)},
                                    {Lie::penalty_red, rectangle(-20, 190, -15, 210)}});
    const Transect transect = transect_at(lies, straight, 200, 60);
    check_fairway(transect, -15, 5);
    check_trouble(transect.left, 15, Lie::penalty_red);
    check_trouble(transect.right, 5, Lie::bunker);
}

TEST_CASE("a line within trouble is 0 from it on both sides") {
    const LiePartition lies =
        with({{Lie::fairway, rectangle(-30, 100, 30, 300)}, {Lie::bunker, rectangle(-4, 190, 6, 210)}});
    const Transect transect = transect_at(lies, straight, 200, 60);
    check_trouble(transect.left, 0, Lie::bunker);
    check_trouble(transect.right, 0, Lie::bunker);
    // The nearer of the two halves.
    check_fairway(transect, -30, -4);
}

TEST_CASE("beside the line the nearest fairway within reach counts") {
    const LiePartition lies =
        with({{Lie::fairway, rectangle(-50, 100, -25, 300)}, {Lie::fairway, rectangle(15, 100, 45, 300)}});
    check_fairway(transect_at(lies, straight, 200, 60), 15, 45);
    check_fairway(transect_at(lies, straight, 200, 20), 15, 20);
    CHECK_FALSE(transect_at(lies, straight, 200, 14).fairway.has_value());
}

TEST_CASE("two fairways equally near: the wider") {
    const LiePartition lies =
        with({{Lie::fairway, rectangle(-20, 100, -10, 300)}, {Lie::fairway, rectangle(10, 100, 40, 300)}});
    check_fairway(transect_at(lies, straight, 200, 60), 10, 40);
}

TEST_CASE("touching fairways are one") {
    const LiePartition lies =
        with({{Lie::fairway, rectangle(-20, 100, 3, 300)}, {Lie::fairway, rectangle(3, 100, 25, 300)}});
    check_fairway(transect_at(lies, straight, 200, 60), -20, 25);
}

TEST_CASE("green and teeing area are neither fairway nor trouble") {
    const LiePartition lies = with({{Lie::fairway, rectangle(-30, 100, 30, 300)},
                                    {Lie::green, rectangle(10, 190, 20, 210)},
                                    {Lie::teeing_area, rectangle(-12, 190, -8, 210)},
                                    {Lie::trees, rectangle(30, 0, 50, 400)}});
    const Transect transect = transect_at(lies, straight, 200, 60);
    check_fairway(transect, -8, 10);
    check_trouble(transect.right, 30, Lie::trees);
    CHECK_FALSE(transect.left.has_value());
}

TEST_CASE("beyond the extent is out of bounds only where the boundary is known") {
    const LineOfPlay near_edge({{280, 0}, {280, 400}});
    CHECK_FALSE(transect_at(with({}), near_edge, 200, 60).right.has_value());
    const LiePartition bounded = with({}, Region::box(extent));
    check_trouble(transect_at(bounded, near_edge, 200, 60).right, 20, Lie::out_of_bounds);
    const LiePartition inner = with({}, rectangle(-200, -100, 285, 500));
    check_trouble(transect_at(inner, near_edge, 200, 60).right, 5, Lie::out_of_bounds);
}

TEST_CASE("across a dogleg the transect halves the angle") {
    // A fairway 20 m to either side of both legs; the cut through the corner runs along its diagonal, from
    // the outer corner (-20, 220) to the inner corner (20, 180).
    const LineOfPlay dogleg({{0, 0}, {0, 200}, {200, 200}});
    const LiePartition lies =
        with({{Lie::fairway, rectangle(-20, 0, 20, 220)}, {Lie::fairway, rectangle(-20, 180, 200, 220)}});
    const Transect corner = transect_at(lies, dogleg, 200, 60);
    check_fairway(corner, -20 * std::sqrt(2.0), 20 * std::sqrt(2.0));
    CHECK_THAT(corner.across.x, WithinAbs(std::sqrt(0.5), 1e-12));
    CHECK_THAT(corner.across.y, WithinAbs(-std::sqrt(0.5), 1e-12));
    check_fairway(transect_at(lies, dogleg, 100, 60), -20, 20);
    check_fairway(transect_at(lies, dogleg, 300, 60), -20, 20);
    // At 195 the line has turned 30 of the 90 degrees: the left edge x = -20 is 20 / cos 30 away.
    const double left = -20 / std::cos(std::numbers::pi / 6);
    CHECK_THAT(transect_at(lies, dogleg, 195, 60).fairway->left_m, WithinAbs(left, 1e-9));
}

TEST_CASE("turning, moving and mirroring a hole keeps its widths and mirrors its sides") {
    Dice dice(17);
    int fairways = 0;
    int troubles = 0;
    for (int i = 0; i < 120; ++i) {
        const std::vector<LieLayer> layers = random_layers(dice, {{-150, 0}, {150, 400}}, 45);
        const std::vector<Point> vertices{{0, 0}, {dice.between(-40, 40), 210}, {dice.between(-90, 90), 390}};
        const Motion motion{i % 2 == 0, dice.between(-3, 3), dice.in(extent)};
        const Box wide{{-2000, -2000}, {2000, 2000}};
        const LiePartition here(wide, layers, {});
        const LiePartition there(wide, motion(layers), {});
        const LineOfPlay line(vertices);
        const LineOfPlay moved_line(motion(vertices));
        for (double station = 100; station < 380; station += 35) {
            const Transect a = transect_at(here, line, station, 90);
            const Transect b = transect_at(there, moved_line, station, 90);
            const std::optional<Trouble>& b_left = motion.mirrored ? b.right : b.left;
            const std::optional<Trouble>& b_right = motion.mirrored ? b.left : b.right;
            REQUIRE(a.fairway.has_value() == b.fairway.has_value());
            if (a.fairway) {
                ++fairways;
                const double left_m = motion.mirrored ? -b.fairway->right_m : b.fairway->left_m;
                REQUIRE_THAT(left_m, WithinAbs(a.fairway->left_m, 1e-7));
                REQUIRE_THAT(b.fairway->width_m(), WithinAbs(a.fairway->width_m(), 1e-7));
            }
            const auto same = [&](const std::optional<Trouble>& x, const std::optional<Trouble>& y) {
                REQUIRE(x.has_value() == y.has_value());
                if (!x) return;
                ++troubles;
                REQUIRE_THAT(y->offset_m, WithinAbs(x->offset_m, 1e-7));
                REQUIRE(y->lie == x->lie);
            };
            same(a.left, b_left);
            same(a.right, b_right);
        }
    }
    CHECK(fairways > 200);
    CHECK(troubles > 400);
}
