// FieldSolver::strokes_from: a hole solved again after a change of the bag.
#include <algorithm>

#include "planner/engine/field/solver_work.hpp"

namespace landwidth {

namespace {

// A new shot that looks worse than the best known one by less than this at a larger block's cell may still be
// the better one elsewhere in the block.
constexpr float worth_a_look = 0.05F;
// New shots of less gain than this to every cell of a block are not taken up.
constexpr float least_gain = 0.002F;
constexpr std::size_t blocks_between_drops = 64;

}  // namespace

std::vector<std::vector<Action>> FieldSolver::found() const {
    std::vector<std::vector<Action>> found;
    for (const LargeBlock& large : large_)
        found.push_back(large.found);
    return found;
}

// What every larger block knows of, in the shots of now; marks those where something may change.
std::vector<char> FieldSolver::look_at_changes(Work& work, const KnownSolution& known,
                                               const MenuMatch& match) {
    std::vector<char> marked(large_.size(), 0);
    for (std::size_t index = 0; index < large_.size(); ++index) {
        LargeBlock& large = large_[index];
        const Stance stance = work.search->stance(large.cell);
        large.found.clear();
        for (const Action& action : known.found[index])
            if (const Action now = match.now(stance, action); now.option >= 0) large.found.push_back(now);
        const bool lost =
            large.found.size() < known.found[index].size() || std::ranges::any_of(large.cells, [&](int cell) {
                return work.layer.action[static_cast<std::size_t>(cell)].option < 0;
            });
        if (lost) {
            large.found.clear();
            for (const Ranked& shot : work.search->everything(large.cell))
                large.found.push_back(shot.action);
            marked[index] = 1;
            continue;
        }
        const std::vector<Ranked> fresh = work.search->everything(large.cell, [&](const ShotOption& option) {
            return match.is_new(stance, option) && work.search->is_sensible(large.cell, option);
        });
        if (fresh.empty()) continue;
        const float best = work.search->cost(large.cell, large.found.front(), &ShotOption::rough_set);
        if (fresh.front().cost > best + worth_a_look) continue;
        marked[index] = 1;
        large.found.insert(large.found.begin(), fresh.front().action);
    }
    return marked;
}

// Whether a shot that is new would gain a cell of the block something; so it is where the block lost one.
bool FieldSolver::may_change(Work& work, const Block& block, std::span<const Action> held,
                             const MenuMatch& match) const {
    Choice known;
    for (const Action& action : held) {
        if (action.option < 0) return true;
        try_shot(work, block, action, &ShotOption::choice_set, known);
    }
    const LargeBlock& large = large_[static_cast<std::size_t>(block.large)];
    for (const Action& action : large.found) {
        if (!match.is_new(block.stance, work.search->option(large.cell, action))) continue;
        const Costs cost = costs(work, block, work.search->re_aimed(large.cell, action, block.middle),
                                 &ShotOption::choice_set);
        for (std::size_t i = 0; i < block_cells; ++i)
            if (block.open[i] && cost[i] < known.best[i].cost - least_gain) return true;
    }
    return false;
}

FieldLayer FieldSolver::strokes_from(const KnownSolution& known, SolveRecord& record) {
    const MenuMatch match(known.menu, ground_.menu);
    Work work{};
    work.layer = known.layer;
    for (const Block& block : blocks_.all())
        for (std::size_t i = 0; i < block_cells; ++i) {
            if (!block.open[i]) continue;
            Action& action = work.layer.action[static_cast<std::size_t>(blocks_.cell_of(block, i))];
            action = match.now(block.stance, action);
        }
    refer_to_itself(work);
    const std::vector<char> marked = look_at_changes(work, known, match);
    for (std::size_t index = 0; index < blocks_.all().size(); ++index) {
        const Block& block = blocks_.all()[index];
        if (!marked[static_cast<std::size_t>(block.large)]) continue;
        if (index % blocks_between_drops == 0) work.worth->refresh();
        std::vector<Action> held = shots_of(work, block);
        if (!may_change(work, block, held, match)) continue;
        std::erase_if(held, [](const Action& action) { return action.option < 0; });
        choose_in_block(work, index, held);
    }
    end_sweep(work);
    settle(work, record);
    record.look_ups += work.worth->looked_up();
    record.cells = blocks_.open_cells();
    return std::move(work.layer);
}

}  // namespace landwidth
