// Draws from the pattern model of pattern_model.hpp: before any shot is seen, and after. Not for use outside
// of this room.
#pragma once

#include <span>
#include <vector>

#include "golfer-profiles/counter_bits.hpp"
#include "golfer-profiles/pattern_model.hpp"

namespace landwidth {

// One independent draw from the prior.
MixtureState drawn_before_shots(const PatternModel& model, CounterBits& bits);

// `count` draws from the posterior given the shots, by Gibbs sampling with data augmentation (M. Tanner and
// W. Wong, J. Am. Statist. Assoc. 82, 1987): which shots were mishits, and the gamma weights that make the t
// a mixture of normals. The labels and the tail are drawn with the weights summed out, which mixes faster.
// `start`: any state of the model; a fit forgets itself soonest.
std::vector<MixtureState> drawn_after_shots(const PatternModel& model, std::span<const ShotOffset> shots,
                                            const MixtureState& start, CounterBits& bits, int count);

}  // namespace landwidth
