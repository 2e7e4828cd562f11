// Balls played one by one over the lies of a solved grid, by the rules as golfers know them: drawn at random,
// walked along their own straight way in small steps, dropped where a search over all legal places says.
// Knows nothing of the engine's ball sets, its directions of travel or its tables of what a ball meets.
#pragma once

#include <map>
#include <utility>

#include "tests/planner/engine/solved_hole.hpp"

namespace landwidth::fixture {

// Where the ball lands with this pattern, seen from where it is hit.
ShotOffset drawn_shot(const ShotPattern& pattern, CounterRandom& random);

class BallWalk {
  public:
    explicit BallWalk(const SolvedHole& solved)
        : solved_(solved), field_(solved.field), grid_(solved.grid()), constants_(solved.assumptions) {}

    // Where the next stroke is played, and the strokes this one has cost, penalties among them.
    struct Next {
        int cell;
        int strokes;
    };
    // The golfer's choice at an open cell with so many strokes used.
    Next play(int cell, int used, CounterRandom& random);

  private:
    struct Rest {
        Point place;
        Point way;  // of its travel
    };
    Rest rest(const ShotOption& option, Point from, Point aim, CounterRandom& random) const;
    // The first woods on a stretch of the way; negative: none.
    double woods_within(Point from, Point way, double reach_m) const;
    Lie lie_at(Point place) const { return grid_.lie(grid_.cell_at(place)); }
    double run_m(const ShotOption& option, Lie landed) const;
    // The cheapest legal drop for a ball that crossed into a penalty area from this cell; -1: none.
    int drop_cell(int crossing, Lie colour, int used);
    double cost(int cell, int used) const {
        return double{field_.layer(used).cost[static_cast<std::size_t>(cell)]};
    }

    const SolvedHole& solved_;
    const PersonalField& field_;
    const PlayGrid& grid_;
    const EngineAssumptions& constants_;
    std::map<std::pair<int, Lie>, int> drops_;
};

}  // namespace landwidth::fixture
