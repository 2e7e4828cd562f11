// What a solved field must be like, whatever the hole.
#include <algorithm>
#include <cmath>
#include <vector>

#include "tests/catch.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

// How far the second field lies below the first over the cells that both have a value for.
struct Falls {
    double mean;        // of all cells, rises counted negative
    double most_of_99;  // that 99 of 100 cells stay within
    double largest;
};
Falls falls(const SolvedHole& first, const SolvedHole& second) {
    REQUIRE(first.grid().cells() == second.grid().cells());
    std::vector<double> all;
    double sum = 0.0;
    for (int cell = 0; cell < first.grid().cells(); ++cell) {
        if (!first.is_open(cell) || !second.is_open(cell)) continue;
        all.push_back(first.strokes_at(cell) - second.strokes_at(cell));
        sum += all.back();
    }
    REQUIRE(all.size() > 5000);
    std::ranges::sort(all);
    return {sum / static_cast<double>(all.size()), all[all.size() * 99 / 100], all.back()};
}

// Shots are found by a search that looks at little of what there is: in single cells it finds a better one
// for the harder hole than for the easier. What is held here is what was measured, and no more than 1 cell in
// 100 is out.
void check_lowers_nothing(const SolvedHole& first, const SolvedHole& second) {
    const Falls fall = falls(first, second);
    CHECK(fall.mean <= 0.0);
    CHECK(fall.most_of_99 <= 0.01);
    WARN("largest fall of a cell: " << fall.largest << ", of 99 in 100: " << fall.most_of_99);
}

double mean_difference(const SolvedHole& a, const SolvedHole& b) {
    REQUIRE(a.grid().cells() == b.grid().cells());
    double sum = 0.0;
    int compared = 0;
    for (int cell = 0; cell < a.grid().cells(); ++cell) {
        // On an edge turned rasters may read different lies.
        if (!a.is_open(cell) || !b.is_open(cell) || a.grid().lie(cell) != b.grid().lie(cell)) continue;
        sum += std::abs(a.strokes_at(cell) - b.strokes_at(cell));
        ++compared;
    }
    REQUIRE(compared > 5000);
    return sum / compared;
}

HoleParts plain_par_4() {
    HoleParts parts = straight_hole(395, 36);
    parts.layers.push_back({Lie::bunker, Region::disc(yd(-22, 245), yd(8, 0).x)});
    return parts;
}

HoleParts plain_par_4_with(Lie lie, const Region& region) {
    HoleParts parts = plain_par_4();
    parts.layers.push_back({lie, region});
    return parts;
}

// Every open cell's choice valued again, as the solver does it: a block of cells at a time. The largest
// difference.
double largest_residual(const SolvedHole& solved) {
    const PlayGrid& grid = solved.grid();
    const auto evaluator = solved.field.evaluator(0);
    double largest = 0.0;
    for (int cell = 0; cell < grid.cells(); ++cell) {
        if (!solved.is_open(cell)) continue;
        const Action action = solved.field.action(cell, 0);
        const ShotOption& option = evaluator->search().option(cell, action);
        const int column = cell % grid.columns() % block_side;
        const int row = cell / grid.columns() % block_side;
        std::array<float, block_cells> replay{};
        replay.fill(evaluator->cost().replay(cell));
        std::array<ShotSums, block_cells> sums;
        evaluator->worth().over_block(option, option.value_set, cell - row * grid.columns() - column,
                                      action.turn, replay.data(), sums);
        const ShotSums& own = sums[static_cast<std::size_t>(row * block_side + column)];
        const float again = evaluator->cost().of(own, stance_on(grid.lie(cell)), cell);
        largest = std::max(largest, std::abs(double{again} - solved.strokes_at(cell)));
    }
    return largest;
}

}  // namespace

TEST_CASE("a solution is one: no place differs from what its own shot makes of it", "[field]") {
    for (const HoleParts& parts : {plain_par_4(), eventful_par_5(), narrow_par_4()}) {
        const SolvedHole solved(parts);
        CHECK(solved.field.record().residual <= solved.assumptions.field_residual);
        // What changes with what is told from the middle of a block; where canopies stop balls of single
        // cells of it some change is missed: measured 0.0026 on the par 5 between woods, below 0.001 on the
        // others.
        CHECK(largest_residual(solved) <= 3.0 * solved.assumptions.field_residual);
    }
}

