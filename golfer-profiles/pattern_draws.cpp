#include "golfer-profiles/pattern_draws.hpp"

#include <algorithm>

#include "golfer-profiles/pattern_gibbs.hpp"
#include "golfer-profiles/pattern_learning.hpp"

namespace landwidth {

namespace {

// A ball lands in front of the golfer; a wide prior of a short club need not know that.
constexpr double shortest_carry_m = Yards{1.0}.metres();

ShotPattern possible_pattern(MixtureState state, const ShotPattern& prior, const ShotPattern& own) {
    state.centre.x() = std::max(state.centre.x(), shortest_carry_m);
    state.mishit_centre.x() = std::max(state.mishit_centre.x(), 0.0);
    return pattern_of(state, prior, own.run_m, own.shots);
}

std::vector<MixtureState> drawn_states(const PatternModel& model, const LearntFrom& learnt,
                                       const PatternPrior& weight, CounterBits& bits, int count) {
    const ShotPattern fit = learnt_pattern(learnt.shots, learnt.prior, weight).pattern;
    return drawn_after_shots(model, learnt.shots, state_of(fit), bits, count);
}

}  // namespace

std::vector<ShotPattern> drawn_patterns(const Club& club, const PatternPrior& weight, std::uint64_t stream,
                                        int count) {
    CounterBits bits(mixed(stream + 1));
    const bool from_shots = club.learnt_from && !club.learnt_from->shots.empty();
    const ShotPattern& prior = club.learnt_from ? club.learnt_from->prior : *club.pattern;
    const PatternModel model = pattern_model(prior, weight);
    std::vector<MixtureState> states;
    if (from_shots) states = drawn_states(model, *club.learnt_from, weight, bits, count);
    while (states.size() < static_cast<std::size_t>(std::max(count, 0)))
        states.push_back(drawn_before_shots(model, bits));
    std::vector<ShotPattern> draws;
    for (const MixtureState& state : states)
        draws.push_back(possible_pattern(state, prior, *club.pattern));
    return draws;
}

}  // namespace landwidth
