// Expectation and maximisation for the pattern model at one tail: A. Dempster, N. Laird and D. Rubin, J. R.
// Statist. Soc. B 39, 1977; for the t C. Liu and D. Rubin, Statistica Sinica 5, 1995. Not for use outside of
// this room.
#pragma once

#include <span>
#include <vector>

#include "golfer-profiles/pattern_model.hpp"

namespace landwidth {

// What is maximised: the log likelihood, the log density of the centres, n0 shots' worth of log likelihood
// for the scale and the share as if n0 shots had given the prior pattern's, m0 for the mishits' variances,
// and the log prior of the tail. So the estimate of the scale is (n0 S0 + sum of w r r') / (n0 + n): the
// maximum-likelihood one when the prior weighs nothing, and the middle of the posterior otherwise.
struct PenalisedFit {
    MixtureState state;
    double objective;
};

// How little a round may change the state, relative to its spreads, for it to be taken as settled: to tell
// fits apart, and for the answer.
inline constexpr double roughly_settled = 1e-6, settled = 1e-10;

// The best state with the tail given, from `start`. The model may weigh nothing (all zero but the tails); the
// scale of the result is then singular or not a number where so many shots lie on a line that there is no
// maximum.
PenalisedFit penalised_fit(const PatternModel& model, std::span<const ShotOffset> shots, std::size_t tail,
                           MixtureState start, double least_change);

// Of each shot: the chance that it was a mishit.
std::vector<double> mishit_chances(const MixtureState& state, std::span<const ShotOffset> shots);

}  // namespace landwidth
