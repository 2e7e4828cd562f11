#include "planner/engine/field/field_solver.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/units.hpp"
#include "planner/engine/field/solver_work.hpp"

namespace landwidth {

namespace {

// Of the shots looked at, those are valued that between them leave no cell worse off than by this.
constexpr float most_lost_at_first = 0.03F, most_lost = 0.008F;
constexpr std::size_t most_covering = 8;
// Looks around the shot that suits a block best, again from a better one.
constexpr int most_rounds = 2;
constexpr int most_sweeps = 60;
// Drops are looked up anew so often on a sweep: where a ball is dropped has mostly just been valued.
constexpr std::size_t blocks_between_drops = 64;
// Blocks exposed to changes of less than this share of the residual asked for are left out of a sweep.
constexpr double skipped_share = 0.01;

}  // namespace

FieldSolver::FieldSolver(const SolverGround& ground)
    : ground_(ground), blocks_(ground.grid, ground.hole_out), large_(blocks_.large()) {
    const PlayGrid& grid = ground_.grid;
    for (int cell = 0; cell < grid.cells(); ++cell) {
        const bool relief =
            ground_.drops.takes_relief(cell) || (ground_.local_rule_e5 && grid.lie(cell) == Lie::trees);
        if (relief) relief_squares_.push_back(blocks_.square_of(cell));
    }
    std::ranges::sort(relief_squares_);
    relief_squares_.erase(std::unique(relief_squares_.begin(), relief_squares_.end()), relief_squares_.end());
}

void FieldSolver::set_rest(const SolverGround& ground, const FieldLayer& after, Continuation& next) {
    const PlayGrid& grid = ground.grid;
    const auto count = static_cast<std::size_t>(grid.cells());
    next.cost.assign(count + block_side, 0.0F);
    next.replay.assign(count + block_side, 0.0F);
    const auto lost = static_cast<float>(ground.lost_share);
    for (std::size_t cell = 0; cell < count; ++cell) {
        const Lie lie = grid.lie(static_cast<int>(cell));
        if (ground.drops.takes_relief(static_cast<int>(cell))) {
            next.replay[cell] = takes_relief;
        } else if (lie == Lie::out_of_bounds) {
            next.replay[cell] = 1.0F;
        } else if (lie == Lie::trees) {
            next.cost[cell] = (1.0F - lost) * after.cost[cell];
            next.replay[cell] = lost;
        } else {
            next.cost[cell] = after.cost[cell];
        }
    }
    refresh_outside(ground, next);
    next.four.resize(count);
    for (std::size_t cell = 0; cell < count; ++cell) {
        const auto [least, most] = std::minmax_element(&next.replay[cell], &next.replay[cell] + block_side);
        next.four[cell] = *least < 0.0F  ? Continuation::Four::some_relief
                          : *most > 0.0F ? Continuation::Four::some_replay
                                         : Continuation::Four::no_replay;
    }
}

void FieldSolver::refresh_outside(const SolverGround& ground, Continuation& next) {
    for (const PlayGrid::Outside& out : ground.grid.outside()) {
        next.cost[static_cast<std::size_t>(out.cell)] = next.cost[static_cast<std::size_t>(out.stands_for)];
        next.replay[static_cast<std::size_t>(out.cell)] =
            next.replay[static_cast<std::size_t>(out.stands_for)];
    }
}

// Under Model Local Rule E-5 a ball lost among trees is dropped and not replayed.
void FieldSolver::drop_the_lost(const SolverGround& ground, ShotWorth& worth, const FieldLayer& after,
                                Continuation& next) {
    if (!ground.local_rule_e5) return;
    const auto lost = static_cast<float>(ground.lost_share);
    for (int cell = 0; cell < ground.grid.cells(); ++cell) {
        if (ground.grid.lie(cell) != Lie::trees || !ground.grid.is_inside(cell)) continue;
        const float dropped = worth.drop_cost(ground.drops.drop_for_lost(cell));
        if (!std::isfinite(dropped)) continue;
        next.cost[static_cast<std::size_t>(cell)] =
            (1.0F - lost) * after.cost[static_cast<std::size_t>(cell)] + lost * dropped;
        next.replay[static_cast<std::size_t>(cell)] = 0.0F;
    }
    refresh_outside(ground, next);
}

void FieldSolver::start(Work& work, const GolferAim& aim, int used) const {
    const PlayGrid& grid = ground_.grid;
    const auto count = static_cast<std::size_t>(grid.cells());
    work.layer.cost.assign(count, 0.0F);
    work.layer.action.assign(count, Action{});
    for (int cell = 0; cell < grid.cells(); ++cell) {
        const Lie lie = grid.lie(cell);
        if (!is_in_play(lie)) continue;
        const double straight = distance(grid.centre(cell), grid.pin());
        const bool close = ground_.hole_out.is_close(lie, straight);
        const double left = close ? straight : double{grid.left_m(cell)};
        float& cost = work.layer.cost[static_cast<std::size_t>(cell)];
        // Places further off start from the table: a first guess, and the shape within a block.
        if (!close && !aim.is_strokes()) continue;
        cost = static_cast<float>(lie == Lie::green ? mean_on_green(cell, aim, used)
                                                    : ground_.hole_out.cost(lie, left, aim, used));
    }
}

// Putts rise steeply beside the hole: the mean over the cell, not its centre's.
double FieldSolver::mean_on_green(int cell, const GolferAim& aim, int used) const {
    double sum = 0.0;
    const auto spots = ground_.grid.spots(cell);
    for (const Point& spot : spots)
        sum += ground_.hole_out.cost(Lie::green, distance(spot, ground_.grid.pin()), aim, used);
    return sum / static_cast<double>(spots.size());
}

void FieldSolver::update(Work& work, int cell, float cost) const {
    float& own = work.layer.cost[static_cast<std::size_t>(cell)];
    const float change = cost - own;
    own = cost;
    if (!work.refers_to_itself) return;
    float& rest = work.next.cost[static_cast<std::size_t>(cell)];
    if (ground_.grid.lie(cell) == Lie::trees)
        rest += (1.0F - static_cast<float>(ground_.lost_share)) * change;  // what the lost cost stays
    else
        rest = cost;
}

void FieldSolver::end_sweep(Work& work) const {
    if (!work.refers_to_itself) return;
    work.worth->refresh();
    // Drops lie elsewhere than the balls that take them.
    double most = 0.0;
    for (std::size_t drop = 0; drop < ground_.drops.count(); ++drop) {
        const float cost = work.worth->drop_cost(drop);
        if (drop >= work.drop_costs.size()) work.drop_costs.push_back(cost);
        if (std::isfinite(cost)) most = std::max(most, double{std::abs(cost - work.drop_costs[drop])});
        work.drop_costs[drop] = cost;
    }
    for (const int square : relief_squares_)
        work.changes[static_cast<std::size_t>(square)] += most;
    if (ground_.local_rule_e5)
        drop_the_lost(ground_, *work.worth, work.layer, work.next);
    else
        refresh_outside(ground_, work.next);
}

// A first pass over the large blocks alone: what they find, and about what their cells cost.
void FieldSolver::look_at_everything(Work& work) {
    for (LargeBlock& large : large_) {
        const std::vector<Ranked> found = work.search->everything(large.cell);
        large.found.clear();
        for (const Ranked& shot : found)
            large.found.push_back(shot.action);
        // The cells take the representative's cost, shaped as the first guess was.
        const float shift = found.front().cost - work.layer.cost[static_cast<std::size_t>(large.cell)];
        for (const int cell : large.cells)
            update(work, cell, work.layer.cost[static_cast<std::size_t>(cell)] + shift);
    }
    end_sweep(work);
}

FieldSolver::Costs FieldSolver::costs(Work& work, const Block& block, Action action,
                                      BallSet ShotOption::*balls) const {
    const ShotOption& option = ground_.menu.options(block.stance)[static_cast<std::size_t>(action.option)];
    Costs replay{};
    for (std::size_t i = 0; i < block_cells; ++i)
        if (block.open[i]) replay[i] = work.cost->replay(blocks_.cell_of(block, i));
    std::array<ShotSums, block_cells> sums;
    work.worth->over_block(option, option.*balls, block.first_cell, action.turn, replay.data(), sums);
    Costs result{};
    for (std::size_t i = 0; i < block_cells; ++i)
        if (block.open[i]) result[i] = work.cost->of(sums[i], block.stance, blocks_.cell_of(block, i));
    return result;
}

void FieldSolver::choose(Work& work) {
    for (std::size_t index = 0; index < blocks_.all().size(); ++index) {
        if (index % blocks_between_drops == 0) work.worth->refresh();
        choose_in_block(work, index, {});
    }
    end_sweep(work);
}

// Among what the surroundings found, what is near the best of that, and what the block holds already.
void FieldSolver::choose_in_block(Work& work, std::size_t index, std::span<const Action> held) {
    const Block& block = blocks_.all()[index];
    const LargeBlock& large = large_[static_cast<std::size_t>(block.large)];
    std::vector<Action> shots;
    for (const Action& action : large.found)
        work.search->add_unlike(shots, block.middle, work.search->re_aimed(large.cell, action, block.middle));
    for (const int beside : large.beside) {
        if (beside < 0) continue;
        const LargeBlock& other = large_[static_cast<std::size_t>(beside)];
        work.search->add_unlike(shots, block.middle,
                                work.search->re_aimed(other.cell, other.found.front(), block.middle));
    }
    // What suits the block as a whole, then everything near that.
    Choice first_look;
    for (const Action& action : shots)
        try_shot(work, block, action, &ShotOption::rough_set, first_look);
    Choice choice;
    for (const Action& action : covering(block, first_look, most_lost_at_first))
        try_shot(work, block, action, &ShotOption::choice_set, choice);
    for (const Action& action : held)
        try_shot(work, block, action, &ShotOption::choice_set, choice);
    for (int round = 0; round < most_rounds; ++round) {
        const Ranked whole = choice.whole;
        for (const Action& action : work.search->beside(block.middle, whole.action))
            if (round == 0 || action.option == whole.action.option)
                try_shot(work, block, action, &ShotOption::choice_set, choice);
        if (choice.whole.action == whole.action) break;
    }
    std::vector<Action> best = covering(block, choice, most_lost);
    for (const Action& action : held)
        if (std::ranges::find(best, action) == best.end()) best.push_back(action);
    take(work, block, best);
    work.exposed[index] = exposure(work, block);
}

void FieldSolver::try_shot(Work& work, const Block& block, Action action, BallSet ShotOption::*balls,
                           Choice& choice) const {
    const Costs cost = costs(work, block, action, balls);
    float sum = 0.0F;
    for (std::size_t i = 0; i < block_cells; ++i) {
        if (!block.open[i]) continue;
        sum += cost[i];
        if (cost[i] < choice.best[i].cost) choice.best[i] = {action, cost[i]};
    }
    if (sum < choice.whole.cost) choice.whole = {action, sum};
    choice.tried.push_back({action, cost});
}

// The cells of a block differ in the shot that suits them, here little, there (close to the hole, beside
// woods) much. First the shot best for all, then always the one best for the cell that has lost most.
std::vector<Action> FieldSolver::covering(const Block& block, const Choice& choice, float may_lose) const {
    std::vector<Action> actions;
    Costs current{};
    const auto add = [&](const Tried& tried) {
        for (std::size_t i = 0; i < block_cells; ++i)
            current[i] = actions.empty() ? tried.costs[i] : std::min(current[i], tried.costs[i]);
        actions.push_back(tried.action);
    };
    const auto tried_as = [&](Action action) {
        return *std::ranges::find(choice.tried, action, &Tried::action);
    };
    add(tried_as(choice.whole.action));
    while (actions.size() < most_covering) {
        std::size_t worst = 0;
        float lost = 0.0F;
        for (std::size_t i = 0; i < block_cells; ++i)
            if (block.open[i] && current[i] - choice.best[i].cost > lost) {
                lost = current[i] - choice.best[i].cost;
                worst = i;
            }
        if (lost <= may_lose) break;
        add(tried_as(choice.best[worst].action));
    }
    return actions;
}

// The cells take the cheapest of these shots, now valued with all balls.
void FieldSolver::take(Work& work, const Block& block, std::span<const Action> shots) const {
    std::array<Ranked, block_cells> best;
    best.fill({{}, std::numeric_limits<float>::infinity()});
    for (const Action& action : shots) {
        const Costs cost = costs(work, block, action, &ShotOption::value_set);
        for (std::size_t i = 0; i < block_cells; ++i)
            if (block.open[i] && cost[i] < best[i].cost) best[i] = {action, cost[i]};
    }
    double most = 0.0;
    for (std::size_t i = 0; i < block_cells; ++i) {
        if (!block.open[i]) continue;
        most = std::max(
            most, double{std::abs(best[i].cost -
                                  work.layer.cost[static_cast<std::size_t>(blocks_.cell_of(block, i))])});
        work.layer.action[static_cast<std::size_t>(blocks_.cell_of(block, i))] = best[i].action;
        update(work, blocks_.cell_of(block, i), best[i].cost);
    }
    work.changes[static_cast<std::size_t>(block.square)] += most;
}

std::vector<Action> FieldSolver::shots_of(const Work& work, const Block& block) const {
    std::vector<Action> shots;
    for (std::size_t i = 0; i < block_cells; ++i) {
        if (!block.open[i]) continue;
        const Action action = work.layer.action[static_cast<std::size_t>(blocks_.cell_of(block, i))];
        if (std::ranges::find(shots, action) == shots.end()) shots.push_back(action);
    }
    return shots;
}

// How much the balls of a block's shots have to do with changes so far: differences of it between two moments
// are about what a new valuation would change.
double FieldSolver::exposure(Work& work, const Block& block) const {
    double sum = 0.0;
    const Action action = work.layer.action[static_cast<std::size_t>(block.middle)];
    const ShotOption& option = work.search->option(block.middle, action);
    work.worth->follow(option, option.choice_set, block.middle, action.turn, [&](int at, int, float share) {
        sum += double{share} * work.changes[static_cast<std::size_t>(blocks_.square_of(at))];
    });
    return sum;
}

double FieldSolver::value_again(Work& work, const Block& block) const {
    Costs now{};
    for (const Action& action : shots_of(work, block)) {
        const Costs cost = costs(work, block, action, &ShotOption::value_set);
        for (std::size_t i = 0; i < block_cells; ++i)
            if (block.open[i] &&
                work.layer.action[static_cast<std::size_t>(blocks_.cell_of(block, i))] == action)
                now[i] = cost[i];
    }
    double most = 0.0;
    for (std::size_t i = 0; i < block_cells; ++i) {
        if (!block.open[i]) continue;
        const int cell = blocks_.cell_of(block, i);
        most = std::max(most, double{std::abs(now[i] - work.layer.cost[static_cast<std::size_t>(cell)])});
        update(work, cell, now[i]);
    }
    work.changes[static_cast<std::size_t>(block.square)] += most;
    return most;
}

// Sweeps over what has to do with changes, until the largest new one is small enough.
void FieldSolver::settle(Work& work, SolveRecord& record) {
    do {
        record.residual = 0.0;
        for (std::size_t index = 0; index < blocks_.all().size(); ++index) {
            const Block& block = blocks_.all()[index];
            if (index % blocks_between_drops == 0) work.worth->refresh();
            const double exposed = exposure(work, block);
            if (exposed - work.exposed[index] < skipped_share * ground_.residual) continue;
            work.exposed[index] = exposed;
            record.residual = std::max(record.residual, value_again(work, block));
        }
        end_sweep(work);
        ++record.sweeps;
    } while (record.residual > ground_.residual && record.sweeps < most_sweeps);
}

// Once the first costs are there: makes the layer its own continuation.
void FieldSolver::refer_to_itself(Work& work) const {
    work.refers_to_itself = true;
    reset_changes(work);
    set_rest(ground_, work.layer, work.next);
    work.next.dropped = {nullptr, work.layer.cost.data(), work.layer.cost.data()};
    work.next.per_penalty = 1.0F;
    work.cost = ShotCost::of_strokes(work.layer.cost.data(), static_cast<float>(ground_.stuck_share));
    work.worth.emplace(ground_.grid, ground_.drops, work.next);
    work.search.emplace(ground_.grid, ground_.menu, ground_.line, *work.worth, *work.cost);
    end_sweep(work);
}

void FieldSolver::reset_changes(Work& work) const {
    work.changes.assign(static_cast<std::size_t>(ground_.grid.cells()) / block_cells, 0.0);
    work.exposed.assign(blocks_.all().size(), 0.0);
}

FieldLayer FieldSolver::strokes(SolveRecord& record) {
    Work work{};
    start(work, GolferAim(AimFor::strokes, 0, 0), 0);
    refer_to_itself(work);
    look_at_everything(work);
    choose(work);
    settle(work, record);
    record.look_ups += work.worth->looked_up();
    record.cells = blocks_.open_cells();
    return std::move(work.layer);
}

FieldLayer FieldSolver::layer(const GolferAim& aim, int used, const std::array<const FieldLayer*, 4>& after,
                              SolveRecord& record) {
    Work work{};
    work.refers_to_itself = false;
    start(work, aim, used);
    reset_changes(work);
    set_rest(ground_, *after[1], work.next);
    work.next.dropped = {nullptr, after[2]->cost.data(), after[3]->cost.data()};
    work.cost = ShotCost::of_aim(after[1]->cost.data(), after[2]->cost.data(),
                                 static_cast<float>(ground_.stuck_share));
    work.worth.emplace(ground_.grid, ground_.drops, work.next);
    work.search.emplace(ground_.grid, ground_.menu, ground_.line, *work.worth, *work.cost);
    drop_the_lost(ground_, *work.worth, *after[1], work.next);
    look_at_everything(work);
    choose(work);
    record.look_ups += work.worth->looked_up();
    return std::move(work.layer);
}

}  // namespace landwidth
