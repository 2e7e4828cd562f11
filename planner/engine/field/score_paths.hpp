// The score on a hole as a distribution: dynamic programming forward over the solved choices.
//
// The mass of balls is carried from cell to cell, stroke by stroke, until all are holed out; nothing is drawn
// at random. Putts and the short game end a path with the shares of hole_out.hpp.
#pragma once

#include <map>
#include <memory>
#include <span>

#include "planner/engine/field/personal_field.hpp"
#include "planner/engine/score_distribution.hpp"
#include "planner/engine/tee_fan.hpp"

namespace landwidth {

class ScorePaths {
  public:
    // Keeps a reference. For one thread.
    explicit ScorePaths(const PersonalField& field);

    // From where the balls of a tee shot are played next.
    ScoreDistribution from(std::span<const NextPlace> places);

    // Where full shots were played on the way, by cell, since the last from(); a cell may stand there more
    // than once. `mass`: how many a round of the hole, on average.
    struct Visit {
        int cell;
        double mass;
    };
    const std::vector<Visit>& visits() const { return visits_; }

  private:
    // Mass by cell, and the cells that have any.
    struct Wave {
        std::vector<float> mass;
        std::vector<int> cells;
    };
    Wave& wave(int used);
    void gather(Wave& wave) const;
    void add(int used, int cell, double mass);
    void finish(const CloseShares& shares, int used, double mass);
    void play(int used, int cell, double mass);
    const CloseShares& close_shares(int cell);
    CloseShares lost_in_the_grid(int cell) const;
    PersonalField::Evaluator& evaluator(int used);

    const PersonalField& field_;
    std::map<int, std::unique_ptr<PersonalField::Evaluator>> evaluators_;
    std::map<int, CloseShares> close_;
    std::vector<Wave> waves_;  // by strokes used
    std::vector<double> shares_;
    std::vector<Visit> visits_;
};

}  // namespace landwidth
