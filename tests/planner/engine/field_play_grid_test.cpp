// The grid against plain walks over its cells.
#include <algorithm>
#include <numbers>

#include "planner/engine/field/play_grid.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double run_m = 25.0, reach_m = 78.0, step_m = 2.0 * metres_per_yard;
constexpr unsigned stop_cells = 18;

struct Ground {
    Hole hole;
    LieRaster lies;
    PlayGrid grid;

    explicit Ground(const HoleParts& parts)
        : hole(invented_hole(parts)),
          lies(hole.lies, yd(0.25, 0).x),
          grid(hole, lies, day_over(hole, {}), step_m, reach_m, run_m, stop_cells) {}
};

bool is_trap(Lie lie) {
    return lie == Lie::bunker || is_penalty_area(lie);
}

int opposite(int direction) {
    return (direction + travel_directions / 2) % travel_directions;
}

// Steps to the first cell of a kind on the way from a cell, 63 when there is none on it.
int walked(const PlayGrid& grid, int cell, int direction, int first, double reach, const auto& is_it) {
    for (int k = first; k < std::min(PlayGrid::far_away, static_cast<int>(std::ceil(reach / step_m)) + 1);
         ++k)
        if (is_it(grid.moved(cell, direction, k))) return k;
    return PlayGrid::far_away;
}

}  // namespace

TEST_CASE("cells, places and coordinates go into one another", "[grid]") {
    const Ground ground(eventful_par_5());
    const PlayGrid& grid = ground.grid;
    CHECK(grid.columns() % block_side == 0);
    CHECK(grid.rows() % block_side == 0);
    CHECK(distance(grid.centre(grid.cell_at(grid.pin())), grid.pin()) < 1e-6);
    for (int cell = 0; cell < grid.cells(); cell += 7) {
        const Point at = grid.coordinates(grid.centre(cell));
        CHECK_THAT(at.x, WithinAbs(cell % grid.columns() + 0.5, 1e-9));
        CHECK_THAT(at.y, WithinAbs(cell / grid.columns() + 0.5, 1e-9));
        CHECK(grid.cell_at(grid.centre(cell)) == cell);
        CHECK(grid.lie(cell) == ground.lies.at(grid.centre(cell)));
        Point mean{};
        for (const Point& spot : grid.spots(cell)) {
            CHECK(grid.cell_at(spot) == cell);
            mean = mean + (1.0 / 16.0) * spot;
        }
        CHECK(distance(mean, grid.centre(cell)) < 1e-9);
    }
}

TEST_CASE("turns count clockwise from the play", "[grid]") {
    const Ground ground(turned(eventful_par_5(), 1.234));
    const PlayGrid& grid = ground.grid;
    const double play = plane_bearing(ground.hole.line.pin() - ground.hole.line.tee());
    CHECK(grid.turn_of(play) == 0);
    CHECK(grid.turn_of(play + std::numbers::pi / 2.0) == turn_steps / 4);
    CHECK(grid.turn_of(plane_bearing(grid.step_right())) == turn_steps / 4);
    for (int turn = 0; turn < turn_steps; ++turn)
        CHECK(grid.turn_of(grid.bearing_of(turn)) == turn);
    CHECK(direction_of(0) == 0);
    CHECK(direction_of(-1) == 0);
    CHECK(direction_of(turns_per_direction) == 1);
    CHECK(direction_of(turns_per_direction / 2) == 1);
    CHECK(direction_of(-turns_per_direction) == travel_directions - 1);
    CHECK(direction_of(turn_steps - 1) == 0);
}

TEST_CASE("moves of a direction and back end where they began", "[grid]") {
    const Ground ground(narrow_par_4());
    const PlayGrid& grid = ground.grid;
    const int middle = grid.cell_at(yd(0, 200));
    for (int direction = 0; direction < travel_directions; ++direction)
        for (int steps = 0; steps < 25; ++steps) {
            const int there = grid.moved(middle, direction, steps);
            CHECK(grid.moved(there, opposite(direction), steps) == middle);
            CHECK(there == middle + grid.stride(direction, steps));
            const double off = distance(
                grid.centre(there),
                grid.centre(middle) +
                    steps * step_m * along_bearing(grid.bearing_of(direction * turns_per_direction)));
            CHECK(off <= step_m * std::sqrt(0.5) + 1e-6);
        }
}

