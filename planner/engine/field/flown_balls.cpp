#include "planner/engine/field/flown_balls.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace landwidth {

namespace {

constexpr double whole_turn = 2.0 * std::numbers::pi;

Surface surface_of(RunKind kind) {
    switch (kind) {
        case RunKind::mown:
            return Surface::mown;
        case RunKind::green:
            return Surface::green;
        default:
            return Surface::rough;
    }
}

// Wind and air: where the usual ball is taken to, and what that does to its run.
void take_the_day(const PlayGrid& grid, const ShotOption& option, int turn, ShotInAir& shot) {
    const auto step = static_cast<float>(grid.step_m());
    const auto carry = static_cast<float>(option.pattern.usual.centre.carry_m);
    const DayFlight& flight = *option.flight;
    if (grid.wind_to()) shot.wind = WindAngle::of(*grid.wind_to() - turn * whole_turn / turn_steps);
    shot.curl = flight.curl(shot.wind);
    const LandingShift shift = flight.shift(carry, 1.0F);
    const double drift =
        std::atan2(double{shift.right(shot.wind)}, double{std::max(carry + shift.along(shot.wind), step)});
    shot.drift_turn = static_cast<int>(std::lround(drift / whole_turn * turn_steps));
    shot.drift_sine = static_cast<float>(std::sin(drift));
    shot.drift_cosine = static_cast<float>(std::cos(drift));
    shot.fall_factor = flight.fall(carry, shot.wind) / flight.fall(carry, {});
    for (std::size_t kind = 0; kind < run_kinds; ++kind)
        shot.runs[kind] = std::max(
            0.0F, shot.runs[kind] +
                      option.run_shares[kind] *
                          flight.more_run(carry, surface_of(static_cast<RunKind>(kind)), shot.wind) / step);
}

}  // namespace

ShotInAir shot_in_air(const PlayGrid& grid, const ShotOption& option, int turn) {
    struct Turn {
        float sine, cosine;
    };
    static const std::array<Turn, turn_steps> turns = [] {
        std::array<Turn, turn_steps> made{};
        for (int i = 0; i < turn_steps; ++i) {
            const double angle = i * whole_turn / turn_steps;
            made[static_cast<std::size_t>(i)] = {static_cast<float>(std::sin(angle)),
                                                 static_cast<float>(std::cos(angle))};
        }
        return made;
    }();
    const Turn& aim = turns[static_cast<std::size_t>(turn)];
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
                   .runs = option.run_cells,
                   .sideways = option.flight->sideways_per_slope() / static_cast<float>(grid.step_m())};
    if (shot.is_moved) take_the_day(grid, option, turn, shot);
    return shot;
}

void FlownBalls::fly(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls, std::size_t first,
                     std::size_t count, float from_x, float from_y, float height_m) {
    along_ = balls.along.data() + first;
    right_ = balls.right.data() + first;
    way_along_ = balls.way_along.data() + first;
    way_right_ = balls.way_right.data() + first;
    is_sloped_ = grid.has_heights();
    if (shot.is_moved) move(shot, balls, first, count);
    if (is_sloped_) land_on_slope(grid, shot, balls, first, count, from_x, from_y, height_m);
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

void FlownBalls::land_on_slope(const PlayGrid& grid, const ShotInAir& shot, const BallSet& balls,
                               std::size_t first, std::size_t count, float from_x, float from_y,
                               float height_m) {
    // Towards ground that rises less steeply than the ball falls each look comes several times nearer.
    constexpr int looks = 2;
    const float most_x = static_cast<float>(grid.columns()) - 0.5F;
    const float most_y = static_cast<float>(grid.rows()) - 0.5F;
    const auto step = static_cast<float>(grid.step_m());
    for (std::size_t i = 0; i < count; ++i) {
        const float way_x = way_along_[i] * shot.sine + way_right_[i] * shot.cosine;
        const float way_y = way_along_[i] * shot.cosine - way_right_[i] * shot.sine;
        const float level_x = from_x + along_[i] * shot.sine + right_[i] * shot.cosine;
        const float level_y = from_y + along_[i] * shot.cosine - right_[i] * shot.sine;
        const float fall = balls.fall[first + i] * shot.fall_factor;
        float shorter = 0.0F;
        const auto post = [&]() -> const PlayGrid::Post& {
            const float x = std::clamp(level_x - shorter * way_x, 0.0F, most_x);
            const float y = std::clamp(level_y - shorter * way_y, 0.0F, most_y);
            return grid.post(static_cast<int>(y) * grid.columns() + static_cast<int>(x));
        };
        for (int look = 0; look < looks; ++look)
            shorter = (post().height_m - height_m) * fall;
        const PlayGrid::Post& landed = post();
        const float rise = landed.right * way_x + landed.along * way_y;
        const float lean = landed.right * way_y - landed.along * way_x;
        more_run_[i] = shot.option->flight->more_run_on_slope(rise) / step;
        aside_[i] = lean * shot.sideways;
        own_along_[i] = along_[i] - shorter * way_along_[i];
        own_right_[i] = right_[i] - shorter * way_right_[i];
    }
    along_ = own_along_.data();
    right_ = own_right_.data();
}

}  // namespace landwidth
