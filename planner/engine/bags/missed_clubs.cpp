#include "planner/engine/bags/missed_clubs.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <tuple>

namespace landwidth {

namespace {

// Shots with one club from squares of so many cells are taken together.
constexpr int square_cells = 8;
// Squares that see fewer shots a round of the hole do not change a ranking.
constexpr double negligible_mass = 1e-4;

// What choosing from the tee without a club costs more.
double missed_from_tee(const AimSearch& search, std::size_t club) {
    double best = std::numeric_limits<double>::infinity();
    double without = best;
    for (const AimedClub& aimed : search.clubs) {
        const double cost = aimed.outcome.total(search.replay_cost);
        best = std::min(best, cost);
        if (aimed.club != club) without = std::min(without, cost);
    }
    return std::isfinite(without) ? without - best : 0.0;
}

struct Shots {
    double mass = 0.0;
    int cell = -1;  // the one most played from
    double most = 0.0;
};

}  // namespace

std::vector<double> missed_on_hole(HoleStudy& study, const HoleStudy::Options& options,
                                   const Golfer& golfer) {
    std::vector<double> missed(golfer.clubs.size(), 0.0);
    const AimSearch& search = options.search;
    for (std::size_t club = 0; club < missed.size(); ++club)
        if (is_playable(golfer.clubs[club])) missed[club] = missed_from_tee(search, club);

    const PersonalField& field = *study.personal();
    const PlayGrid& grid = field.grid();
    const auto best = std::ranges::min_element(
        search.clubs, {}, [&](const AimedClub& aimed) { return aimed.outcome.total(search.replay_cost); });
    const auto& tee_shots = *options.contenders[static_cast<std::size_t>(best - search.clubs.begin())].shots;
    const auto evaluator = field.evaluator(0);
    ActionSearch& shots = evaluator->search();
    std::map<std::tuple<int, Stance, std::size_t>, Shots> played;
    for (const ScorePaths::Visit& visit : study.visits_after(tee_shots, study.fan().bearing_of(best->ray))) {
        const int square = visit.cell / grid.columns() / square_cells * grid.columns() +
                           visit.cell % grid.columns() / square_cells;
        const ShotOption& option = shots.option(visit.cell, field.action(visit.cell, 0));
        Shots& there = played[{square, shots.stance(visit.cell), option.club}];
        there.mass += visit.mass;
        if (visit.mass > there.most) {
            there.most = visit.mass;
            there.cell = visit.cell;
        }
    }
    for (const auto& [key, there] : played) {
        if (there.mass < negligible_mass) continue;
        const std::size_t club = std::get<2>(key);
        const int cell = there.cell;
        std::vector<Ranked> others = shots.everything(cell, [&](const ShotOption& option) {
            return option.club != club && shots.is_sensible(cell, option);
        });
        if (others.empty())
            others = shots.everything(cell, [&](const ShotOption& option) { return option.club != club; });
        if (others.empty()) continue;
        std::vector<Action> actions;
        for (const Ranked& other : others)
            actions.push_back(other.action);
        const double without =
            double{shots.cost(cell, shots.best_of(cell, actions).action, &ShotOption::value_set)};
        const double with = double{shots.cost(cell, field.action(cell, 0), &ShotOption::value_set)};
        missed[club] += there.mass * std::max(0.0, without - with);
    }
    return missed;
}

}  // namespace landwidth
