// Solving a hole backward: what every cell costs and what to play there, by value iteration.
//
// Cells are taken block by block (block_side cells square, one stance) in order of the distance left, so that
// a shot mostly lands where the answer is known already. One cell of every larger block looks at everything
// the golfer can play; the cells of a block choose among what it and its surroundings found and what is near
// those; then the choices are held and the costs swept over until none changes by more than the residual
// asked for.
//
// Cost: linear in the number of cells. Deterministic, one thread.
#pragma once

#include <array>
#include <limits>
#include <span>
#include <vector>

#include "planner/engine/field/action_search.hpp"
#include "planner/engine/field/golfer_aim.hpp"
#include "planner/engine/field/hole_out.hpp"
#include "planner/engine/field/menu_match.hpp"
#include "planner/engine/field/solver_blocks.hpp"

namespace landwidth {

// What a hole is solved from; references stay with the caller.
struct SolverGround {
    const PlayGrid& grid;
    DropPlaces& drops;
    const ShotMenu& menu;
    const HoleOut& hole_out;
    const LineOfPlay& line;
    double lost_share;   // of balls among trees
    double stuck_share;  // of punches out of them
    bool local_rule_e5;
    double residual;
};

// A hole solved for another bag of the same golfer, on the same grid.
struct KnownSolution {
    const FieldLayer& layer;
    const ShotMenu& menu;
    const std::vector<std::vector<Action>>& found;  // as FieldSolver::found
};

class FieldSolver {
  public:
    explicit FieldSolver(const SolverGround& ground);

    // Expected strokes to hole out from every cell.
    FieldLayer strokes(SolveRecord& record);
    // The same, starting from what is known with another bag: looks for better shots among those that are
    // new, and for new ones where those known are gone; all other choices are held. Costs follow what
    // changed.
    FieldLayer strokes_from(const KnownSolution& known, SolveRecord& record);
    // What each larger block found in the search of strokes(), best first.
    std::vector<std::vector<Action>> found() const;
    // Costs of another aim with `used` strokes taken; `after` holds the layers with 1, 2 and 3 strokes more.
    FieldLayer layer(const GolferAim& aim, int used, const std::array<const FieldLayer*, 4>& after,
                     SolveRecord& record);

    // The continuation of a stroke when these are the costs after it; then, under E-5, the lost balls in it.
    static void set_rest(const SolverGround& ground, const FieldLayer& after, Continuation& next);
    static void refresh_outside(const SolverGround& ground, Continuation& next);
    static void drop_the_lost(const SolverGround& ground, ShotWorth& worth, const FieldLayer& after,
                              Continuation& next);

  private:
    using Block = SolverBlock;
    using LargeBlock = LargeSolverBlock;
    struct Work;
    using Costs = std::array<float, block_cells>;

    void start(Work& work, const GolferAim& aim, int used) const;
    void refer_to_itself(Work& work) const;
    void reset_changes(Work& work) const;
    void look_at_everything(Work& work);
    void choose(Work& work);
    void choose_in_block(Work& work, std::size_t index, std::span<const Action> held);
    std::vector<char> look_at_changes(Work& work, const KnownSolution& known, const MenuMatch& match);
    std::vector<Action> new_shots(Work& work, const Block& block, const MenuMatch& match) const;
    void take_up(Work& work, std::size_t index, std::span<const Action> held, const MenuMatch& match) const;
    void settle(Work& work, SolveRecord& record);
    Costs costs(Work& work, const Block& block, Action action, BallSet ShotOption::*balls) const;
    struct Tried {
        Action action;
        Costs costs;
    };
    // The best shot of every cell of a block so far, and of the block as a whole.
    struct Choice {
        Choice() { best.fill({{}, std::numeric_limits<float>::infinity()}); }
        std::array<Ranked, block_cells> best;
        Ranked whole{{}, std::numeric_limits<float>::infinity()};
        std::vector<Tried> tried;
    };
    void try_shot(Work& work, const Block& block, Action action, BallSet ShotOption::*balls,
                  Choice& choice) const;
    std::vector<Action> covering(const Block& block, const Choice& choice, float may_lose) const;
    void take(Work& work, const Block& block, std::span<const Action> shots) const;
    std::vector<Action> shots_of(const Work& work, const Block& block) const;
    void update(Work& work, int cell, float cost) const;
    double exposure(Work& work, const Block& block) const;
    double value_again(Work& work, const Block& block) const;
    double mean_on_green(int cell, const GolferAim& aim, int used) const;
    void end_sweep(Work& work) const;

    SolverGround ground_;
    SolverBlocks blocks_;
    std::vector<LargeBlock> large_;    // with what they find
    std::vector<int> relief_squares_;  // with cells whose balls are dropped elsewhere
};

}  // namespace landwidth
