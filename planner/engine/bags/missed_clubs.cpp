#include "planner/engine/bags/missed_clubs.hpp"

#include <algorithm>
#include <functional>
#include <limits>
#include <utility>

#include "planner/engine/bags/bag_on_hole.hpp"

namespace landwidth {

namespace {

constexpr double none = std::numeric_limits<double>::infinity();
// Places that see fewer shots a round of the hole do not change a ranking.
constexpr double least_mass = 1e-3;

bool is_among(const std::vector<std::size_t>& clubs, std::size_t club) {
    return std::ranges::find(clubs, club) != clubs.end();
}

double cost_of(const AimSearch& search, const AimedClub& aimed) {
    return aimed.outcome.total(search.replay_cost);
}

const AimedClub& best_of(const AimSearch& search) {
    return *std::ranges::min_element(search.clubs, {},
                                     [&](const AimedClub& a) { return cost_of(search, a); });
}

// The best of the shots from a cell with clubs that are let through; infinite where there is none.
double best_cost(ActionSearch& search, int cell, const std::function<bool(std::size_t)>& allowed) {
    std::vector<Ranked> found = search.everything(cell, [&](const ShotOption& option) {
        return allowed(option.club) && search.is_sensible(cell, option);
    });
    if (found.empty())
        found = search.everything(cell, [&](const ShotOption& option) { return allowed(option.club); });
    if (found.empty()) return none;
    std::vector<Action> actions;
    for (const Ranked& shot : found)
        actions.push_back(shot.action);
    return double{search.cost(cell, search.best_of(cell, actions).action, &ShotOption::value_set)};
}

class Missed {
  public:
    Missed(HoleStudy& today, const HoleStudy::Options& options, std::span<const PlayedShots> played,
           const Newcomers& newcomers)
        : today_(today),
          options_(options),
          newcomers_(newcomers),
          strokes_(newcomers.sets.size(), std::vector<double>(newcomers.golfer.clubs.size(), 0.0)) {
        add_from_tee();
        add_from_ground(played);
    }

    std::vector<std::vector<double>> strokes() && { return std::move(strokes_); }

  private:
    void add_from_tee() {
        const AimSearch& search = options_.search;
        const AimedClub& best = best_of(search);
        double next = none;
        for (const AimedClub& aimed : search.clubs)
            if (aimed.club != best.club) next = std::min(next, cost_of(search, aimed));
        for (std::size_t set = 0; set < newcomers_.sets.size(); ++set) {
            const std::vector<HoleStudy::Asked> asked =
                clubs_to_try(options_, newcomers_.sets[set], today_.coarse_rays());
            const HoleStudy::Options theirs =
                today_.options_of(newcomers_.golfer, std::span(asked).first(newcomers_.sets[set].size()));
            const double without = std::min(next, cost_of(theirs.search, best_of(theirs.search)));
            strokes_[set][best.club] += std::max(0.0, without - cost_of(search, best));
        }
    }

    void add_from_ground(std::span<const PlayedShots> all) {
        const PersonalField& field = *today_.personal();
        const auto own = field.evaluator(0);
        const auto with_newcomers = field.evaluator_of(newcomers_.game, 0);
        for (const PlayedShots& played : all) {
            if (played.mass < least_mass) continue;
            const double with =
                double{own->search().cost(played.cell, played.action, &ShotOption::value_set)};
            const double without =
                best_cost(own->search(), played.cell, [&](std::size_t club) { return club != played.club; });
            for (std::size_t set = 0; set < newcomers_.sets.size(); ++set) {
                const double newcomer =
                    best_cost(with_newcomers->search(), played.cell,
                              [&](std::size_t club) { return is_among(newcomers_.sets[set], club); });
                const double instead = std::min(without, newcomer);
                if (instead < none) strokes_[set][played.club] += played.mass * std::max(0.0, instead - with);
            }
        }
    }

    HoleStudy& today_;
    const HoleStudy::Options& options_;
    const Newcomers& newcomers_;
    std::vector<std::vector<double>> strokes_;
};

}  // namespace

std::vector<std::vector<double>> missed_on_hole(HoleStudy& today, const HoleStudy::Options& options,
                                                std::span<const PlayedShots> played,
                                                const Newcomers& newcomers) {
    return Missed(today, options, played, newcomers).strokes();
}

}  // namespace landwidth
