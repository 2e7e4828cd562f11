#include "golfer-profiles/pattern_learning.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>
#include <vector>

#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/pattern_em.hpp"

namespace landwidth {

namespace {

// The middle of the shots, whatever a few of them did.
Eigen::Vector2d middle(std::span<const ShotOffset> shots) {
    std::vector<double> carries, sides;
    for (const ShotOffset& shot : shots) {
        carries.push_back(shot.carry_m);
        sides.push_back(shot.side_m);
    }
    return {median(std::move(carries)), median(std::move(sides))};
}

// Mean and mean of squares about it.
MixtureState moments_of(std::span<const ShotOffset> shots, double tail_dof) {
    const auto count = static_cast<double>(shots.size());
    MixtureState state;
    state.tail_dof = tail_dof;
    for (const ShotOffset& shot : shots)
        state.centre += plane_vector(shot) / count;
    for (const ShotOffset& shot : shots) {
        const Eigen::Vector2d off = plane_vector(shot) - state.centre;
        state.scale += off * off.transpose() / count;
    }
    return state;
}

// Also when it is not a number.
bool is_line(const Eigen::Matrix2d& scale) {
    constexpr double thin = 1e-12;
    return !(scale.determinant() > thin * scale(0, 0) * scale(1, 1));
}

struct TailFit {
    std::size_t tail;
    PenalisedFit fit;
};

// The best tail and the rest with it, from a start: up or down the grid for as long as that helps.
TailFit best_tail(const PatternModel& model, std::span<const ShotOffset> shots, MixtureState start) {
    std::size_t tail = model.usual_tail;
    PenalisedFit best = penalised_fit(model, shots, tail, start, roughly_settled);
    for (const int step : {-1, 1}) {
        for (bool better = true; better;) {
            const std::size_t next = tail + static_cast<std::size_t>(step);  // wraps round below 0
            if (next >= model.tails.size()) break;
            const PenalisedFit fit = penalised_fit(model, shots, next, best.state, roughly_settled);
            better = fit.objective > best.objective;
            if (better) {
                best = fit;
                tail = next;
            }
        }
    }
    return {tail, best};
}

// From the prior pattern and, as two heaps of shots can be told apart in more than one way, from where most
// shots lie.
MixtureState best_state(const PatternModel& model, std::span<const ShotOffset> shots) {
    TailFit best = best_tail(model, shots, model.typical());
    if (model.has_mishits) {
        MixtureState moved = model.typical();
        moved.centre = middle(shots);
        moved.mishit_centre.x() *= moved.centre.x() / model.centre.x();
        const TailFit other = best_tail(model, shots, moved);
        if (other.fit.objective > best.fit.objective) best = other;
    }
    return penalised_fit(model, shots, best.tail, best.fit.state, settled).state;
}

}  // namespace

Spread fitted_spread(std::span<const ShotOffset> shots, double tail_dof) {
    if (!(tail_dof > 2.0)) throw std::invalid_argument("fitted_spread: tail_dof must be more than 2");
    if (shots.size() < 3) throw std::invalid_argument("fitted_spread: at least 3 shots are needed");
    const MixtureState start = moments_of(shots, tail_dof);
    if (is_line(start.scale)) throw std::invalid_argument("fitted_spread: the shots lie on one line");
    PatternModel nothing_known;
    nothing_known.tails = {{tail_dof, 0.0}};
    const MixtureState fit = penalised_fit(nothing_known, shots, 0, start, settled).state;
    if (is_line(fit.scale))
        throw std::invalid_argument("fitted_spread: too many of the shots lie on one line");
    return spread_of(fit.centre, fit.scale, tail_dof);
}

PatternFit learnt_pattern(std::span<const ShotOffset> shots, const ShotPattern& prior,
                          const PatternPrior& weight) {
    const int behind = prior.shots + static_cast<int>(shots.size());
    if (shots.empty()) return {prior, {}};
    const PatternModel model = pattern_model(prior, weight);
    const MixtureState state = best_state(model, shots);
    return {pattern_of(state, prior, prior.run_m, behind), mishit_chances(state, shots)};
}

std::vector<double> mishit_chances(const ShotPattern& pattern, std::span<const ShotOffset> shots) {
    return mishit_chances(state_of(pattern), shots);
}

}  // namespace landwidth
