// What a bag makes of a hole: the club it plays from the tee, what that comes to, and what it may come to
// given how few shots stand behind the patterns.
#pragma once

#include <array>
#include <vector>

#include "planner/engine/hole_study.hpp"

namespace landwidth {

struct BagOnHole {
    std::size_t club;                    // number in the profile
    double aim;                          // plane bearing
    double strokes;                      // expected, to hole out
    std::array<double, lie_count> lies;  // where its balls finish; add to 1
    double leave_mean_m;                 // distance left, balls in play
    // Expected strokes with this club in every draw of its pattern, each at the best aim for the draw: a
    // golfer sees where the ball goes and aims accordingly, but carries what the evidence of today says.
    std::vector<double> drawn;
};

// The options are the study's, the first search made of them.
BagOnHole bag_on_hole(HoleStudy& study, const HoleStudy::Options& options);

// The options that can matter after a change: the clubs that came in and those that were in contention
// before.
std::vector<std::size_t> clubs_to_try(const HoleStudy::Options& before, const std::vector<std::size_t>& in);

}  // namespace landwidth
