// What a shot from a cell is worth: the sum over its balls of what comes after.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <vector>

#include "planner/engine/field/drop_places.hpp"
#include "planner/engine/field/flown_balls.hpp"

namespace landwidth {

// What comes after a stroke, for every place its ball can come to rest. Costs are on the scale of the
// golfer's aim; for strokes they count the strokes still to come.
struct Continuation {
    enum class Four : std::uint8_t { no_replay, some_replay, some_relief };
    // A ball at rest in a cell: its cost, and the share of such balls that are lost or out and played again
    // (takes_relief: dropped elsewhere by rule). By cell, and a few more so that four may be read at once.
    std::vector<float> cost;
    std::vector<float> replay;
    // What this cell and the next three of the row have in common: see Four.
    std::vector<Four> four;
    // A ball dropped in a cell after 1 or 2 penalty strokes: dropped[penalty][cell] + penalty x per_penalty.
    std::array<const float*, 3> dropped{};
    float per_penalty = 0.0F;
};

inline constexpr float takes_relief = -1.0F;

// The balls of a shot: those that go on and what they cost, and the share played again from where it was hit.
struct ShotSums {
    float ordinary = 0.0F;
    float replay = 0.0F;
};

class ShotWorth {
  public:
    // Keeps references.
    ShotWorth(const PlayGrid& grid, DropPlaces& drops, const Continuation& next);

    // A ball in a penalty area is played again where that costs less (`replay_cost`) than any drop.
    ShotSums of(const ShotOption& option, const BallSet& balls, int cell, int turn, float replay_cost);

    // The same shot from every cell of the block with this first cell (block_side cells square, row by row):
    // the balls of all its cells land in the same pattern, so that whole rows are read at once.
    void over_block(const ShotOption& option, const BallSet& balls, int first_cell, int turn,
                    const float* replay_cost, std::array<ShotSums, block_cells>& sums);

    // Where the balls come to rest and what then happens to them: sink(cell, direction of travel, share). A
    // cell out of play stands for what the rules make of it there.
    template <class Sink>
    void follow(const ShotOption& option, const BallSet& balls, int cell, int turn, Sink&& sink);

    // Whether woods may stop the shot close before a cell of the block.
    bool woods_ahead_of_block(const ShotOption& option, int first_cell, int turn) const;
    // The cheapest place of a drop under the continuation as it is now, penalty included; infinite: none.
    float drop_cost(std::size_t drop);
    // That place; -1: none.
    int drop_cell(std::size_t drop);
    // Forgets drop costs after the continuation changed.
    void refresh();
    // How many balls were followed to a place of rest so far.
    std::uint64_t looked_up() const { return looked_up_; }

  private:
    static constexpr std::size_t batch = FlownBalls::most;
    struct Batch {
        FlownBalls flown;
        std::array<float, batch> x, y, way_x, way_y;
        std::array<std::int32_t, batch> landing, direction;
    };
    void land(const ShotInAir& shot, const BallSet& balls, std::size_t first, std::size_t count, int cell,
              int turn, Batch& out) const;
    int resting_cell(const ShotInAir& shot, const Batch& at, std::size_t i, PlayGrid::Meeting meeting) const;
    bool woods_ahead(const ShotOption& option, int cell, int turn) const;
    float height_of(int cell) const { return grid_.has_heights() ? grid_.height_of_block(cell) : 0.0F; }
    // Adds a share of balls at rest in a cell.
    void deposit(int at, int direction, float share, float replay_cost, ShotSums& sums);
    struct BlockBall;
    struct BlockBatch;
    void land_block(const ShotInAir& shot, const BallSet& balls, std::size_t first, std::size_t count,
                    int first_cell, int turn, BlockBatch& out) const;
    void off_grid(const ShotInAir& shot, const BallSet& balls, std::size_t ball, int first_cell, int turn,
                  const float* replay_cost, std::array<ShotSums, block_cells>& sums);
    // follow() for the balls [from, to).
    template <class Sink>
    void follow_balls(const ShotInAir& shot, const BallSet& balls, std::size_t from, std::size_t to, int cell,
                      int turn, Sink&& sink);
    void lane(const ShotOption& option, const BlockBall& ball, int cell, float replay_cost, ShotSums& sums);
    struct KnownDrop {
        float cost;
        int cell;  // -1: none
    };
    const KnownDrop& known_drop(std::size_t drop);

    const PlayGrid& grid_;
    DropPlaces& drops_;
    const Continuation& next_;
    std::vector<KnownDrop> known_drops_;  // cost NaN: not yet known
    float most_column_, most_row_;
    std::uint64_t looked_up_ = 0;
};

inline int ShotWorth::resting_cell(const ShotInAir& shot, const Batch& at, std::size_t i,
                                   PlayGrid::Meeting meeting) const {
    const float run = at.flown.run(shot, i, meeting.run_kind());
    const int trap = meeting.trap_cells();
    if (trap < PlayGrid::far_away && static_cast<float>(trap) <= run)
        return at.landing[i] + grid_.stride(at.direction[i], trap);
    const float aside = at.flown.aside(i, meeting.run_kind());
    const float x = std::clamp(at.x[i] + run * at.way_x[i] + aside * at.way_y[i], 0.0F, most_column_);
    const float y = std::clamp(at.y[i] + run * at.way_y[i] - aside * at.way_x[i], 0.0F, most_row_);
    return static_cast<std::int32_t>(y) * grid_.columns() + static_cast<std::int32_t>(x);
}

template <class Sink>
void ShotWorth::follow(const ShotOption& option, const BallSet& balls, int cell, int turn, Sink&& sink) {
    follow_balls(shot_in_air(grid_, option, turn), balls, 0, balls.size(), cell, turn, sink);
}

template <class Sink>
void ShotWorth::follow_balls(const ShotInAir& shot, const BallSet& balls, std::size_t from, std::size_t to,
                             int cell, int turn, Sink&& sink) {
    Batch at;
    const ShotOption& option = *shot.option;
    const bool woods_in_front = woods_ahead(option, cell, turn);
    for (std::size_t first = from; first < to; first += batch) {
        const std::size_t count = std::min(batch, to - first);
        land(shot, balls, first, count, cell, turn, at);
        for (std::size_t i = 0; i < count; ++i) {
            const int direction = at.direction[i];
            const float weight = balls.weight[first + i];
            const PlayGrid::Meeting meeting(grid_.meetings(direction)[at.landing[i]]);
            if (woods_in_front && grid_.woods_ahead(direction, cell) < option.stopped_early)
                sink(grid_.woods_behind((direction + travel_directions / 2) % travel_directions, cell),
                     direction, weight);
            else if (meeting.woods_cells() < option.stopped_late && !grid_.is_tall(at.landing[i]))
                sink(grid_.woods_behind(direction, at.landing[i]), direction, weight);
            else
                sink(resting_cell(shot, at, i, meeting), direction, weight);
        }
    }
}

}  // namespace landwidth
