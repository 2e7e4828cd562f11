#include "tests/planner/engine/ball_walk.hpp"

#include <cmath>
#include <limits>

namespace landwidth::fixture {

namespace {

// Steps of a walk, as a share of the grid's.
constexpr double walk_step = 0.25;

bool is_trap(Lie lie) {
    return lie == Lie::bunker || is_penalty_area(lie);
}

}  // namespace

ShotOffset drawn_shot(const ShotPattern& pattern, CounterRandom& random) {
    const bool missed = pattern.mishit && random.uniform() < pattern.mishit->share;
    const double u = random.uniform();
    const double v = random.uniform();
    if (missed) return spread_point(pattern.mishit->spread, std::numeric_limits<double>::infinity(), u, v);
    return spread_point(pattern.usual, pattern.tail_dof, u, v);
}

double BallWalk::woods_within(Point from, Point way, double reach_m) const {
    const double step = walk_step * grid_.step_m();
    for (double on = 0.0; on <= reach_m; on += step)
        if (lie_at(from + on * way) == Lie::trees) return on;
    return -1.0;
}

double BallWalk::run_m(const ShotOption& option, Lie landed) const {
    switch (landed) {
        case Lie::teeing_area:
        case Lie::fairway:
            return option.pattern.run_m;
        case Lie::rough:
            return option.pattern.run_m * constants_.run_share_rough;
        case Lie::green:
            return option.pattern.run_m * constants_.run_share_green;
        case Lie::trees:
            return option.pattern.run_m * constants_.run_share_trees;
        default:
            return 0.0;
    }
}

BallWalk::Rest BallWalk::rest(const ShotOption& option, Point from, Point aim, CounterRandom& random) const {
    const ShotOffset shot = drawn_shot(option.pattern, random);
    const Point landing = from + shot.carry_m * aim + shot.side_m * to_the_right(aim);
    const Point way = unit(landing - from);
    // As low as the usual ball of this shot.
    const double reach = constants_.low_flight_share * option.pattern.usual.centre.carry_m;
    if (lie_at(from) != Lie::trees) {
        const double ahead = woods_within(from, way, reach);
        if (ahead >= 0.0 && random.uniform() < constants_.trees_stop_share) return {from + ahead * way, way};
    }
    const Lie landed = lie_at(landing);
    if (landed != Lie::trees) {
        const double behind = woods_within(landing, -1.0 * way, reach);
        if (behind >= 0.0 && random.uniform() < constants_.trees_stop_share)
            return {landing - behind * way, way};
    }
    const double run = run_m(option, landed);
    const double step = walk_step * grid_.step_m();
    for (double on = 0.0; on < run; on += step)
        if (is_trap(lie_at(landing + on * way))) return {landing + on * way, way};
    return {landing + run * way, way};
}

int BallWalk::drop_cell(int crossing, Lie colour, int used) {
    // Costs after the drop differ by the strokes used, the cheapest place for strokes alone does not.
    const bool keep = field_.aim().is_strokes();
    if (const auto known = drops_.find({crossing, colour}); keep && known != drops_.end())
        return known->second;
    const Point from = grid_.centre(crossing);
    const Point pin = grid_.pin();
    int best = -1;
    const auto consider = [&](int cell) {
        const Lie lie = grid_.lie(cell);
        if (!grid_.is_inside(cell) || is_penalty_area(lie) || lie == Lie::out_of_bounds) return;
        if (best < 0 || cost(cell, used + 2) < cost(best, used + 2)) best = cell;
    };
    const Point away = unit(from - pin);
    for (double back = 0.0; back <= constants_.back_on_line_reach_m; back += walk_step * grid_.step_m())
        consider(grid_.cell_at(from + back * away));
    if (colour == Lie::penalty_red)
        for (int cell = 0; cell < grid_.cells(); ++cell)
            if (distance(grid_.centre(cell), from) <= 2.0 * constants_.club_length_m &&
                distance(grid_.centre(cell), pin) >= distance(from, pin) - 0.1)
                consider(cell);
    if (keep) drops_[{crossing, colour}] = best;
    return best;
}

BallWalk::Next BallWalk::play(int cell, int used, CounterRandom& random) {
    const Action action = field_.action(cell, used);
    const Stance stance = stance_on(grid_.lie(cell));
    const ShotOption& option = solved_.game.menu().options(stance)[static_cast<std::size_t>(action.option)];
    if (stance == Stance::trees && random.uniform() < constants_.recovery_stuck_share) return {cell, 1};
    const Point aim = along_bearing(grid_.bearing_of(action.turn));
    const Rest ball = rest(option, grid_.centre(cell), aim, random);
    const Next again{cell, 2};
    const int at = grid_.standing(grid_.cell_at(ball.place));
    const Lie lie = grid_.lie(at);
    if (lie == Lie::out_of_bounds) return again;
    if (lie == Lie::trees && random.uniform() < constants_.trees_lost_share) return again;
    if (!is_penalty_area(lie)) return {at, 1};
    // Back along its way to where it came in.
    Point place = at == grid_.cell_at(ball.place) ? ball.place : grid_.centre(at);
    while (lie_at(place) == lie && distance(place, grid_.centre(cell)) > grid_.step_m())
        place = place - walk_step * grid_.step_m() * ball.way;
    const int drop = drop_cell(grid_.cell_at(place), lie, used);
    const double penalty = field_.aim().is_strokes() ? 1.0 : 0.0;
    const double replayed = cost(cell, used + 2) + penalty;
    if (drop < 0 || cost(drop, used + 2) + penalty > replayed) return again;
    return {drop, 2};
}

}  // namespace landwidth::fixture
