#include "tests/planner/engine/ball_walk.hpp"

#include <algorithm>
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

std::optional<Point> BallWalk::hidden_by(Point place, Point way, unsigned cells) const {
    if (cells == 0) return std::nullopt;
    const double step = walk_step * grid_.step_m();
    // A canopy is taken to stand in the middle of its cell, half a cell behind the edge a walk meets.
    const double usual_reach = (cells - 0.5) * grid_.step_m();
    // Tops in usual canopies, with what the ground adds.
    const double highest = day_.heights != nullptr ? 3.0 : 1.0;
    std::optional<Point> first;
    for (double on = 0.0; on < highest * usual_reach; on += step) {
        const Point at = place + on * way;
        const int cell = grid_.cell_at(at);
        if (!grid_.is_tall(cell)) continue;
        if (!first) first = at;
        const Point centre = grid_.centre(cell);
        const double top = solved_.hole.canopy.at(centre) + ground_m(centre) - ground_m(place);
        if (on < usual_reach * std::max(1.0, top) / usual_canopy_m) return first;
    }
    return std::nullopt;
}

double BallWalk::run_share(Lie landed) const {
    switch (landed) {
        case Lie::teeing_area:
        case Lie::fairway:
            return 1.0;
        case Lie::rough:
            return constants_.run_share_rough;
        case Lie::green:
            return constants_.run_share_green;
        case Lie::trees:
            return constants_.run_share_trees;
        default:
            return 0.0;
    }
}

const DayBalls& BallWalk::balls_of(const ShotOption& option, Stance stance) {
    if (const auto known = balls_.find(&option); known != balls_.end()) return known->second;
    const ClubFlight full(solved_.golfer.clubs[option.club]);
    const bool is_punch = stance == Stance::trees;
    const double run_m = is_punch ? constants_.recovery_run * full.carry_m()
                                  : solved_.golfer.clubs[option.club].pattern->run_m;
    return balls_
        .try_emplace(&option, is_punch ? full.punch() : full, solved_.day, run_m,
                     option.pattern.usual.centre.carry_m, constants_.curve_share)
        .first->second;
}

BallWalk::Landing BallWalk::landing(const ShotOption& option, Stance stance, Point from, double aim,
                                    const ShotOffset& shot) {
    const Point ahead = along_bearing(aim);
    const Point still = from + shot.carry_m * ahead + shot.side_m * to_the_right(ahead);
    if (is_reference_day(solved_.day) && day_.heights == nullptr)
        return {still, unit(still - from), option.pattern.run_m, 0.0};
    const DayBalls& balls = balls_of(option, stance);
    const double wind = day_.wind_to ? *day_.wind_to - aim : 0.0;
    const DayBalls::Landed ball =
        balls.landed(std::hypot(shot.carry_m, shot.side_m), std::atan2(shot.side_m, shot.carry_m), wind);
    Landing landing{from + ball.along_m * ahead + ball.right_m * to_the_right(ahead),
                    along_bearing(aim + ball.heading_rad), 0.0, 0.0};
    Slope slope;
    if (day_.heights != nullptr) {
        const Point level = landing.place;
        for (int round = 0; round < 6; ++round)
            landing.place = level - (ground_m(landing.place) - ground_m(from)) * ball.fall * landing.way;
        const Point rise = day_.heights->gradient(landing.place);
        slope = {dot(rise, landing.way), dot(rise, to_the_right(landing.way))};
    }
    const Lie landed = lie_at(landing.place);
    const Firmness firmness = landed == Lie::green                                   ? Firmness::ordinary
                              : landed == Lie::fairway || landed == Lie::teeing_area ? solved_.day.fairway
                                                                                     : solved_.day.rough;
    landing.run_m = option.pattern.run_m + balls.more_run_m(firmness, wind, slope);
    landing.aside_m = balls.aside_m(firmness, wind, slope);
    return landing;
}

BallWalk::Rest BallWalk::rest(const ShotOption& option, Stance stance, Point from, double aim,
                              CounterRandom& random) {
    const Landing ball = landing(option, stance, from, aim, drawn_shot(option.pattern, random));
    // As low as the usual ball of this shot.
    if (const auto stop = hidden_by(from, ball.way, option.stopped_early)) return {*stop, ball.way};
    if (!grid_.is_tall(grid_.cell_at(ball.place)))
        if (const auto stop = hidden_by(ball.place, -1.0 * ball.way, option.stopped_late))
            return {*stop, ball.way};
    const double share = run_share(lie_at(ball.place));
    const double run = std::max(0.0, share * ball.run_m);
    const double step = walk_step * grid_.step_m();
    for (double on = 0.0; on < run; on += step)
        if (is_trap(lie_at(ball.place + on * ball.way))) return {ball.place + on * ball.way, ball.way};
    return {ball.place + run * ball.way + share * ball.aside_m * to_the_right(ball.way), ball.way};
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
    const Rest ball = rest(option, stance, grid_.centre(cell), grid_.bearing_of(action.turn), random);
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
