// A shot pattern from recorded shots: a Student t for the usual shot and a normal for mishits, fitted by
// expectation and maximisation, leaning on what is known of such golfers where shots are few.
#pragma once

#include <span>
#include <vector>

#include "golfer-profiles/pattern_prior.hpp"
#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// The maximum-likelihood bivariate t of given degrees of freedom (infinite: the normal, whose centre is the
// mean and whose covariance the mean of squares), by iteratively reweighted means. In `Spread` the standard
// deviations are those of the distribution, as everywhere, and at most largest_sd_m. tail_dof > 2. Throws
// std::invalid_argument for fewer than 3 shots, or when all of them lie on one line, or so many that the
// likelihood has no maximum (a share of (dof + 1) / (dof + 2)).
Spread fitted_spread(std::span<const ShotOffset> shots, double tail_dof);

// A shot that is more likely a mishit than not is counted as one.
inline constexpr double taken_for_mishit = 0.5;

struct PatternFit {
    ShotPattern pattern;  // run_m is the prior's; shots is the number learnt from, and the prior's
    std::vector<double> mishit_chance;  // of each shot given: the chance that it was a mishit, in [0, 1]
};

// `prior` is the typical pattern of the golfer's level and distance (shots 0), or an earlier one of the
// golfer's own (shots > 0: it then weighs that much more). Any number of shots, none included: the result is
// always a pattern that a profile can hold, given carries and sides that one can. The model and what the
// prior weighs stand in pattern_model.hpp. A prior without mishits fits none; a mishit is short, and is told
// from a wide usual shot by the prior's place for it. Deterministic; the order of the shots does not matter.
PatternFit learnt_pattern(std::span<const ShotOffset> shots, const ShotPattern& prior,
                          const PatternPrior& weight);

// Of each shot, the chance that it was a mishit, in [0, 1], the pattern taken for the truth.
std::vector<double> mishit_chances(const ShotPattern& pattern, std::span<const ShotOffset> shots);

}  // namespace landwidth
