// How sure a pattern is: draws of what the golfer's true pattern may be, given the shots behind it.
#pragma once

#include <cstdint>
#include <vector>

#include "golfer-profiles/pattern_prior.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// `count` draws of what the club's pattern may be; `stream` tells clubs apart (draws of different clubs are
// independent). The same arguments give the same draws, and more draws begin with the fewer. The club has a
// pattern; run and number of shots are taken over from it.
//
// What is known before any shot, in words (formulas in pattern_model.hpp): a golfer's mean carry and
// direction differ from the typical numbers as PatternPrior says; the spread, the share of mishits and where
// they land are those of the typical pattern as if `worth_shots` of the golfer's own shots had shown it, so
// that as many golfers of the level spread wider as narrower; the tail's degrees of freedom differ by a
// factor.
//
// With the shots at hand (Club::learnt_from) the draws are from the posterior given them, under the model
// that learnt_pattern fits, by Gibbs sampling: about 0.05 ms a draw for 60 shots. Without, the pattern
// is taken for what is known and the draws are from the prior about it; `shots` of the pattern then count
// beside worth_shots, and tell of the centre what so many shots can.
std::vector<ShotPattern> drawn_patterns(const Club& club, const PatternPrior& weight, std::uint64_t stream,
                                        int count);

}  // namespace landwidth
