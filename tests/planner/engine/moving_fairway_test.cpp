// The fairway with its edges moved, against GEOS, which grows and shrinks the mapped fairway.
#include "planner/engine/moving_fairway.hpp"

#include <algorithm>
#include <array>

#include "tests/catch.hpp"
#include "tests/planner/engine/invented_hole.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

constexpr double reach_m = Yards{15.0}.metres();

// Every lie has its own cost, the same everywhere.
class CostByLie final : public StrokesField {
  public:
    Worth worth(Point, Lie lie, int used) const override {
        return {used + 10.0 * static_cast<double>(index_of(lie)), 0.0};
    }
};

LiePartition with_edges_moved(const HoleParts& parts, double move_m) {
    std::vector<LieLayer> layers = parts.layers;
    for (LieLayer& layer : layers)
        if (layer.lie == Lie::fairway) layer.region = layer.region.grown(move_m);
    return LiePartition(invented_hole(parts).lies.extent(), layers, std::nullopt);
}

}  // namespace

TEST_CASE("places turn where the grown or shrunk fairway says so", "[moving_fairway]") {
    const HoleParts parts = eventful_par_5();
    const LiePartition today = invented_hole(parts).lies;
    const CostByLie field;
    const MovingFairway moving(today, {}, field, reach_m);
    CounterRandom random(7);
    for (const double move_yd : {-14.0, -6.0, -1.0, 1.0, 6.0, 14.0}) {
        const double move_m = yd(move_yd, 0).x;
        const LiePartition moved = with_edges_moved(parts, move_m);
        int turned = 0;
        int different = 0;
        constexpr int places = 20000;
        for (int i = 0; i < places; ++i) {
            const Point place = yd(-80 + 260 * random.uniform(), 90 + 380 * random.uniform());
            const Lie lie = today.lie_at(place);
            const MovingFairway::Turn turn = moving.turn_at(place, lie, 1);
            const bool past = turn.is_past(static_cast<float>(move_m));
            const Lie other = lie == Lie::fairway ? Lie::rough : Lie::fairway;
            if (past) {
                ++turned;
                REQUIRE(turn.cost == static_cast<float>(field.cost(place, other, 1)));
            }
            // Fairway drawn over trees wins on a map; here trees neither turn nor come out from under it.
            if (lie == Lie::trees) {
                REQUIRE_FALSE(past);
                continue;
            }
            Lie expected = moved.lie_at(place);
            if (expected == Lie::trees) expected = Lie::rough;
            if ((past ? other : lie) != expected) ++different;
        }
        // GEOS has 64 corners to a full turn: at 14 yd its rounded corners fall short by up to 1.6 cm.
        CHECK(different <= places / 5000);
        CHECK(turned > (std::abs(move_yd) < 2.0 ? 50 : 500));
    }
}

TEST_CASE("only fairway and rough turn, and only within reach", "[moving_fairway]") {
    const LiePartition lies = invented_hole(straight_hole(400, 34)).lies;
    const CostByLie field;
    const MovingFairway moving(lies, {}, field, reach_m);
    for (const Lie lie : all_lies)
        if (lie != Lie::fairway && lie != Lie::rough)
            CHECK(moving.turn_at(yd(16, 200), lie, 1).at_m == MovingFairway::never);
    CHECK(moving.turn_at(yd(0, 200), Lie::fairway, 1).at_m == MovingFairway::never);  // 17 yd from the edges
    CHECK(moving.turn_at(yd(33, 200), Lie::rough, 1).at_m == MovingFairway::never);
    CHECK(moving.turn_at(yd(500, 900), Lie::rough, 1).at_m == MovingFairway::never);
    CHECK_THAT(double{moving.turn_at(yd(7, 200), Lie::fairway, 1).at_m},
               Catch::Matchers::WithinAbs(-yd(10, 0).x, 1e-4));
    CHECK_THAT(double{moving.turn_at(yd(29, 200), Lie::rough, 1).at_m},
               Catch::Matchers::WithinAbs(yd(12, 0).x, 1e-4));
}

TEST_CASE("a hole without a fairway has nothing to move", "[moving_fairway]") {
    HoleParts parts = straight_hole(150, 30);
    std::erase_if(parts.layers, [](const LieLayer& layer) { return layer.lie == Lie::fairway; });
    const LiePartition lies = invented_hole(parts).lies;
    const CostByLie field;
    const MovingFairway moving(lies, {}, field, reach_m);
    CHECK(moving.turn_at(yd(0, 80), Lie::rough, 1).at_m == MovingFairway::never);
}

TEST_CASE("the edges of a neighbour's fairway stay where they are", "[moving_fairway]") {
    HoleParts parts = straight_hole(400, 34);
    const auto strip = [](double left_yd, double right_yd) {
        return Region::box({yd(left_yd, 100), yd(right_yd, 300)});
    };
    // One of its own 13 yd beside the fairway of another hole, and that one touched by a third.
    const Region others = Region::united(std::array{strip(30, 60), strip(60, 80)});
    parts.layers.push_back({Lie::fairway, others});
    const LiePartition lies = invented_hole(parts).lies;
    const CostByLie field;
    const MovingFairway moving(lies, others, field, reach_m);
    const auto turns_at = [&](double x_yd, Lie lie) {
        return double{moving.turn_at(yd(x_yd, 200), lie, 1).at_m};
    };
    // Rough between the two: only the hole's own edge, 17 yd from the line, comes here.
    CHECK_THAT(turns_at(22, Lie::rough), Catch::Matchers::WithinAbs(yd(5, 0).x, 1e-4));
    CHECK_THAT(turns_at(29, Lie::rough), Catch::Matchers::WithinAbs(yd(12, 0).x, 1e-4));
    CHECK_THAT(turns_at(12, Lie::fairway), Catch::Matchers::WithinAbs(-yd(5, 0).x, 1e-4));
    // The other's ground never turns, not even within reach of the hole's own edge; nor does what lies
    // beyond.
    for (const double x_yd : {30.5, 45.0, 60.0, 79.0})
        CHECK(turns_at(x_yd, Lie::fairway) == MovingFairway::never);
    CHECK(turns_at(82, Lie::rough) == MovingFairway::never);
}
