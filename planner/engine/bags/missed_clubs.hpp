// How much each club of a bag would be missed if it were left at home.
//
// Strokes a hole, to first order: how often the club is played from where, times what the next best shot
// there costs more. What goes on from there is taken as it is with the club; the loss of leaving several out
// is more than the sum.
#pragma once

#include <vector>

#include "planner/engine/hole_study.hpp"

namespace landwidth {

// By number of the club in the profile; 0 for clubs that are not in the bag, and for the putter. `options` of
// the study.
std::vector<double> missed_on_hole(HoleStudy& study, const HoleStudy::Options& options, const Golfer& golfer);

}  // namespace landwidth
