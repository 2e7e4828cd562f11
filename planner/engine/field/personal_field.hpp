// The golfer's own strokes field: every place of the hole valued by the golfer's own bag.
//
// V(x) = min over clubs and aims of 1 + E[V(next)], solved backward from the hole on a grid
// (field_solver.hpp); putts and the short game by table (hole_out.hpp). Other aims than the mean depend on
// the strokes used: one layer for each number of them.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "planner/engine/field/field_solver.hpp"
#include "planner/engine/strokes_field.hpp"

namespace landwidth {

// What does not change from hole to hole; made once.
class GolferGame {
  public:
    // Keeps no reference to the golfer. Throws InputError when no club but the putter has a pattern.
    GolferGame(const Golfer& golfer, std::shared_ptr<const BagFlights> flights,
               const EngineAssumptions& assumptions);

    const EngineAssumptions& assumptions() const { return assumptions_; }
    const BagFlights& flights() const { return *flights_; }
    const StrokesByDistance& table() const { return table_; }
    const HoleOut& hole_out() const { return hole_out_; }
    const ShotMenu& menu() const { return menu_; }

  private:
    EngineAssumptions assumptions_;
    std::shared_ptr<const BagFlights> flights_;
    StrokesByDistance table_;
    HoleOut hole_out_;
    ShotMenu menu_;
};

class PersonalField final : public StrokesField {
  public:
    // Solves. Keeps references to `game`, and to `hole` for its line.
    PersonalField(const GolferGame& game, const Hole& hole, const LieRaster& lies, const ReliefRules& rules,
                  const GolferAim& aim);
    // The same hole when other clubs are in the bag: `changed` is a game of the profile of `base` with other
    // in_bag marks. Solved from `base`: see FieldSolver::strokes_from. Aim for strokes only, else
    // std::logic_error. Keeps a reference to `changed`, none to `base`.
    PersonalField(const PersonalField& base, const GolferGame& changed);
    ~PersonalField() override;

    // On other aims than strokes: used >= 1.
    Worth worth(Point place, Lie lie, int used) const override;

    const PlayGrid& grid() const { return ground_->grid; }
    const GolferGame& game() const { return game_; }
    const GolferAim& aim() const { return aim_; }
    const ReliefRules& rules() const { return rules_; }
    const DistanceLeft& left() const { return ground_->left; }
    const SolveRecord& record() const { return record_; }
    // Of a changed bag: every place costs what it costs with the bag of `base`, but for places to tee off
    // from.
    bool is_as_base() const { return is_as_base_; }
    // The cell of this lie nearest to a place; the place's own cell where none is near.
    int cell_of(Point place, Lie lie) const;
    // Costs and choices with so many strokes used; the layers of other aims end where nothing can be gained,
    // and golfers then play for the fewest strokes.
    const FieldLayer& strokes_layer() const { return strokes_; }
    const FieldLayer& layer(int used) const;
    Action action(int cell, int used) const;

    // A shot evaluator over this field with `used` strokes taken; for one thread, and not longer than the
    // field.
    class Evaluator;
    std::unique_ptr<Evaluator> evaluator(int used) const;
    // The same with the shots of another game over the costs of this field.
    std::unique_ptr<Evaluator> evaluator_of(const GolferGame& game, int used) const;

  private:
    SolverGround solver_ground(const GolferGame& game, DropPlaces& drops) const;
    void solve_layers(FieldSolver& solver);
    float cost_near(Point place, Lie lie, const FieldLayer& layer) const;

    // What no bag changes.
    struct Ground {
        PlayGrid grid;
        DistanceLeft left;
    };

    const GolferGame& game_;
    const LineOfPlay& line_;
    GolferAim aim_;
    ReliefRules rules_;
    std::shared_ptr<const Ground> ground_;
    FieldLayer strokes_;
    std::vector<std::vector<Action>> found_;  // by the search for strokes_
    bool is_as_base_ = false;
    std::vector<FieldLayer> layers_;  // by strokes used; empty when aiming for strokes
    FieldLayer hopeless_;             // all costs 0
    SolveRecord record_;
};

class PersonalField::Evaluator {
  public:
    Evaluator(const PersonalField& field, const GolferGame& game, int used);

    ActionSearch& search() { return *search_; }
    ShotWorth& worth() { return *worth_; }
    DropPlaces& drops() { return drops_; }
    const ShotCost& cost() const { return *cost_; }

  private:
    DropPlaces drops_;
    Continuation next_;
    std::optional<ShotCost> cost_;
    std::optional<ShotWorth> worth_;
    std::optional<ActionSearch> search_;
};

}  // namespace landwidth
