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
// Canopies this far from either end of a carry are looked for at most.
constexpr unsigned most_low_cells = 62;
// As steep as fairways fall for long.
constexpr float downhill_rise = -0.15F;

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

struct Making {
    const BagFlights& flights;
    const EngineAssumptions& assumptions;
    double step_m;
};

// What the day makes of the ball just added.
void add_day(const WeightedShot& shot, std::size_t index, const DayFlight& flight, const Making& making,
             BallSet& set) {
    const auto step = static_cast<float>(making.step_m);
    const auto carry = static_cast<float>(shot.distance_m);
    set.fall.push_back(flight.fall(carry, {}) / step);
    if (!flight.differs()) return;
    const LandingShift shift = flight.shift(carry, gust_factor(making.flights.day().wind, index));
    set.along0.push_back((shift.air + shift.along0) / step);
    set.along1.push_back(shift.along1 / step);
    set.along2.push_back(shift.along2 / step);
    set.right1.push_back(shift.right1 / step);
    set.right2.push_back(shift.right2 / step);
    set.curve.push_back(static_cast<float>(shot.distance_m * shot.angle_rad) / step);
}

BallSet ball_set(const ShotPattern& pattern, int log2_balls, std::uint64_t replicate, const DayFlight& flight,
                 const Making& making) {
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
        add_day(shot, set.size(), flight, making, set);
        set.along.push_back(static_cast<float>(along * shot.distance_m / making.step_m));
        set.right.push_back(static_cast<float>(right * shot.distance_m / making.step_m));
        set.way_along.push_back(static_cast<float>(along));
        set.way_right.push_back(static_cast<float>(right));
        set.weight.push_back(static_cast<float>(shot.weight));
        set.turn.push_back(static_cast<std::int16_t>(turn));
    }
    return set;
}

// Cells from one end of the carry within which the ball is below the usual canopy, half the carry at most:
// there it is on its way up at the one end and down at the other.
unsigned low_cells(const DayFlight& flight, double carry_m, double step_m, bool late) {
    unsigned cells = 0;
    while (cells < most_low_cells && cells * step_m < 0.5 * carry_m) {
        const double at_m = late ? carry_m - cells * step_m : cells * step_m;
        const float height = flight.height(static_cast<float>(at_m), static_cast<float>(carry_m),
                                           static_cast<float>(carry_m), {});
        if (height >= static_cast<float>(usual_canopy_m)) break;
        ++cells;
    }
    return cells;
}

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

UsualBallOfDay usual_of_day(const DayFlight& flight, double carry_m,
                            const std::array<float, run_kinds>& run_shares, double step_m) {
    const auto step = static_cast<float>(step_m);
    const auto carry = static_cast<float>(carry_m);
    const WindAngle calm{};
    const WindAngle tail = WindAngle::of(1.0F, 0.0F);
    LandingShift shift = flight.shift(carry, 1.0F);
    for (float* part :
         {&shift.air, &shift.along0, &shift.along1, &shift.along2, &shift.right1, &shift.right2})
        *part /= step;
    UsualBallOfDay usual{.carry = carry / step,
                         .shift = shift,
                         .curl0 = flight.curl(calm),
                         .curl1 = flight.curl(tail) - flight.curl(calm),
                         .fall1 = flight.fall(carry, tail) / flight.fall(carry, calm) - 1.0F,
                         .run0 = {},
                         .run1 = {},
                         .sideways = flight.sideways_per_slope() / step};
    for (std::size_t kind = 0; kind < run_kinds; ++kind) {
        const auto more = [&](const WindAngle& wind) {
            return run_shares[kind] * flight.more_run(carry, surface_of(static_cast<RunKind>(kind)), wind) /
                   step;
        };
        usual.run0[kind] = more(calm);
        usual.run1[kind] = more(tail) - more(calm);
    }
    return usual;
}

int spread_of(std::initializer_list<const BallSet*> sets) {
    int widest = 0;
    for (const BallSet* set : sets)
        for (const std::int16_t turn : set->turn)
            widest = std::max(widest, std::abs(int{turn}));
    // One more for a drift of the travel in wind, and for rounding.
    return std::min(widest / turns_per_direction + 2, travel_directions / 2);
}