TEST_CASE("a solution is one under Model Local Rule E-5", "[field]") {
    const SolvedHole solved(narrow_par_4(), uneven_golfer(), AimFor::strokes, true);
    CHECK(solved.field.record().residual <= solved.assumptions.field_residual);
    CHECK(largest_residual(solved) <= solved.assumptions.field_residual);
}

TEST_CASE("every place in play has a cost of at least one stroke, and a shot where there is a choice",
          "[field]") {
    const SolvedHole solved(eventful_par_5());
    int open = 0;
    for (int cell = 0; cell < solved.grid().cells(); ++cell) {
        const Lie lie = solved.grid().lie(cell);
        if (!solved.grid().is_inside(cell) || is_penalty_area(lie) || lie == Lie::out_of_bounds) continue;
        REQUIRE(solved.strokes_at(cell) >= 1.0);
        REQUIRE(solved.strokes_at(cell) < 12.0);
        const bool close =
            solved.game.hole_out().is_close(lie, distance(solved.grid().centre(cell), solved.grid().pin()));
        REQUIRE(solved.is_open(cell) != close);
        open += close ? 0 : 1;
    }
    CHECK(open == solved.field.record().cells);
}

TEST_CASE("fairway or rough turned into a penalty area lowers no value", "[field]") {
    const SolvedHole dry(plain_par_4());
    for (const Lie lie : {Lie::penalty_red, Lie::penalty_yellow}) {
        const SolvedHole beside(plain_par_4_with(lie, Region::box({yd(18, 180), yd(80, 290)})));
        const SolvedHole across(plain_par_4_with(lie, band(300, 325)));
        const SolvedHole in_the_fairway(plain_par_4_with(lie, Region::disc(yd(4, 235), yd(14, 0).x)));
        check_lowers_nothing(dry, beside);
        check_lowers_nothing(dry, across);
        check_lowers_nothing(dry, in_the_fairway);
    }
}

TEST_CASE("a better putter raises no value", "[field]") {
    double handicap = 30.0;
    Golfer golfer = uneven_golfer();
    golfer.putting = handicap;
    auto worse = std::make_unique<SolvedHole>(eventful_par_5(), golfer);
    for (handicap = 20.0; handicap > -6.0; handicap -= 10.0) {
        golfer.putting = handicap;
        auto better = std::make_unique<SolvedHole>(eventful_par_5(), golfer);
        check_lowers_nothing(*better, *worse);
        CHECK(better->strokes_at(better->grid().cell_at(yd(0, 0))) <
              worse->strokes_at(worse->grid().cell_at(yd(0, 0))));
        worse = std::move(better);
    }
}

// Here and there another shot is chosen among near equals when the last digit of a place changes: in the mean
// over the hole that is nothing.
TEST_CASE("a moved hole has the same field, a turned one nearly", "[field]") {
    const SolvedHole solved(eventful_par_5());
    CHECK(mean_difference(solved, SolvedHole(eventful_par_5())) == 0.0);
    CHECK(mean_difference(solved, SolvedHole(moved(eventful_par_5(), {123.4, -56.7}))) <= 0.0005);
    for (const double degrees : {90.0, 180.0, 37.0})
        CHECK(mean_difference(solved, SolvedHole(turned(eventful_par_5(), degrees * radians_per_degree))) <=
              0.003);
}

TEST_CASE("between cells the field is between their costs, and it is continuous", "[field]") {
    const SolvedHole solved(plain_par_4());
    const auto worth = [&](Point place) { return solved.field.worth(place, Lie::fairway, 3); };
    CHECK_THAT(worth(yd(0, 250)).distance_left_m, WithinAbs(yd(145, 0).x, 0.01));
    double last = worth(yd(-10, 250)).cost;
    for (double x = -9.9; x <= 10.0; x += 0.1) {
        const double cost = worth(yd(x, 250)).cost;
        CHECK(std::abs(cost - last) < 0.01);
        last = cost;
    }
    const int cell = solved.grid().cell_at(yd(3, 250));
    const double own = solved.field.worth(solved.grid().centre(cell), Lie::fairway, 3).cost;
    CHECK_THAT(own, WithinAbs(3.0 + solved.strokes_at(cell), 1e-5));
    CHECK_THROWS_AS(worth(yd(0, 250)).cost + solved.field.worth(yd(0, 250), Lie::penalty_red, 1).cost,
                    std::logic_error);
    CHECK_THROWS_AS(solved.field.worth(yd(0, 250), Lie::out_of_bounds, 1), std::logic_error);
}
