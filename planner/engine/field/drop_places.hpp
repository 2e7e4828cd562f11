// Where a ball that is out of play on a grid may be dropped: the candidates of every relief option.
//
// Penalty areas by Rule 17.1d(2) and, red ones, (3); out of bounds and lost balls under Model Local Rule E-5
// where it is in force. Stroke and distance is not among them: it refers back to where the shot was played.
// A drop belongs to the place where the ball last crossed the edge, so to a cell and the direction in which
// it arrived. Worked out when first asked for; for one thread.
#pragma once

#include <map>
#include <vector>

#include "planner/engine/field/play_grid.hpp"

namespace landwidth {

struct ReliefRules {
    double club_length_m;
    double back_on_line_reach_m;
    bool local_rule_e5;
};

class DropPlaces {
  public:
    // Keeps a reference to the grid.
    DropPlaces(const PlayGrid& grid, const ReliefRules& rules);

    struct Drop {
        int penalty;             // strokes
        std::vector<int> cells;  // where the ball may be dropped; empty: no such place
    };
    // Whether a ball at rest in this cell is dropped elsewhere by rule (or replayed).
    bool takes_relief(int cell) const { return slot_[static_cast<std::size_t>(cell)] >= 0; }
    // The drop for a ball that came to rest in such a cell travelling in a direction.
    std::size_t drop_of(int cell, int direction);
    // Under E-5, where a ball lost among trees at this cell is dropped.
    std::size_t drop_for_lost(int cell);
    const Drop& drop(std::size_t index) const { return drops_[index]; }
    std::size_t count() const { return drops_.size(); }

  private:
    enum class Rule { yellow, red, e5 };
    std::size_t drop_at(int crossing, Rule rule);
    Drop made(int crossing, Rule rule) const;
    void add_back_on_the_line(int crossing, Drop& drop) const;
    void add_lateral(int crossing, Drop& drop) const;
    void add_fairway(int crossing, Drop& drop) const;
    bool may_drop(int cell) const;

    const PlayGrid& grid_;
    ReliefRules rules_;
    Point pin_;
    std::vector<int> slot_;          // by cell: row of by_direction_, -1: none
    std::vector<int> by_direction_;  // -1: not yet known
    std::map<std::pair<int, Rule>, std::size_t> known_;
    std::vector<Drop> drops_;
};

}  // namespace landwidth
