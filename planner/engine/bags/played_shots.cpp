#include "planner/engine/bags/played_shots.hpp"

#include <map>
#include <tuple>

namespace landwidth {

namespace {

// Squares of so many cells.
constexpr int square_cells = 8;
// What sees fewer shots a round of the hole changes nothing that is shown.
constexpr double negligible_mass = 1e-4;

}  // namespace

std::vector<PlayedShots> played_shots(HoleStudy& study, const ClubShots& tee_shots, double aim) {
    const PersonalField& field = *study.personal();
    const PlayGrid& grid = field.grid();
    const auto evaluator = field.evaluator(0);
    const ActionSearch& search = evaluator->search();
    struct Gathered {
        PlayedShots shots;
        double most;
    };
    std::map<std::tuple<int, Stance, int>, Gathered> gathered;
    for (const ScorePaths::Visit& visit : study.visits_after(tee_shots, aim)) {
        const int square = visit.cell / grid.columns() / square_cells * grid.columns() +
                           visit.cell % grid.columns() / square_cells;
        const Stance stance = search.stance(visit.cell);
        const Action action = field.action(visit.cell, 0);
        const ShotOption& option = search.option(visit.cell, action);
        Gathered& there = gathered[{square, stance, action.option}];
        const double mass = there.shots.mass + visit.mass;
        if (visit.mass > there.most)
            there = {{visit.cell, stance, action, option.club, option.swing, mass}, visit.mass};
        there.shots.mass = mass;
    }
    std::vector<PlayedShots> played;
    for (const auto& [place, there] : gathered)
        if (there.shots.mass >= negligible_mass) played.push_back(there.shots);
    return played;
}

}  // namespace landwidth
