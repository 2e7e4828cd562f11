#include "planner/engine/field/shot_menu.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "planner/engine/pattern_quadrature.hpp"

namespace landwidth {

namespace {

// Sizes by the errors measured in tests/benchmarks; see DEVELOPERS.md.
constexpr int rough_log2_balls = 5;
constexpr int choice_log2_balls = 6;
constexpr int value_log2_balls = 8;
// Independent sets, so that a choice that looked good by luck is not also valued by it.
constexpr std::uint64_t rough_replicate = 101, choice_replicate = 102, value_replicate = 103;
// Part swings step down by this share, to the shortest carry that is not yet the short game.
constexpr double part_swing_step = 0.88;
constexpr double shortest_carry_m = Yards{22.0}.metres();
constexpr std::array<double, 3> punch_swings{0.65, 0.45, 0.28};
constexpr double punch_gap = 0.93;
constexpr int neighbours_turn = turn_steps / 64;
// Woods this far from either end of a carry are looked for at most.
constexpr std::size_t most_low_cells = 63;

struct Swing {
    std::size_t club;
    double swing;
};

double full_carry(const Golfer& golfer, std::size_t club) {
    return golfer.clubs[club].pattern->usual.centre.carry_m;
}

std::vector<Swing> full_swings(const Golfer& golfer) {
    std::vector<Swing> swings;
    for (std::size_t club = 0; club < golfer.clubs.size(); ++club)
        if (is_playable(golfer.clubs[club])) swings.push_back({club, 1.0});
    return swings;
}

// Down from the shortest club's full carry; the shortest club plays them all.
void add_part_swings(const Golfer& golfer, std::vector<Swing>& swings) {
    const Swing shortest = *std::ranges::min_element(
        swings, {}, [&](const Swing& swing) { return full_carry(golfer, swing.club); });
    const double full = full_carry(golfer, shortest.club);
    for (double swing = part_swing_step; swing * full >= shortest_carry_m; swing *= part_swing_step)
        swings.push_back({shortest.club, swing});
}

std::vector<Swing> punches(const Golfer& golfer) {
    std::vector<Swing> swings;
    for (const Swing& full : full_swings(golfer))
        for (const double swing : punch_swings)
            swings.push_back({full.club, swing});
    return swings;
}

BallSet ball_set(const ShotPattern& pattern, int log2_balls, std::uint64_t replicate, double step_m) {
    struct Ball {
        WeightedShot shot;
        int turn;
    };
    std::vector<Ball> balls;
    for (const WeightedShot& shot : weighted_shots(pattern, log2_balls, replicate))
        balls.push_back(
            {shot, static_cast<int>(std::lround(shot.angle_rad / (2.0 * std::numbers::pi) * turn_steps))});
    // Neighbours one after the other: they find the same ground, and the same part of the memory.
    std::ranges::stable_sort(balls, {}, [](const Ball& ball) {
        return std::pair((ball.turn + turn_steps) / neighbours_turn, ball.shot.distance_m);
    });
    BallSet set;
    for (const auto& [shot, turn] : balls) {
        const double along = std::cos(shot.angle_rad);
        const double right = std::sin(shot.angle_rad);
        set.along.push_back(static_cast<float>(along * shot.distance_m / step_m));
        set.right.push_back(static_cast<float>(right * shot.distance_m / step_m));
        set.way_along.push_back(static_cast<float>(along));
        set.way_right.push_back(static_cast<float>(right));
        set.weight.push_back(static_cast<float>(shot.weight));
        set.turn.push_back(static_cast<std::int16_t>(turn));
    }
    return set;
}

std::vector<float> stopped_shares(const FlightClearance& clearance, double carry_m, double step_m,
                                  bool late) {
    std::vector<float> shares;
    const double reach = std::min(clearance.low_reach_m(carry_m), carry_m);
    for (std::size_t cells = 0; cells < most_low_cells; ++cells) {
        const double from_end = static_cast<double>(cells) * step_m;
        if (from_end > reach) break;
        shares.push_back(
            static_cast<float>(clearance.stopped_share(late ? carry_m - from_end : from_end, carry_m)));
    }
    return shares;
}

ShotOption option_of(const Swing& swing, const ShotPattern& pattern, Stance stance, double step_m,
                     const FlightClearance& clearance, const EngineAssumptions& a) {
    const double carry = pattern.usual.centre.carry_m;
    const auto cells = [&](double run_m) { return static_cast<float>(run_m / step_m); };
    const std::uint64_t stream = 16 * static_cast<std::uint64_t>(stance);
    ShotOption option{.club = swing.club,
                      .swing = swing.swing,
                      .pattern = pattern,
                      .total_m = carry + pattern.run_m,
                      .run_cells = {},
                      .stopped_late = stopped_shares(clearance, carry, step_m, true),
                      .stopped_early = {},
                      .rough_set = ball_set(pattern, rough_log2_balls, stream + rough_replicate, step_m),
                      .choice_set = ball_set(pattern, choice_log2_balls, stream + choice_replicate, step_m),
                      .value_set = ball_set(pattern, value_log2_balls, stream + value_replicate, step_m)};
    // Out of trees the ball is among them already: the pattern itself says what that costs.
    if (stance != Stance::trees) option.stopped_early = stopped_shares(clearance, carry, step_m, false);
    for (const Lie lie : all_lies)
        option.run_cells[static_cast<std::size_t>(run_kind(lie))] = cells(pattern.run_m * run_share(lie, a));
    return option;
}

// Many clubs punched make much the same shot: one of each length is enough.
void thin_out(std::vector<ShotOption>& options) {
    std::vector<ShotOption> kept;
    for (ShotOption& option : options)
        if (kept.empty() || option.total_m < punch_gap * kept.back().total_m)
            kept.push_back(std::move(option));
    options = std::move(kept);
}

}  // namespace

RunKind run_kind(Lie lie) {
    switch (lie) {
        case Lie::teeing_area:
        case Lie::fairway:
            return RunKind::mown;
        case Lie::rough:
            return RunKind::rough;
        case Lie::green:
            return RunKind::green;
        case Lie::trees:
            return RunKind::trees;
        default:
            return RunKind::none;
    }
}

std::optional<ShotOption> full_swing(const Club& club, std::size_t number, Stance stance, double step_m,
                                     const FlightClearance& clearance, const EngineAssumptions& assumptions) {
    const auto pattern = pattern_from(club, stance, 1.0, assumptions);
    if (!pattern) return std::nullopt;
    return option_of({number, 1.0}, *pattern, stance, step_m, clearance, assumptions);
}

ShotMenu::ShotMenu(const Golfer& golfer, double step_m, const FlightClearance& clearance,
                   const EngineAssumptions& assumptions) {
    if (full_swings(golfer).empty())
        throw InputError("profile of " + golfer.name,
                         "no club but the putter has a shot pattern; give at least one a pattern");
    tbb::parallel_for(std::size_t{0}, stance_count, [&](std::size_t index) {
        const Stance stance = all_stances[index];
        std::vector<Swing> swings = stance == Stance::trees ? punches(golfer) : full_swings(golfer);
        if (stance != Stance::trees) add_part_swings(golfer, swings);
        for (const Swing& swing : swings)
            if (const auto pattern = pattern_from(golfer.clubs[swing.club], stance, swing.swing, assumptions))
                options_[index].push_back(option_of(swing, *pattern, stance, step_m, clearance, assumptions));
        // A bag of woods alone: whoever has nothing else plays them from everywhere, as from rough.
        if (options_[index].empty())
            for (const Swing& swing : full_swings(golfer))
                options_[index].push_back(option_of(swing, *golfer.clubs[swing.club].pattern, stance, step_m,
                                                    clearance, assumptions));
        std::ranges::stable_sort(options_[index], std::greater<>{}, &ShotOption::total_m);
        if (stance == Stance::trees) thin_out(options_[index]);
    });
    for (const std::vector<ShotOption>& options : options_)
        for (const ShotOption& option : options) {
            longest_run_m_ = std::max(longest_run_m_, option.pattern.run_m);
            longest_carry_m_ = std::max(longest_carry_m_, option.pattern.usual.centre.carry_m);
        }
    for (const Club& club : golfer.clubs) {
        if (!club.pattern) continue;
        longest_run_m_ = std::max(longest_run_m_, club.pattern->run_m);
        longest_carry_m_ = std::max(longest_carry_m_, club.pattern->usual.centre.carry_m);
    }
}

}  // namespace landwidth
