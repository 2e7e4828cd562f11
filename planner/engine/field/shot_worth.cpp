#include "planner/engine/field/shot_worth.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <limits>
#include <numbers>

namespace landwidth {

namespace {

std::uint64_t four_at(const std::uint16_t* meetings) {
    std::uint64_t four;
    std::memcpy(&four, meetings, sizeof four);
    return four;
}

}  // namespace

ShotWorth::ShotWorth(const PlayGrid& grid, DropPlaces& drops, const Continuation& next)
    : grid_(grid),
      drops_(drops),
      next_(next),
      most_column_(static_cast<float>(grid.columns()) - 0.5F),
      most_row_(static_cast<float>(grid.rows()) - 0.5F) {}

void ShotWorth::refresh() {
    known_drops_.clear();
}

const ShotWorth::KnownDrop& ShotWorth::known_drop(std::size_t drop) {
    if (drop >= known_drops_.size())
        known_drops_.resize(std::max(drops_.count(), drop + 1),
                            {std::numeric_limits<float>::quiet_NaN(), -1});
    KnownDrop& known = known_drops_[drop];
    if (!std::isnan(known.cost)) return known;
    const DropPlaces::Drop& places = drops_.drop(drop);
    const float* dropped = next_.dropped[static_cast<std::size_t>(places.penalty)];
    for (const int cell : places.cells)
        if (known.cell < 0 || dropped[cell] < dropped[known.cell]) known.cell = cell;
    known.cost = known.cell < 0
                     ? std::numeric_limits<float>::infinity()
                     : dropped[known.cell] + static_cast<float>(places.penalty) * next_.per_penalty;
    return known;
}

float ShotWorth::drop_cost(std::size_t drop) {
    return known_drop(drop).cost;
}

int ShotWorth::drop_cell(std::size_t drop) {
    return known_drop(drop).cell;
}

bool ShotWorth::woods_ahead(const ShotOption& option, int cell, int turn) const {
    const int spread = option.spread_directions;
    const int aim = direction_of(turn);
    for (int aside = -spread; aside <= spread; ++aside) {
        const int direction = (aim + aside + travel_directions) % travel_directions;
        if (grid_.woods_ahead(direction, cell) < option.stopped_early) return true;
    }
    return false;
}

// Straight-line arithmetic over arrays, so that the compiler makes vector code of it.
void ShotWorth::land(const ShotInAir& shot, const BallSet& balls, std::size_t first, std::size_t count,
                     int cell, int turn, Batch& out) const {
    const float from_x = static_cast<float>(cell % grid_.columns()) + 0.5F;
    const float from_y = static_cast<float>(cell / grid_.columns()) + 0.5F;
    out.flown.fly(grid_, shot, balls, first, count, {from_x, from_y, height_of(cell)});
    const float sine = shot.sine;
    const float cosine = shot.cosine;
    const float* along = out.flown.along();
    const float* right = out.flown.right();
    const float* way_along = out.flown.way_along();
    const float* way_right = out.flown.way_right();
    const std::int16_t* turned = balls.turn.data() + first;
    const std::int32_t columns = grid_.columns();
    const std::int32_t turn_from = turn + shot.drift_turn + turn_steps + turns_per_direction / 2;
    for (std::size_t i = 0; i < count; ++i) {
        const float x = from_x + along[i] * sine + right[i] * cosine;
        const float y = from_y + along[i] * cosine - right[i] * sine;
        out.x[i] = x < 0.0F ? 0.0F : x > most_column_ ? most_column_ : x;
        out.y[i] = y < 0.0F ? 0.0F : y > most_row_ ? most_row_ : y;
        out.way_x[i] = way_along[i] * sine + way_right[i] * cosine;
        out.way_y[i] = way_along[i] * cosine - way_right[i] * sine;
        out.landing[i] = static_cast<std::int32_t>(out.y[i]) * columns + static_cast<std::int32_t>(out.x[i]);
        out.direction[i] = (turn_from + turned[i]) / turns_per_direction & (travel_directions - 1);
    }
}

inline void ShotWorth::deposit(int at, int direction, float share, float replay_cost, ShotSums& sums) {
    const float replay = next_.replay[static_cast<std::size_t>(at)];
    if (replay != takes_relief) {
        sums.ordinary += share * next_.cost[static_cast<std::size_t>(at)];
        sums.replay += share * replay;
        return;
    }
    const float dropped = drop_cost(drops_.drop_of(grid_.standing(at), direction));
    if (dropped <= replay_cost)
        sums.ordinary += share * dropped;
    else
        sums.replay += share;
}

ShotSums ShotWorth::of(const ShotOption& option, const BallSet& balls, int cell, int turn,
                       float replay_cost) {
    ShotSums sums;
    follow(option, balls, cell, turn,
           [&](int at, int direction, float share) { deposit(at, direction, share, replay_cost, sums); });
    looked_up_ += balls.size();
    return sums;
}

// One ball as seen from every cell of a block: where it lands and how far it runs are the same steps for all.
struct ShotWorth::BlockBall {
    float weight;
    int direction;
    const std::uint16_t* meetings;  // of the direction
    const std::uint16_t* ahead;     // of the opposite one; null: no woods in front
    int landing;                    // steps from the cell, as a difference of cell numbers
    int rest;                       // the same to where it comes to rest undisturbed
    float run;                      // on the ground where it lands
};

void ShotWorth::lane(const ShotOption& option, const BlockBall& ball, int cell, float replay_cost,
                     ShotSums& sums) {
    const int landing = cell + ball.landing;
    const PlayGrid::Meeting meeting(ball.meetings[landing]);
    const auto stop_behind = [&](int direction, int from) {
        deposit(grid_.woods_behind(direction, from), ball.direction, ball.weight, replay_cost, sums);
    };
    if (ball.ahead != nullptr && PlayGrid::Meeting(ball.ahead[cell]).woods_cells() < option.stopped_early)
        return stop_behind((ball.direction + travel_directions / 2) % travel_directions, cell);
    if (meeting.woods_cells() < option.stopped_late && !grid_.is_tall(landing))
        return stop_behind(ball.direction, landing);
    const int trap = meeting.trap_cells();
    const bool trapped = trap < PlayGrid::far_away && static_cast<float>(trap) <= ball.run;
    const int at = trapped ? landing + grid_.stride(ball.direction, trap) : cell + ball.rest;
    deposit(at, ball.direction, ball.weight, replay_cost, sums);
}

bool ShotWorth::woods_ahead_of_block(const ShotOption& option, int first_cell, int turn) const {
    for (int i = 0; i < static_cast<int>(block_cells); ++i)
        if (woods_ahead(option, first_cell + i / block_side * grid_.columns() + i % block_side, turn))
            return true;
    return false;
}

// Steps of the balls of a batch, in arrays that the compiler makes vector code of.
struct ShotWorth::BlockBatch {
    FlownBalls flown;
    std::array<std::int32_t, batch> direction;
    std::array<std::int32_t, batch> landing;
    std::array<std::array<std::int32_t, batch>, run_kinds> rest;
    std::array<std::int32_t, batch> inside;  // 1 for every cell of the block
};

void ShotWorth::land_block(const ShotInAir& shot, const BallSet& balls, std::size_t first, std::size_t count,
                           int first_cell, int turn, BlockBatch& out) const {
    // Casts cut towards zero: keep what is cut positive.
    constexpr float shift = 4096.0F;
    constexpr auto whole_shift = static_cast<std::int32_t>(shift);
    const float sine = shot.sine;
    const float cosine = shot.cosine;
    const std::int32_t columns = grid_.columns();
    const std::int32_t first_column = first_cell % columns;
    const std::int32_t first_row = first_cell / columns;
    const std::int32_t last_column = columns - block_side;
    const std::int32_t last_row = grid_.rows() - block_side;
    constexpr float to_middle = 0.5F * block_side;
    out.flown.fly(grid_, shot, balls, first, count,
                  {static_cast<float>(first_column) + to_middle, static_cast<float>(first_row) + to_middle,
                   height_of(first_cell)});
    const float* along = out.flown.along();
    const float* right = out.flown.right();
    const float* way_along = out.flown.way_along();
    const float* way_right = out.flown.way_right();
    const std::int16_t* turned = balls.turn.data() + first;
    const std::int32_t turn_from = turn + shot.drift_turn + turn_steps + turns_per_direction / 2;
    for (std::size_t i = 0; i < count; ++i) {
        out.direction[i] = (turn_from + turned[i]) / turns_per_direction & (travel_directions - 1);
        out.inside[i] = 1;
    }
    // run(i) along the travel of a ball, aside(i) to the right of it.
    const auto steps = [&](const auto& run, const auto& aside, std::array<std::int32_t, batch>& into) {
        for (std::size_t i = 0; i < count; ++i) {
            const float ahead = along[i] + run(i) * way_along[i] - aside(i) * way_right[i];
            const float beside = right[i] + run(i) * way_right[i] + aside(i) * way_along[i];
            const float x = shift + 0.5F + ahead * sine + beside * cosine;
            const float y = shift + 0.5F + ahead * cosine - beside * sine;
            const std::int32_t column = static_cast<std::int32_t>(x) - whole_shift;
            const std::int32_t row = static_cast<std::int32_t>(y) - whole_shift;
            const std::int32_t to_column = first_column + column;
            const std::int32_t to_row = first_row + row;
            out.inside[i] &=
                (to_column >= 0) & (to_column <= last_column) & (to_row >= 0) & (to_row <= last_row);
            into[i] = row * columns + column;
        }
    };
    const auto none = [](std::size_t) { return 0.0F; };
    steps(none, none, out.landing);
    for (std::size_t kind = 0; kind < run_kinds; ++kind) {
        if (out.flown.is_sloped())
            steps([runs = out.flown.runs(kind)](std::size_t i) { return runs[i]; },
                  [asides = out.flown.asides(kind)](std::size_t i) { return asides[i]; }, out.rest[kind]);
        else if (shot.runs[kind] > 0.0F)
            steps([run = shot.runs[kind]](std::size_t) { return run; }, none, out.rest[kind]);
        else
            out.rest[kind] = out.landing;
    }
}

void ShotWorth::over_block(const ShotOption& option, const BallSet& balls, int first_cell, int turn,
                           const float* replay_cost, std::array<ShotSums, block_cells>& sums) {
    using Row = float __attribute__((vector_size(16)));
    static_assert(block_side == 4, "a row of a block is one vector");
    const int columns = grid_.columns();
    const bool woods_in_front = woods_ahead_of_block(option, first_cell, turn);
    const ShotInAir shot = shot_in_air(grid_, option, turn);
    // Of the ball at hand: its runs, and in whole cells.
    std::array<float, run_kinds> runs = shot.runs;
    std::array<int, run_kinds> run_ceiling;
    unsigned longest_run = 0;
    const auto set_ceilings = [&] {
        for (std::size_t kind = 0; kind < run_kinds; ++kind)
            run_ceiling[kind] = std::min(static_cast<int>(runs[kind]) + 1, PlayGrid::far_away);
        longest_run = static_cast<unsigned>(*std::ranges::max_element(run_ceiling));
    };
    set_ceilings();
    const unsigned late = option.stopped_late;
    const unsigned early = option.stopped_early;
    // Copies that no write through a float pointer can be taken to change.
    const float* const costs = next_.cost.data();
    const float* const replays = next_.replay.data();
    const Continuation::Four* const fours = next_.four.data();
    std::array<Row, block_side> ordinary{};
    std::array<Row, block_side> replay{};
    sums = {};
    BlockBatch at;
    for (std::size_t first = 0; first < balls.size(); first += batch) {
        const std::size_t count = std::min(batch, balls.size() - first);
        land_block(shot, balls, first, count, first_cell, turn, at);
        for (std::size_t i = 0; i < count; ++i) {
            if (at.inside[i] == 0) {
                off_grid(shot, balls, first + i, first_cell, turn, replay_cost, sums);
                continue;
            }
            if (at.flown.is_sloped()) {
                for (std::size_t kind = 0; kind < run_kinds; ++kind)
                    runs[kind] = at.flown.runs(kind)[i];
                set_ceilings();
            }
            const float weight = balls.weight[first + i];
            const int direction = at.direction[i];
            const std::uint16_t* const meetings = grid_.meetings(direction);
            const std::uint16_t* const ahead =
                woods_in_front ? grid_.meetings((direction + travel_directions / 2) % travel_directions)
                               : nullptr;
            const int landing = first_cell + at.landing[i];
            const auto is_plain = [&](PlayGrid::Meeting meeting) {
                return meeting.woods_cells() >= late &&
                       meeting.trap_cells() >= run_ceiling[meeting.run_kind()];
            };
            const auto is_clear = [&](int cell) {
                return ahead == nullptr || PlayGrid::Meeting(ahead[cell]).woods_cells() >= early;
            };
            const auto are_clear = [&](int cell) {
                return ahead == nullptr || PlayGrid::woods_at_least(four_at(ahead + cell), early);
            };
            const auto add_row = [&](std::size_t row, Row& row_ordinary, Row& row_replay) {
                const int steps = static_cast<int>(row) * columns;
                const std::uint64_t met = four_at(meetings + landing + steps);
                const PlayGrid::Meeting meeting(static_cast<std::uint16_t>(met));
                const int cell = first_cell + steps;
                const int rest = cell + at.rest[meeting.run_kind()][i];
                const Continuation::Four four = fours[rest];
                if (PlayGrid::same_kind(met) && PlayGrid::woods_at_least(met, late) &&
                    PlayGrid::traps_at_least(met, static_cast<unsigned>(run_ceiling[meeting.run_kind()])) &&
                    four != Continuation::Four::some_relief && are_clear(cell)) {
                    Row values;
                    std::memcpy(&values, costs + rest, sizeof values);
                    row_ordinary += weight * values;
                    if (four == Continuation::Four::no_replay) return;
                    std::memcpy(&values, replays + rest, sizeof values);
                    row_replay += weight * values;
                    return;
                }
                const bool undisturbed = PlayGrid::woods_at_least(met, late) &&
                                         PlayGrid::traps_at_least(met, longest_run) && are_clear(cell);
                for (int column = 0; column < block_side; ++column) {
                    const std::size_t index = row * block_side + static_cast<std::size_t>(column);
                    const PlayGrid::Meeting own(static_cast<std::uint16_t>(met >> (16 * column)));
                    const int rests_at = cell + column + at.rest[own.run_kind()][i];
                    if ((undisturbed || (is_plain(own) && is_clear(cell + column))) &&
                        replays[rests_at] >= 0.0F) {
                        sums[index].ordinary += weight * costs[rests_at];
                        sums[index].replay += weight * replays[rests_at];
                        continue;
                    }
                    lane(option,
                         {weight, direction, meetings, ahead, at.landing[i], at.rest[own.run_kind()][i],
                          runs[own.run_kind()]},
                         cell + column, replay_cost[index], sums[index]);
                }
            };
            add_row(0, ordinary[0], replay[0]);
            add_row(1, ordinary[1], replay[1]);
            add_row(2, ordinary[2], replay[2]);
            add_row(3, ordinary[3], replay[3]);
        }
    }
    for (std::size_t index = 0; index < block_cells; ++index) {
        sums[index].ordinary += ordinary[index / block_side][index % block_side];
        sums[index].replay += replay[index / block_side][index % block_side];
    }
    looked_up_ += balls.size() * block_cells;
}

// A ball that leaves the grid from some cell of the block: cell by cell, kept on its edge.
void ShotWorth::off_grid(const ShotInAir& shot, const BallSet& balls, std::size_t ball, int first_cell,
                         int turn, const float* replay_cost, std::array<ShotSums, block_cells>& sums) {
    for (int i = 0; i < static_cast<int>(block_cells); ++i) {
        const int cell = first_cell + i / block_side * grid_.columns() + i % block_side;
        const auto index = static_cast<std::size_t>(i);
        follow_balls(shot, balls, ball, ball + 1, cell, turn, [&](int at, int direction, float share) {
            deposit(at, direction, share, replay_cost[index], sums[index]);
        });
    }
}

}  // namespace landwidth
