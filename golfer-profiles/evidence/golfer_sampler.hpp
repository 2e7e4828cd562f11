// Draws from the model of golfer_prior.hpp: before any shot is seen, and after. Not for use outside of this
// room.
#pragma once

#include <vector>

#include "golfer-profiles/counter_bits.hpp"
#include "golfer-profiles/evidence/golfer_model.hpp"

namespace landwidth {

// One independent draw from the prior. Mishits are of the short kind where `short_mishits`, which is what a
// profile without any recorded shot says of itself.
GolferState drawn_before_shots(const GolferModel& model, bool short_mishits, CounterBits& bits);

// `count` draws from the posterior, by Gibbs sampling with data augmentation (M. Tanner and W. Wong, J. Am.
// Statist. Assoc. 82, 1987): which shots were mishits, the gamma weights that make the t a mixture of
// normals, and where lost balls lay. Mean carries, directions, days and the trend are drawn together from
// their joint normal; spreads and shares walk build by build, club by club and all together
// (shared_effects.hpp). Cost: linear in the shots, about 0.2 microseconds each a sweep, and the cube of
// builds and days.
std::vector<GolferState> drawn_after_shots(const GolferModel& model, CounterBits& bits, int count);

}  // namespace landwidth
