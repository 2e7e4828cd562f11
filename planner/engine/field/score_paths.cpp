#include "planner/engine/field/score_paths.hpp"

#include <algorithm>

namespace landwidth {

namespace {

// Scores from here on are one entry; so late the mass left is nothing a golfer would see.
constexpr int most_strokes = 40;
constexpr double negligible_mass = 1e-8;
constexpr double gathered_mass = 2e-5;
// Cells with less are many, and fewer balls from each do.
constexpr double tiny_mass = 1e-5, small_mass = 3e-4;

}  // namespace

ScorePaths::ScorePaths(const PersonalField& field) : field_(field) {}

ScorePaths::Wave& ScorePaths::wave(int used) {
    const auto index = static_cast<std::size_t>(used);
    if (index >= waves_.size()) waves_.resize(index + 1);
    if (waves_[index].mass.empty())
        waves_[index].mass.assign(static_cast<std::size_t>(field_.grid().cells()), 0.0F);
    return waves_[index];
}

void ScorePaths::add(int used, int cell, double mass) {
    if (used >= most_strokes) {
        shares_.back() += mass;
        return;
    }
    Wave& there = wave(used);
    float& sum = there.mass[static_cast<std::size_t>(cell)];
    if (sum == 0.0F && mass > 0.0) there.cells.push_back(cell);
    sum += static_cast<float>(mass);
}

void ScorePaths::finish(const CloseShares& shares, int used, double mass) {
    for (std::size_t n = 1; n < shares.size(); ++n) {
        const std::size_t strokes = std::min(static_cast<std::size_t>(used) + n, shares_.size() - 1);
        shares_[strokes] += mass * shares[n];
    }
}

PersonalField::Evaluator& ScorePaths::evaluator(int used) {
    const int key = field_.aim().is_strokes() ? 0 : std::min(used, field_.aim().hopeless_from());
    std::unique_ptr<PersonalField::Evaluator>& made = evaluators_[key];
    if (!made) made = field_.evaluator(key);
    return *made;
}

const CloseShares& ScorePaths::close_shares(int cell) {
    const auto [entry, is_new] = close_.try_emplace(cell);
    if (!is_new) return entry->second;
    const PlayGrid& grid = field_.grid();
    const HoleOut& hole_out = field_.game().hole_out();
    if (grid.lie(cell) != Lie::green) {
        entry->second = hole_out.shares(grid.lie(cell), distance(grid.centre(cell), grid.pin()));
        return entry->second;
    }
    const auto spots = grid.spots(cell);
    for (const Point& spot : spots) {
        const CloseShares shares = hole_out.shares(Lie::green, distance(spot, grid.pin()));
        for (std::size_t n = 0; n < shares.size(); ++n)
            entry->second[n] += shares[n] / static_cast<double>(spots.size());
    }
    return entry->second;
}

CloseShares ScorePaths::lost_in_the_grid(int cell) const {
    const double left = double{field_.grid().left_m(cell)};
    const double strokes =
        std::clamp(field_.game().table().strokes(Lie::rough, left), 1.0, most_close_strokes - 1.0);
    const auto below = static_cast<std::size_t>(strokes);
    CloseShares shares{};
    shares[below + 1] = strokes - static_cast<double>(below);
    shares[below] = 1.0 - shares[below + 1];
    return shares;
}

void ScorePaths::play(int used, int cell, double mass) {
    const PlayGrid& grid = field_.grid();
    const Lie here = grid.lie(cell);
    // No cell in play anywhere near: a place the grid cannot see. The table's mean stands for its strokes.
    if (!is_in_play(here)) {
        finish(lost_in_the_grid(cell), used, mass);
        return;
    }
    if (field_.game().hole_out().is_close(grid.lie(cell), distance(grid.centre(cell), grid.pin()))) {
        finish(close_shares(cell), used, mass);
        return;
    }
    visits_.push_back({cell, mass});
    PersonalField::Evaluator& evaluator = this->evaluator(used);
    ShotWorth& worth = evaluator.worth();
    DropPlaces& drops = evaluator.drops();
    const Action action = field_.action(cell, used);
    const Stance stance = evaluator.search().stance(cell);
    const ShotOption& option = evaluator.search().option(cell, action);
    const double stuck = stance == Stance::trees ? double{evaluator.cost().stuck_share()} : 0.0;
    if (stuck > 0.0) add(used + 1, cell, mass * stuck);
    const float replay_cost = evaluator.cost().replay(cell);
    const auto drop = [&](std::size_t index, double share) {
        const int place = worth.drop_cell(index);
        if (place >= 0)
            add(used + 1 + drops.drop(index).penalty, place, share);
        else
            add(used + 2, cell, share);
    };
    const BallSet& balls = mass < tiny_mass    ? option.rough_set
                           : mass < small_mass ? option.choice_set
                                               : option.value_set;
    worth.follow(option, balls, cell, action.turn, [&](int at, int direction, float weight) {
        const double share = mass * (1.0 - stuck) * double{weight};
        if (share <= 0.0) return;
        const int there = grid.standing(at);
        const Lie lie = grid.lie(there);
        if (drops.takes_relief(there)) {
            const std::size_t index = drops.drop_of(there, direction);
            if (worth.drop_cost(index) <= replay_cost)
                drop(index, share);
            else
                add(used + 2, cell, share);
        } else if (lie == Lie::out_of_bounds) {
            add(used + 2, cell, share);
        } else if (lie == Lie::trees) {
            const double lost = field_.game().assumptions().trees_lost_share;
            add(used + 1, there, share * (1.0 - lost));
            if (field_.rules().local_rule_e5)
                drop(drops.drop_for_lost(there), share * lost);
            else
                add(used + 2, cell, share * lost);
        } else {
            add(used + 1, there, share);
        }
    });
}

// Small masses of a block and lie are played from one of its cells: thousands of cells that hardly a ball
// visits are not worth a full look each.
void ScorePaths::gather(Wave& wave) const {
    const PlayGrid& grid = field_.grid();
    std::map<std::pair<int, Lie>, int> first;
    for (const int cell : wave.cells) {
        float& mass = wave.mass[static_cast<std::size_t>(cell)];
        if (double{mass} >= gathered_mass) continue;
        const int block =
            cell / grid.columns() / block_side * grid.columns() + cell % grid.columns() / block_side;
        const int there = first.try_emplace({block, grid.lie(cell)}, cell).first->second;
        if (there == cell) continue;
        wave.mass[static_cast<std::size_t>(there)] += mass;
        mass = 0.0F;
    }
}

ScoreDistribution ScorePaths::from(std::span<const NextPlace> places) {
    shares_.assign(most_strokes + 1, 0.0);
    waves_.clear();
    visits_.clear();
    const HoleOut& hole_out = field_.game().hole_out();
    for (const NextPlace& next : places) {
        const double straight = distance(next.place, field_.grid().pin());
        if (hole_out.is_close(next.lie, straight))
            finish(hole_out.shares(next.lie, straight), next.used, next.share);
        else
            add(next.used, field_.cell_of(next.place, next.lie), next.share);
    }
    for (int used = 0; used < static_cast<int>(waves_.size()); ++used) {
        gather(wave(used));
        for (std::size_t i = 0; i < wave(used).cells.size(); ++i) {
            const int cell = wave(used).cells[i];
            const double mass = double{wave(used).mass[static_cast<std::size_t>(cell)]};
            if (mass > negligible_mass) play(used, cell, mass);
        }
        waves_[static_cast<std::size_t>(used)] = {};
    }
    double all = 0.0;
    for (const double share : shares_)
        all += share;
    for (double& share : shares_)
        share /= all;
    while (shares_.size() > 2 && shares_.back() < negligible_mass) {
        shares_[shares_.size() - 2] += shares_.back();
        shares_.pop_back();
    }
    return {shares_};
}

}  // namespace landwidth
