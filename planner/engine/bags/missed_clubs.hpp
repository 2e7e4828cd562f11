// How much each club of the bag would be missed if it were left at home for another.
//
// Strokes a hole, to first order: how often the club is played from where with the bag of today, times what
// the next best shot there costs more, the newcomer's among them. What goes on from there is taken as it is
// today; the loss of leaving several out is more than the sum.
#pragma once

#include <span>
#include <vector>

#include "planner/engine/bags/played_shots.hpp"

namespace landwidth {

// Clubs that may come in, one set at a time.
struct Newcomers {
    const Golfer& golfer;  // the profile with every club in the bag
    const GolferGame& game;
    std::vector<std::vector<std::size_t>> sets;
};

// For each set, by number of the club in the profile: 0 for clubs that are not in the bag today, and for the
// putter. `options` of the study, which is of the bag of today; `played` after its best tee shot.
std::vector<std::vector<double>> missed_on_hole(HoleStudy& today, const HoleStudy::Options& options,
                                                std::span<const PlayedShots> played,
                                                const Newcomers& newcomers);

}  // namespace landwidth