ShotOption option_of(const Swing& swing, const ShotPattern& pattern, Stance stance, const Making& making) {
    const double carry = pattern.usual.centre.carry_m;
    const auto& flight =
        stance == Stance::trees ? making.flights.punch(swing.club) : making.flights.full(swing.club);
    const std::uint64_t stream = 16 * static_cast<std::uint64_t>(stance);
    const auto balls = [&](int log2_balls, std::uint64_t replicate) {
        return ball_set(pattern, log2_balls, stream + replicate, *flight, making);
    };
    ShotOption option{.club = swing.club,
                      .swing = swing.swing,
                      .pattern = pattern,
                      .total_m = carry + pattern.run_m,
                      .run_cells = {},
                      .run_shares = {},
                      .stopped_late = low_cells(*flight, carry, making.step_m, true),
                      .stopped_early = 0,
                      .spread_directions = 0,
                      .flight = flight,
                      .of_day = {},
                      .rough_set = balls(rough_log2_balls, rough_replicate),
                      .choice_set = balls(choice_log2_balls, choice_replicate),
                      .value_set = balls(value_log2_balls, value_replicate)};
    // Out of trees the ball is among them already: the pattern itself says what that costs.
    if (stance != Stance::trees) option.stopped_early = low_cells(*flight, carry, making.step_m, false);
    for (const Lie lie : all_lies) {
        const auto kind = static_cast<std::size_t>(run_kind(lie));
        option.run_shares[kind] = static_cast<float>(run_share(lie, making.assumptions));
        option.run_cells[kind] =
            static_cast<float>(pattern.run_m * run_share(lie, making.assumptions) / making.step_m);
    }
    option.spread_directions = spread_of({&option.rough_set, &option.choice_set, &option.value_set});
    option.rough_set.only_ranks = true;
    option.choice_set.only_ranks = true;
    option.of_day = usual_of_day(*flight, carry, option.run_shares, making.step_m);
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
                                     const BagFlights& flights, const EngineAssumptions& assumptions) {
    const auto pattern = pattern_from(club, stance, 1.0, assumptions);
    if (!pattern) return std::nullopt;
    return option_of({number, 1.0}, *pattern, stance, {flights, assumptions, step_m});
}

ShotMenu::ShotMenu(const Golfer& golfer, double step_m, const BagFlights& flights,
                   const EngineAssumptions& assumptions) {
    const Making making{flights, assumptions, step_m};
    if (full_swings(golfer).empty())
        throw InputError("profile of " + golfer.name,
                         "no club but the putter has a shot pattern; give at least one a pattern");
    tbb::parallel_for(std::size_t{0}, stance_count, [&](std::size_t index) {
        const Stance stance = all_stances[index];
        std::vector<Swing> swings = stance == Stance::trees ? punches(golfer) : full_swings(golfer);
        if (stance != Stance::trees) add_part_swings(golfer, swings);
        for (const Swing& swing : swings)
            if (const auto pattern = pattern_from(golfer.clubs[swing.club], stance, swing.swing, assumptions))
                options_[index].push_back(option_of(swing, *pattern, stance, making));
        // A bag of woods alone: whoever has nothing else plays them from everywhere, as from rough.
        if (options_[index].empty())
            for (const Swing& swing : full_swings(golfer))
                options_[index].push_back(
                    option_of(swing, *golfer.clubs[swing.club].pattern, stance, making));
        std::ranges::stable_sort(options_[index], std::greater<>{}, &ShotOption::total_m);
        if (stance == Stance::trees) thin_out(options_[index]);
    });
    for (const std::vector<ShotOption>& options : options_)
        for (const ShotOption& option : options)
            reach_to(option.pattern, *option.flight, step_m);
    for (std::size_t i = 0; i < golfer.clubs.size(); ++i)
        if (golfer.clubs[i].pattern) reach_to(*golfer.clubs[i].pattern, *flights.full(i), step_m);
}

void ShotMenu::reach_to(const ShotPattern& pattern, const DayFlight& flight, double step_m) {
    const double carry = pattern.usual.centre.carry_m;
    double more = 0.0;
    if (flight.differs())
        for (const float cosine : {-1.0F, 1.0F})
            for (const Surface surface : {Surface::mown, Surface::rough, Surface::green})
                more = std::max(more, double{flight.more_run(static_cast<float>(carry), surface,
                                                             WindAngle::of(cosine, 0.0F))});
    longest_run_m_ = std::max(longest_run_m_, pattern.run_m + more);
    longest_run_downhill_m_ =
        std::max(longest_run_downhill_m_,
                 pattern.run_m + more + std::max(0.0, double{flight.more_run_on_slope(downhill_rise)}));
    furthest_stop_ = std::max(
        {furthest_stop_, low_cells(flight, carry, step_m, true), low_cells(flight, carry, step_m, false)});
}

}  // namespace landwidth
