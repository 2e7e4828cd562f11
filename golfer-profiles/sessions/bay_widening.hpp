// The spread of the course from shots of a bay: nerves, lies, wind and aim are missing there.
//
// How much wider the course is is not known from a bay's shots: a named assumption, and not applied unless
// asked for. It is applied to the shots themselves, before anything is learnt from them, so that patterns and
// what is drawn from them see the same spread.
#pragma once

#include <vector>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// Commonly said of bays: the course is wider by a fifth to a third. Common practice, no source.
inline constexpr double bay_widening_from = 1.2, bay_widening_to = 1.33;

// Moves shots of one club away from their middle (medians of carry and side), so that the distances of usual
// shots grow by `factor`. A shot more than three robust standard deviations out, which may be a mishit, moves
// as far as one at three and no further; no carry falls to 0. factor >= 1; fewer than three shots stay.
void widen(const std::vector<ShotOffset*>& shots, double factor);

}  // namespace landwidth
