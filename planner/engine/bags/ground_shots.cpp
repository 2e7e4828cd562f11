#include "planner/engine/bags/ground_shots.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace landwidth {

namespace {

constexpr std::array stances{Stance::fairway, Stance::rough, Stance::bunker};

// The turn that takes the change of the mean direction off the aim.
int aim_correction(const ShotPattern& own, const ShotPattern& drawn) {
    const auto direction = [](const ShotPattern& pattern) {
        return std::atan2(pattern.usual.centre.side_m, pattern.usual.centre.carry_m);
    };
    return static_cast<int>(
        std::lround((direction(own) - direction(drawn)) / (2.0 * std::numbers::pi) * turn_steps));
}

}  // namespace

GroundShots::GroundShots(const Golfer& golfer, std::size_t club, std::span<const ShotPattern> draws,
                         const GolferGame& game)
    : club_(club), draws_(draws.size()), game_(game) {
    const EngineAssumptions& a = game.assumptions();
    tbb::parallel_for(std::size_t{0}, stances.size(), [&](std::size_t i) {
        FromStance& from = options_[static_cast<std::size_t>(stances[i])];
        Club one = golfer.clubs[club];
        from.own = full_swing(one, club, stances[i], a.field_step_m, game.flights(), a);
        if (!from.own) return;
        for (const ShotPattern& pattern : draws) {
            one.pattern = pattern;
            from.drawn.push_back(*full_swing(one, club, stances[i], a.field_step_m, game.flights(), a));
        }
    });
}

bool GroundShots::any() const {
    return std::ranges::any_of(options_, [](const FromStance& from) { return from.own.has_value(); });
}

std::vector<double> GroundShots::on_hole(const HoleStudy& study, std::span<const PlayedShots> played) const {
    std::vector<double> more(draws_, 0.0);
    const auto evaluator = study.personal()->evaluator_of(game_, 0);
    const ShotCost& cost = evaluator->cost();
    for (const PlayedShots& shots : played) {
        const FromStance& from = options_[static_cast<std::size_t>(shots.stance)];
        if (shots.club != club_ || shots.swing != 1.0 || !from.own) continue;
        const auto strokes = [&](const ShotOption& option, int turn) {
            const int aim = ((turn % turn_steps) + turn_steps) % turn_steps;
            return double{cost.of(
                evaluator->worth().of(option, option.choice_set, shots.cell, aim, cost.replay(shots.cell)),
                shots.stance, shots.cell)};
        };
        const double own = strokes(*from.own, shots.action.turn);
        for (std::size_t draw = 0; draw < draws_; ++draw) {
            const ShotOption& option = from.drawn[draw];
            const int turn = shots.action.turn + aim_correction(from.own->pattern, option.pattern);
            more[draw] += shots.mass * (strokes(option, turn) - own);
        }
    }
    return more;
}

}  // namespace landwidth
