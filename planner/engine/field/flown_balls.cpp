#include "planner/engine/field/flown_balls.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace landwidth {

namespace {

// A ball that comes down along the ground itself still meets it somewhere.
constexpr float least_meeting = 0.3F;

constexpr double whole_turn = 2.0 * std::numbers::pi;

struct Turn {
    float sine, cosine;
};

const std::array<Turn, turn_steps>& turns() {
    static const std::array<Turn, turn_steps> table = [] {
        std::array<Turn, turn_steps> made{};
        for (int turn = 0; turn < turn_steps; ++turn) {
            const double angle = turn * whole_turn / turn_steps;
            made[static_cast<std::size_t>(turn)] = {static_cast<float>(std::sin(angle)),
                                                    static_cast<float>(std::cos(angle))};
        }
        return made;
    }();
    return table;
}

// Wind and air: where the usual ball is taken to, and what that does to its run.
void take_the_day(const PlayGrid& grid, int turn, ShotInAir& shot) {
    const UsualBallOfDay& usual = shot.option->of_day;
    if (grid.wind_turn()) {
        const Turn& against =
            turns()[static_cast<std::size_t>((*grid.wind_turn() - turn + turn_steps) % turn_steps)];
        shot.wind = WindAngle::of(against.cosine, against.sine);
    }
    shot.curl = usual.curl0 + usual.curl1 * shot.wind.cos1;
    const float ahead = std::max(usual.carry + usual.shift.along(shot.wind), 1.0F);
    const float aside = usual.shift.right(shot.wind);
    const float way = 1.0F / std::sqrt(ahead * ahead + aside * aside);
    shot.drift_sine = aside * way;
    shot.drift_cosine = ahead * way;
    // Within a step of the turn up to drifts of 30 degrees; no ball drifts so far.
    const float drift = shot.drift_sine + shot.drift_sine * shot.drift_sine * shot.drift_sine / 6.0F;
    shot.drift_turn = static_cast<int>(std::lround(drift * static_cast<float>(turn_steps / whole_turn)));
    shot.fall_factor = 1.0F + usual.fall1 * shot.wind.cos1;
    for (std::size_t kind = 0; kind < run_kinds; ++kind)
        shot.runs[kind] =
            std::max(0.0F, shot.runs[kind] + usual.run0[kind] + usual.run1[kind] * shot.wind.cos1);
}

}  // namespace

ShotInAir shot_in_air(const PlayGrid& grid, const ShotOption& option, int turn) {
    const Turn& aim = turns()[static_cast<std::size_t>(turn)];
    ShotInAir shot{.option = &option,
                   .sine = aim.sine,
                   .cosine = aim.cosine,
                   .wind = {},
                   .is_moved = option.flight->differs(),
                   .curl = 0.0F,
                   .drift_turn = 0,
                   .drift_sine = 0.0F,
                   .drift_cosine = 1.0F,
                   .fall_factor = 1.0F,
                   .runs = option.run_cells};
    if (shot.is_moved) take_the_day(grid, turn, shot);
    return shot;
}

void FlownBalls::fly(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls, std::size_t first,
                     std::size_t count, const FromPlace& from) {
    along_ = balls.along.data() + first;
    right_ = balls.right.data() + first;
    way_along_ = balls.way_along.data() + first;
    way_right_ = balls.way_right.data() + first;
    is_sloped_ = grid.has_heights() && !balls.only_ranks;
    if (shot.is_moved) move(shot, balls, first, count);
    if (is_sloped_)
        land_on_slope(grid, shot, balls, first, count, from);
    else if (grid.has_heights())
        land_as_the_usual(grid, shot, balls, first, count, from);
}

