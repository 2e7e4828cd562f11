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
            // What is left of the best few, and what is near it, replaces a lost shot; all is looked at where
            // nothing is left.
            marked[index] = 1;
            if (large.found.empty())
                for (const Ranked& shot : work.search->everything(large.cell))
                    large.found.push_back(shot.action);
        }
        const std::vector<Ranked> fresh = work.search->everything(large.cell, [&](const ShotOption& option) {
            return match.is_new(stance, option) && work.search->is_sensible(large.cell, option);
        });
        if (fresh.empty()) continue;
        const float best = work.search->cost(large.cell, large.found.front(), &ShotOption::rough_set);
        if (fresh.front().cost > best + worth_a_look) continue;
        marked[index] = 1;
        large.found.push_back(fresh.front().action);
    }
    return marked;
}

// The new shots that a block may take up: what its surroundings found of them, seen from the block.
std::vector<Action> FieldSolver::new_shots(Work& work, const Block& block, const MenuMatch& match) const {
    std::vector<Action> shots;
    const auto add_from = [&](const LargeBlock& large) {
        for (const Action& action : large.found)
            if (match.is_new(block.stance, work.search->option(large.cell, action)))
                work.search->add_unlike(shots, block.middle,
                                        work.search->re_aimed(large.cell, action, block.middle));
    };
    const LargeBlock& own = large_[static_cast<std::size_t>(block.large)];
    add_from(own);
    for (const int beside : own.beside)
        if (beside >= 0) add_from(large_[static_cast<std::size_t>(beside)]);
    return shots;
}

// A block that has lost no shot changes by new shots alone: what a second search among the known ones would
// find has nothing to do with the change of the bag.
void FieldSolver::take_up(Work& work, std::size_t index, std::span<const Action> held,
                          const MenuMatch& match) const {
    const Block& block = blocks_.all()[index];
    const std::vector<Action> fresh = new_shots(work, block, match);
    if (fresh.empty()) return;
    Choice known;
    for (const Action& action : held)
        try_shot(work, block, action, &ShotOption::choice_set, known);
    Choice choice = known;
    Choice news;
    const auto try_new = [&](const Action& action) {
        if (!match.is_new(block.stance, work.search->option(block.middle, action))) return;
        try_shot(work, block, action, &ShotOption::choice_set, choice);
        try_shot(work, block, action, &ShotOption::choice_set, news);
    };
    for (const Action& action : fresh)
        try_new(action);
    const auto gains = [&](std::size_t i) {
        return block.open[i] && choice.best[i].cost < known.best[i].cost - least_gain;
    };
    bool any = false;
    for (std::size_t i = 0; i < block_cells; ++i)
        any = any || gains(i);
    if (!any) return;
    for (const Action& action : work.search->beside(block.middle, news.whole.action))
        try_new(action);
    std::vector<Action> best(held.begin(), held.end());
    for (const Action& action : covering(block, choice, least_gain))
        if (std::ranges::find(best, action) == best.end()) best.push_back(action);
    take(work, block, best);
    work.exposed[index] = exposure(work, block);
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
        const std::size_t known_shots = held.size();
        std::erase_if(held, [](const Action& action) { return action.option < 0; });
        if (held.size() < known_shots)
            choose_in_block(work, index, held);
        else
            take_up(work, index, held, match);
    }
    end_sweep(work);
    settle(work, record);
    record.look_ups += work.worth->looked_up();
    record.cells = blocks_.open_cells();
    return std::move(work.layer);
}

}  // namespace landwidth
