// Drops on the grid by rule number: Rules of Golf 2023, 17.1d, and Model Local Rule E-5.
#include <algorithm>

#include "planner/engine/field/drop_places.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

constexpr double step_m = 2.0 * metres_per_yard;
// Two cells across two club-lengths would say little: a long club, as the bag of a giant.
constexpr double club_m = 5.1 * metres_per_yard;

struct Ground {
    Hole hole;
    LieRaster lies;
    PlayGrid grid;
    DropPlaces drops;

    explicit Ground(const HoleParts& parts, bool local_rule_e5 = false)
        : hole(invented_hole(parts)),
          lies(hole.lies, yd(0.25, 0).x),
          grid(hole, lies, day_over(hole, {}), step_m, yd(85, 0).x, 25.0, 16),
          drops(grid, {club_m, yd(200, 0).x, local_rule_e5}) {}

    bool may_drop(int cell) const {
        const Lie lie = grid.lie(cell);
        return grid.is_inside(cell) && !is_penalty_area(lie) && lie != Lie::out_of_bounds;
    }
    // Where a ball at rest in a cell came into its lie, by walking back.
    int crossing(int cell, int direction) const {
        int at = cell;
        for (int k = 1; grid.lie(at) == grid.lie(cell); ++k)
            at = grid.moved(cell, (direction + travel_directions / 2) % travel_directions, k);
        return at;
    }
    double to_pin(int cell) const { return distance(grid.centre(cell), grid.pin()); }
    // Of a cell's centre from the straight line away from the hole through a place.
    double off_line(int cell, int through) const {
        const Point away = unit(grid.centre(through) - grid.pin());
        return std::abs(cross(away, grid.centre(cell) - grid.pin()));
    }
};

// A lake of 60 x 60 yd beside a straight fairway.
HoleParts lake(Lie colour) {
    HoleParts parts = straight_hole(400, 40);
    parts.layers.push_back({colour, Region::box({yd(12, 200), yd(60, 260)})});
    return parts;
}

std::vector<int> cells_of(const Ground& ground, Lie lie) {
    std::vector<int> cells;
    for (int cell = 0; cell < ground.grid.cells(); ++cell)
        if (ground.grid.is_inside(cell) && ground.grid.lie(cell) == lie) cells.push_back(cell);
    return cells;
}

bool holds(const std::vector<int>& cells, int cell) {
    return std::ranges::find(cells, cell) != cells.end();
}

constexpr int towards_pin = 0, rightwards = travel_directions / 4;

}  // namespace

TEST_CASE("only balls out of play are dropped elsewhere", "[drops]") {
    const Ground ground(eventful_par_5());
    const Ground with_e5(eventful_par_5(), true);
    for (int cell = 0; cell < ground.grid.cells(); ++cell) {
        const Lie lie = ground.grid.lie(cell);
        CHECK(ground.drops.takes_relief(cell) == is_penalty_area(lie));
        CHECK(with_e5.drops.takes_relief(cell) == (is_penalty_area(lie) || lie == Lie::out_of_bounds));
    }
}

TEST_CASE("17.1d(2): yellow drops lie on the line from the hole, further from it than the crossing",
          "[drops]") {
    Ground ground(lake(Lie::penalty_yellow));
    for (const int cell : cells_of(ground, Lie::penalty_yellow))
        for (const int direction : {towards_pin, 2, rightwards}) {
            const int crossing = ground.crossing(cell, direction);
            const DropPlaces::Drop& drop = ground.drops.drop(ground.drops.drop_of(cell, direction));
            REQUIRE(drop.penalty == 1);
            REQUIRE_FALSE(drop.cells.empty());
            for (const int place : drop.cells) {
                REQUIRE(ground.may_drop(place));
                // In a cell that the line passes through.
                REQUIRE(ground.off_line(place, crossing) <= step_m * std::sqrt(0.5));
                REQUIRE(ground.to_pin(place) >= ground.to_pin(crossing) - step_m);
                REQUIRE(ground.to_pin(place) <= ground.to_pin(crossing) + yd(200, 0).x + step_m);
            }
        }
}

TEST_CASE("17.1d(3): red drops add every place within two club-lengths no nearer the hole", "[drops]") {
    Ground ground(lake(Lie::penalty_red));
    for (const int cell : cells_of(ground, Lie::penalty_red)) {
        const int crossing = ground.crossing(cell, rightwards);
        const DropPlaces::Drop& drop = ground.drops.drop(ground.drops.drop_of(cell, rightwards));
        REQUIRE(drop.penalty == 1);
        const auto lateral = [&](int place) {
            return distance(ground.grid.centre(place), ground.grid.centre(crossing)) <= 2.0 * club_m &&
                   ground.to_pin(place) >= ground.to_pin(crossing) - 0.1;
        };
        std::size_t found = 0;
        for (int place = 0; place < ground.grid.cells(); ++place) {
            if (!ground.may_drop(place) || !lateral(place)) continue;
            REQUIRE(holds(drop.cells, place));
            ++found;
        }
        REQUIRE(found > 10);
        for (const int place : drop.cells)
            REQUIRE((lateral(place) || ground.off_line(place, crossing) <= step_m * std::sqrt(0.5)));
    }
}

TEST_CASE("a drop belongs to the way by which the ball came in", "[drops]") {
    Ground ground(lake(Lie::penalty_red));
    const int cell = ground.grid.cell_at(yd(30, 230));
    CHECK(ground.drops.drop_of(cell, towards_pin) != ground.drops.drop_of(cell, rightwards));
    CHECK(ground.drops.drop_of(cell, rightwards) == ground.drops.drop_of(cell, rightwards));
}

TEST_CASE("no dry ground behind yellow water: no drop at all", "[drops]") {
    HoleParts parts = straight_hole(400, 40);
    parts.layers.erase(parts.layers.begin());  // a teeing area in the water would be dry ground
    parts.layers.push_back({Lie::penalty_yellow, Region::box({yd(-1000, -1000), yd(1000, 380)})});
    Ground ground(parts);
    CHECK(
        ground.drops.drop(ground.drops.drop_of(ground.grid.cell_at(yd(0, 200)), towards_pin)).cells.empty());
}

TEST_CASE("Model Local Rule E-5: two strokes, fairway, no nearer the hole", "[drops]") {
    HoleParts parts = straight_hole(400, 40);
    parts.layers.push_back({Lie::out_of_bounds, beyond(50)});
    Ground ground(parts, true);
    for (const int cell : cells_of(ground, Lie::out_of_bounds)) {
        const double along = to_yards(dot(ground.grid.centre(cell), {0.0, 1.0}));
        if (along < 90.0 || along > 340.0) continue;
        const int crossing = ground.crossing(cell, rightwards);
        const DropPlaces::Drop& drop = ground.drops.drop(ground.drops.drop_of(cell, rightwards));
        REQUIRE(drop.penalty == 2);
        REQUIRE(drop.cells.size() == 1);
        REQUIRE(ground.grid.lie(drop.cells.front()) == Lie::fairway);
        REQUIRE(std::abs(ground.to_pin(drop.cells.front()) - ground.to_pin(crossing)) <= step_m);
        // The nearer edge of the fairway, and not the far one.
        REQUIRE(to_yards(ground.grid.centre(drop.cells.front()).x) > 16.0);
    }
    const DropPlaces::Drop lost =
        ground.drops.drop(ground.drops.drop_for_lost(ground.grid.cell_at(yd(-40, 200))));
    CHECK(lost.penalty == 2);
    REQUIRE(lost.cells.size() == 1);
    CHECK(to_yards(ground.grid.centre(lost.cells.front()).x) < -16.0);
}