TEST_CASE("how far a ball may run before sand or water takes it is what a walk finds", "[grid]") {
    for (const HoleParts& parts : {eventful_par_5(), narrow_par_4()}) {
        const Ground ground(parts);
        int met = 0;
        for (int cell = 3; cell < ground.grid.cells(); cell += 5) {
            if (!ground.grid.is_inside(cell)) continue;
            for (int direction = 0; direction < travel_directions; ++direction) {
                const PlayGrid::Meeting meeting(ground.grid.meetings(direction)[cell]);
                const int expected = walked(ground.grid, cell, direction, 0, run_m,
                                            [&](int at) { return is_trap(ground.grid.lie(at)); });
                REQUIRE(meeting.trap_cells() == expected);
                met += expected < PlayGrid::far_away ? 1 : 0;
                REQUIRE(meeting.run_kind() == static_cast<std::size_t>(run_kind(ground.grid.lie(cell))));
            }
        }
        CHECK(met > 1000);
    }
}

TEST_CASE("woods behind a landing place, and ahead of a ball, are what a walk finds", "[grid]") {
    for (const HoleParts& parts : {eventful_par_5(), narrow_par_4()}) {
        const Ground ground(parts);
        const PlayGrid& grid = ground.grid;
        const auto is_wood = [&](int at) { return grid.is_tall(at); };
        const double low_m = stop_cells * step_m;
        int met = 0;
        for (int cell = 1; cell < grid.cells(); cell += 5) {
            if (!grid.is_inside(cell) || grid.is_tall(cell)) continue;
            for (int direction = 0; direction < travel_directions; ++direction) {
                const PlayGrid::Meeting meeting(grid.meetings(direction)[cell]);
                const int behind = walked(grid, cell, opposite(direction), 1, low_m, is_wood);
                REQUIRE(static_cast<int>(meeting.woods_cells()) == behind);
                const int ahead = walked(grid, cell, direction, 1, low_m, is_wood);
                REQUIRE(static_cast<int>(grid.woods_ahead(direction, cell)) == ahead);
                if (behind == PlayGrid::far_away) continue;
                ++met;
                REQUIRE(grid.woods_behind(direction, cell) == grid.moved(cell, opposite(direction), behind));
            }
        }
        CHECK(met > 1000);
    }
}

TEST_CASE("four meetings read at once say what each of them says", "[grid]") {
    const Ground ground(eventful_par_5());
    const std::uint16_t* meetings = ground.grid.meetings(5);
    for (int cell = 0; cell + 4 <= ground.grid.cells(); cell += 3) {
        std::uint64_t four = 0;
        bool same = true;
        int nearest_trap = PlayGrid::far_away;
        unsigned nearest_woods = PlayGrid::far_away;
        for (int i = 0; i < 4; ++i) {
            const PlayGrid::Meeting one(meetings[cell + i]);
            four |= std::uint64_t{meetings[cell + i]} << (16 * i);
            same = same && one.run_kind() == PlayGrid::Meeting(meetings[cell]).run_kind();
            nearest_trap = std::min(nearest_trap, one.trap_cells());
            nearest_woods = std::min(nearest_woods, one.woods_cells());
        }
        REQUIRE(PlayGrid::same_kind(four) == same);
        for (unsigned cells = 0; cells <= PlayGrid::far_away; ++cells) {
            REQUIRE(PlayGrid::traps_at_least(four, cells) == (nearest_trap >= static_cast<int>(cells)));
            REQUIRE(PlayGrid::woods_at_least(four, cells) == (nearest_woods >= cells));
        }
    }
}

TEST_CASE("a cell beyond the reach stands for one inside, of its own lie where there is one near", "[grid]") {
    const Ground ground(narrow_par_4());
    const PlayGrid& grid = ground.grid;
    CHECK_FALSE(grid.outside().empty());
    std::size_t inside = 0;
    for (int cell = 0; cell < grid.cells(); ++cell) {
        if (!grid.is_inside(cell)) continue;
        ++inside;
        CHECK(grid.standing(cell) == cell);
        CHECK(std::abs(ground.hole.line.place_of(grid.centre(cell)).offset_m) <= reach_m);
    }
    CHECK(inside + grid.outside().size() == static_cast<std::size_t>(grid.cells()));
    std::size_t same = 0;
    for (const PlayGrid::Outside& out : grid.outside()) {
        REQUIRE(grid.standing(out.cell) == out.stands_for);
        REQUIRE(grid.is_inside(out.stands_for));
        same += grid.lie(out.cell) == grid.lie(out.stands_for) ? 1 : 0;
    }
    // Out of bounds left, rough right: only at the ends may another lie be nearer.
    CHECK(static_cast<double>(same) / static_cast<double>(grid.outside().size()) > 0.9);
}
