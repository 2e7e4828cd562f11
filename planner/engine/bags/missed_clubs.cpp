#include "planner/engine/bags/missed_clubs.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "planner/engine/bags/played_shots.hpp"

namespace landwidth {

namespace {

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

}  // namespace

std::vector<double> missed_on_hole(HoleStudy& study, const HoleStudy::Options& options,
                                   const Golfer& golfer) {
    std::vector<double> missed(golfer.clubs.size(), 0.0);
    const AimSearch& search = options.search;
    for (std::size_t club = 0; club < missed.size(); ++club)
        if (is_playable(golfer.clubs[club])) missed[club] = missed_from_tee(search, club);

    const PersonalField& field = *study.personal();
    const auto best = std::ranges::min_element(
        search.clubs, {}, [&](const AimedClub& aimed) { return aimed.outcome.total(search.replay_cost); });
    const auto& tee_shots = *options.contenders[static_cast<std::size_t>(best - search.clubs.begin())].shots;
    const auto evaluator = field.evaluator(0);
    ActionSearch& shots = evaluator->search();
    for (const PlayedShots& played : played_shots(study, tee_shots, study.fan().bearing_of(best->ray))) {
        const auto is_other = [&](const ShotOption& option) { return option.club != played.club; };
        std::vector<Ranked> others = shots.everything(played.cell, [&](const ShotOption& option) {
            return is_other(option) && shots.is_sensible(played.cell, option);
        });
        if (others.empty()) others = shots.everything(played.cell, is_other);
        if (others.empty()) continue;
        std::vector<Action> actions;
        for (const Ranked& other : others)
            actions.push_back(other.action);
        const Action next_best = shots.best_of(played.cell, actions).action;
        const double without = double{shots.cost(played.cell, next_best, &ShotOption::value_set)};
        const double with = double{shots.cost(played.cell, played.action, &ShotOption::value_set)};
        missed[played.club] += played.mass * std::max(0.0, without - with);
    }
    return missed;
}

}  // namespace landwidth