// Straight-line arithmetic over arrays, so that the compiler makes vector code of it.
void FlownBalls::move(const ShotInAir& shot, const BallSet& balls, std::size_t first, std::size_t count) {
    const float* along0 = balls.along0.data() + first;
    const float* along1 = balls.along1.data() + first;
    const float* along2 = balls.along2.data() + first;
    const float* right1 = balls.right1.data() + first;
    const float* right2 = balls.right2.data() + first;
    const float* curve = balls.curve.data() + first;
    const WindAngle wind = shot.wind;
    for (std::size_t i = 0; i < count; ++i) {
        // The wind against the ball's own direction.
        const float cosine = wind.cos1 * way_along_[i] + wind.sin1 * way_right_[i];
        const float sine = wind.sin1 * way_along_[i] - wind.cos1 * way_right_[i];
        const float along = along0[i] + along1[i] * cosine + along2[i] * (cosine * cosine - sine * sine);
        const float right = right1[i] * sine + right2[i] * 2.0F * sine * cosine + curve[i] * shot.curl;
        own_along_[i] = along_[i] + along * way_along_[i] - right * way_right_[i];
        own_right_[i] = right_[i] + along * way_right_[i] + right * way_along_[i];
        own_way_along_[i] = way_along_[i] * shot.drift_cosine - way_right_[i] * shot.drift_sine;
        own_way_right_[i] = way_right_[i] * shot.drift_cosine + way_along_[i] * shot.drift_sine;
    }
    along_ = own_along_.data();
    right_ = own_right_.data();
    way_along_ = own_way_along_.data();
    way_right_ = own_way_right_.data();
}

// All by as much as the ground lies higher or lower where the usual ball comes down.
void FlownBalls::land_as_the_usual(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls,
                                   std::size_t first, std::size_t count, const FromPlace& from) {
    const UsualBallOfDay& usual = shot.option->of_day;
    const float ahead = usual.carry + (shot.is_moved ? usual.shift.along(shot.wind) : 0.0F);
    const float rise_m =
        grid.ground_kept_on(from.x + ahead * shot.sine, from.y + ahead * shot.cosine).height_m -
        from.height_m;
    const float* fall = balls.fall.data() + first;
    for (std::size_t i = 0; i < count; ++i) {
        const float shorter = rise_m * shot.fall_factor * fall[i];
        own_along_[i] = along_[i] - shorter * way_along_[i];
        own_right_[i] = right_[i] - shorter * way_right_[i];
    }
    along_ = own_along_.data();
    right_ = own_right_.data();
}

void FlownBalls::land_on_slope(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls,
                               std::size_t first, std::size_t count, const FromPlace& from) {
    const UsualBallOfDay& usual = shot.option->of_day;
    const DayFlight& flight = *shot.option->flight;
    const auto step = static_cast<float>(grid.step_m());
    const float* fall = balls.fall.data() + first;
    Lengths way_x, way_y, level_x, level_y, more_run, asides;
    for (std::size_t i = 0; i < count; ++i) {
        way_x[i] = way_along_[i] * shot.sine + way_right_[i] * shot.cosine;
        way_y[i] = way_along_[i] * shot.cosine - way_right_[i] * shot.sine;
        level_x[i] = from.x + along_[i] * shot.sine + right_[i] * shot.cosine;
        level_y[i] = from.y + along_[i] * shot.cosine - right_[i] * shot.sine;
    }
    for (std::size_t i = 0; i < count; ++i) {
        const float per_m = fall[i] * shot.fall_factor;
        const PlayGrid::Post under = grid.ground_kept_on(level_x[i], level_y[i]);
        const float rise = under.right * way_x[i] + under.along * way_y[i];
        // Where the end of the flight, straight, meets the plane of the ground there.
        const float shorter =
            (under.height_m - from.height_m) * per_m / std::max(1.0F + rise * step * per_m, least_meeting);
        more_run[i] = flight.more_run_on_slope(rise) / step;
        asides[i] = (under.right * way_y[i] - under.along * way_x[i]) * usual.sideways;
        own_along_[i] = along_[i] - shorter * way_along_[i];
        own_right_[i] = right_[i] - shorter * way_right_[i];
    }
    for (std::size_t kind = 0; kind < run_kinds; ++kind) {
        const float own = shot.runs[kind];
        const float share = shot.option->run_shares[kind];
        // A ball drifts in proportion to how far it runs.
        const float level_run = shot.option->run_cells[kind];
        const float aside_share = level_run > 0.0F ? share / level_run : 0.0F;
        for (std::size_t i = 0; i < count; ++i) {
            const float run = own + share * more_run[i];
            runs_[kind][i] = run > 0.0F ? run : 0.0F;
            asides_[kind][i] = asides[i] * runs_[kind][i] * aside_share;
        }
    }
    along_ = own_along_.data();
    right_ = own_right_.data();
}

}  // namespace landwidth
