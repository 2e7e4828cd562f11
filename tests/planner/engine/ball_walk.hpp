// Balls played one by one over the lies of a solved grid, by the rules as golfers know them: drawn at random,
// walked along their own straight way in small steps, dropped where a search over all legal places says.
// Knows nothing of the engine's ball sets, its directions of travel, its tables of what a ball meets or of
// how balls fly in the wind. What it shares with the field is the field's own rule for trees: from how near
// they stop a shot at either end (ShotOption::stopped_early and stopped_late), by how much of the sky they
// hide.
#pragma once

#include <map>
#include <optional>
#include <utility>

#include "tests/planner/engine/day_balls.hpp"
#include "tests/planner/engine/solved_hole.hpp"

namespace landwidth::fixture {

// Where the ball lands with this pattern, seen from where it is hit.
ShotOffset drawn_shot(const ShotPattern& pattern, CounterRandom& random);

class BallWalk {
  public:
    explicit BallWalk(const SolvedHole& solved)
        : solved_(solved),
          field_(solved.field),
          grid_(solved.grid()),
          constants_(solved.assumptions),
          day_(day_over(solved.hole, solved.day)) {}

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
    Rest rest(const ShotOption& option, Stance stance, Point from, double aim, CounterRandom& random);
    // The first trees on the way from a place that hide as much of its sky as trees of the usual height less
    // than `cells` away.
    std::optional<Point> hidden_by(Point place, Point way, unsigned cells) const;
    Lie lie_at(Point place) const { return grid_.lie(grid_.cell_at(place)); }
    double run_share(Lie landed) const;
    double ground_m(Point place) const { return day_.heights != nullptr ? day_.heights->at(place) : 0.0; }
    // Where a ball comes down, and how far it then runs on fairway.
    struct Landing {
        Point place;
        Point way;
        double run_m, aside_m;
    };
    Landing landing(const ShotOption& option, Stance stance, Point from, double aim, const ShotOffset& shot);
    const DayBalls& balls_of(const ShotOption& option, Stance stance);
    // The cheapest legal drop for a ball that crossed into a penalty area from this cell; -1: none.
    int drop_cell(int crossing, Lie colour, int used);
    double cost(int cell, int used) const {
        return double{field_.layer(used).cost[static_cast<std::size_t>(cell)]};
    }

    const SolvedHole& solved_;
    const PersonalField& field_;
    const PlayGrid& grid_;
    const EngineAssumptions& constants_;
    HoleDay day_;
    std::map<const ShotOption*, DayBalls> balls_;
    std::map<std::pair<int, Lie>, int> drops_;
};

}  // namespace landwidth::fixture
