// Golfers whose true patterns are known, to see whether what is learnt from their shots is as sure as it
// says.
#pragma once

#include <cstdint>

#include "golfer-profiles/pattern_prior.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth::bench {

// The two tee clubs of a golfer to be weighed against each other.
struct ClubPair {
    Club control, driver;  // their patterns are the truth
    ShotPattern typical_control, typical_driver;
};

// Where the true patterns come from: the prior itself, or deliberately something else. `otherwise`: spreads
// log-normal by 30 % each way, tails of 4 to 15 degrees of freedom, correlations from -0.5 to 0.3, half to
// twice the mishits; mean carries and directions of every second golfer differ by more (10 %, 2.6 degrees),
// of the others by less (5 %, 1.2 degrees) than the prior says. Assumptions, all of them.
enum class Population { from_the_prior, otherwise };

// Number `number` of the population; handicaps 4, 14 and 24 take turns.
ClubPair simulated_golfer(Population population, const PatternPrior& prior, std::uint64_t number);

}  // namespace landwidth::bench
