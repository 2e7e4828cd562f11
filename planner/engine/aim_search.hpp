// Which club, aimed where: the expected strokes of every club over a fan of aims.
//
// First every aim of a coarse fan with few shots, then the surroundings of each club's best aims ray by ray
// with more, then the best aim of each club with independent replicates. The value V of the tee, which stroke
// and distance refers back to, solves V = min over clubs and aims of (1 + strokes + replay (1 + V)): for a
// fixed shot that is linear, so V is the least of the shots' own solutions, exactly (Outcome::solved).
#pragma once

#include <span>
#include <vector>

#include "planner/engine/bag_shots.hpp"
#include "planner/engine/tee_fan.hpp"

namespace landwidth {

struct AimRange {
    int first_ray;
    int last_ray;
};

// A club and the aims it may take.
struct Contender {
    const ClubShots* shots;
    AimRange range;
};

struct AimedClub {
    std::size_t club;       // index in the bag
    int ray;                // aim
    Outcome outcome;        // mean of the replicates
    double standard_error;  // of total(V)
};

struct AimSearch {
    std::vector<AimedClub> clubs;  // in the order of the shots given
    double tee_value;              // V
};

// `contenders` must not be empty.
AimSearch search_aims(TeeFan& fan, std::span<const Contender> contenders, int coarse_rays);

// V when only these may be played from the tee; not empty.
double solved_tee_value(std::span<const AimedClub> clubs);

// The share of the pattern draws in which clubs[best] is still the cheapest when every club may shift its aim
// a little to its drawn pattern. `aimed` and `contenders` run in parallel; 1 for a single club; without draws
// 1 too.
double confidence_in(TeeFan& fan, std::span<const Contender> contenders, std::span<const AimedClub> aimed,
                     std::size_t best, double tee_value, int coarse_rays);

}  // namespace landwidth
