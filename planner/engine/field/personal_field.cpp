#include "planner/engine/field/personal_field.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <utility>

namespace landwidth {

namespace {

// Cells of the same lie are looked for this far around a place that the grid reads otherwise.
constexpr int nearby_cells = 3;

}  // namespace

GolferGame::GolferGame(const Golfer& golfer, std::shared_ptr<const BagFlights> flights,
                       const EngineAssumptions& assumptions)
    : assumptions_(assumptions),
      flights_(std::move(flights)),
      table_(golfer, assumptions),
      hole_out_(table_, golfer, assumptions),
      menu_(golfer, assumptions.field_step_m, *flights_, assumptions) {}

PersonalField::PersonalField(const GolferGame& game, const Hole& hole, const LieRaster& lies,
                             const ReliefRules& rules, const GolferAim& aim)
    : game_(game),
      line_(hole.line),
      aim_(aim),
      rules_(rules),
      ground_(std::make_shared<const Ground>(
          Ground{PlayGrid(hole, lies, day_over(hole, game.flights().day()), game.assumptions().field_step_m,
                          game.assumptions().field_reach_m,
                          game.menu().longest_run_m(hole.heights != nullptr), game.menu().furthest_stop()),
                 DistanceLeft(hole.line, hole.lies.extent())})) {
    DropPlaces drops(grid(), rules_);
    FieldSolver solver(solver_ground(game_, drops));
    strokes_ = solver.strokes(record_);
    found_ = solver.found();
    if (!aim_.is_strokes()) solve_layers(solver);
}

PersonalField::PersonalField(const PersonalField& base, const GolferGame& changed)
    : game_(changed), line_(base.line_), aim_(base.aim_), rules_(base.rules_), ground_(base.ground_) {
    if (!aim_.is_strokes()) throw std::logic_error("only an aim for strokes can be solved from another bag");
    DropPlaces drops(grid(), rules_);
    FieldSolver solver(solver_ground(game_, drops));
    strokes_ = solver.strokes_from({base.strokes_, base.game_.menu(), base.found_}, record_);
    found_ = solver.found();
    is_as_base_ = true;
    for (int cell = 0; cell < grid().cells() && is_as_base_; ++cell) {
        const auto index = static_cast<std::size_t>(cell);
        is_as_base_ =
            grid().lie(cell) == Lie::teeing_area || strokes_.cost[index] == base.strokes_.cost[index];
    }
}

PersonalField::~PersonalField() = default;

SolverGround PersonalField::solver_ground(const GolferGame& game, DropPlaces& drops) const {
    const EngineAssumptions& a = game.assumptions();
    return {.grid = grid(),
            .drops = drops,
            .menu = game.menu(),
            .hole_out = game.hole_out(),
            .line = line_,
            .lost_share = a.trees_lost_share,
            .stuck_share = a.recovery_stuck_share,
            .local_rule_e5 = rules_.local_rule_e5,
            .residual = a.field_residual};
}

void PersonalField::solve_layers(FieldSolver& solver) {
    hopeless_.cost.assign(static_cast<std::size_t>(grid().cells()), 0.0F);
    layers_.resize(static_cast<std::size_t>(std::max(0, aim_.hopeless_from())));
    // Before the tee shot nothing is asked of the grid.
    for (int used = aim_.hopeless_from() - 1; used >= 1; --used)
        layers_[static_cast<std::size_t>(used)] = solver.layer(
            aim_, used, {nullptr, &layer(used + 1), &layer(used + 2), &layer(used + 3)}, record_);
}

const FieldLayer& PersonalField::layer(int used) const {
    if (aim_.is_strokes()) return strokes_;
    return used < static_cast<int>(layers_.size()) ? layers_[static_cast<std::size_t>(used)] : hopeless_;
}

Action PersonalField::action(int cell, int used) const {
    const bool hopeless = !aim_.is_strokes() && used >= static_cast<int>(layers_.size());
    return (hopeless ? strokes_ : layer(used)).action[static_cast<std::size_t>(cell)];
}

int PersonalField::cell_of(Point place, Lie lie) const {
    const int own = grid().standing(grid().cell_at(place));
    if (grid().lie(own) == lie) return own;
    int best = own;
    // A cell of the lie before one that is merely in play.
    std::pair<int, double> nearest{is_in_play(grid().lie(own)) ? 1 : 2, 0.0};
    for (int row = -nearby_cells; row <= nearby_cells; ++row)
        for (int column = -nearby_cells; column <= nearby_cells; ++column) {
            const int cell = grid().cell_at(place + double(column) * grid().step_right() +
                                            double(row) * grid().step_along());
            const Lie there = grid().lie(cell);
            if (!grid().is_inside(cell) || !is_in_play(there)) continue;
            const std::pair<int, double> away{there == lie ? 0 : 1, distance(grid().centre(cell), place)};
            if (away >= nearest) continue;
            nearest = away;
            best = cell;
        }
    return best;
}

// Between the four cells around a place, those of its lie alone.
float PersonalField::cost_near(Point place, Lie lie, const FieldLayer& layer) const {
    const Point at = grid().coordinates(place);
    const double x = std::floor(at.x - 0.5);
    const double y = std::floor(at.y - 0.5);
    double sum = 0.0;
    double weights = 0.0;
    for (const double row : {y, y + 1.0})
        for (const double column : {x, x + 1.0}) {
            if (column < 0.0 || row < 0.0 || column >= grid().columns() || row >= grid().rows()) continue;
            const int cell = static_cast<int>(row) * grid().columns() + static_cast<int>(column);
            if (grid().lie(cell) != lie || !grid().is_inside(cell)) continue;
            const double weight = (1.0 - std::abs(at.x - 0.5 - column)) * (1.0 - std::abs(at.y - 0.5 - row));
            sum += weight * double{layer.cost[static_cast<std::size_t>(cell)]};
            weights += weight;
        }
    if (weights > 0.0) return static_cast<float>(sum / weights);
    const int cell = cell_of(place, lie);
    const float cost = layer.cost[static_cast<std::size_t>(cell)];
    const Lie other = grid().lie(cell);
    if (other == lie) return cost;
    if (!aim_.is_strokes()) return is_in_play(other) ? cost : 0.0F;
    // A patch smaller than the grid sees: the table tells one lie from another.
    const double left = this->left().from(place);
    const double of_table = game_.table().strokes(lie, left);
    if (!is_in_play(other)) return static_cast<float>(of_table);
    return cost + static_cast<float>(of_table - game_.table().strokes(other, left));
}

StrokesField::Worth PersonalField::worth(Point place, Lie lie, int used) const {
    if (!is_in_play(lie)) throw std::logic_error("a ball out of play has no strokes of its own");
    const double left = this->left().from(place);
    const double straight = distance(place, line_.pin());
    const double already = aim_.is_strokes() ? used : 0.0;
    if (!aim_.is_strokes() && used >= aim_.hopeless_from()) return {0.0, left};
    if (game_.hole_out().is_close(lie, straight))
        return {already + game_.hole_out().cost(lie, straight, aim_, used), left};
    return {already + double{cost_near(place, lie, layer(used))}, left};
}

std::unique_ptr<PersonalField::Evaluator> PersonalField::evaluator(int used) const {
    return evaluator_of(game_, used);
}

std::unique_ptr<PersonalField::Evaluator> PersonalField::evaluator_of(const GolferGame& game,
                                                                      int used) const {
    return std::make_unique<Evaluator>(*this, game, used);
}

PersonalField::Evaluator::Evaluator(const PersonalField& field, const GolferGame& game, int used)
    : drops_(field.grid(), field.rules_) {
    const SolverGround ground = field.solver_ground(game, drops_);
    const bool strokes = field.aim_.is_strokes() || used >= field.aim_.hopeless_from();
    const FieldLayer& one = strokes ? field.strokes_ : field.layer(used + 1);
    const FieldLayer& two = strokes ? field.strokes_ : field.layer(used + 2);
    const FieldLayer& three = strokes ? field.strokes_ : field.layer(used + 3);
    FieldSolver::set_rest(ground, one, next_);
    next_.dropped = {nullptr, two.cost.data(), three.cost.data()};
    next_.per_penalty = strokes ? 1.0F : 0.0F;
    const auto stuck = static_cast<float>(ground.stuck_share);
    cost_ = strokes ? ShotCost::of_strokes(one.cost.data(), stuck)
                    : ShotCost::of_aim(one.cost.data(), two.cost.data(), stuck);
    worth_.emplace(field.grid(), drops_, next_);
    search_.emplace(field.grid(), ground.menu, ground.line, *worth_, *cost_);
    FieldSolver::drop_the_lost(ground, *worth_, one, next_);
}

}  // namespace landwidth
