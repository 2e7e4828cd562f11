// Which club, aimed where: the expected strokes of every club over a fan of aims.
//
// First every aim of a coarse fan with few shots, then the surroundings of each club's best aims ray by ray
// with more, then the best aim of each club with independent replicates. Stroke and distance refers back to
// the tee. For strokes the value V of the tee solves V = min over clubs and aims of (cost + replay (2 + V)):
// for a fixed shot that is linear, so V is the least of the shots' own solutions, exactly (Outcome::solved).
// Other aims depend on the strokes used, and what playing again costs is given.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "planner/engine/bag_shots.hpp"
#include "planner/engine/likeness.hpp"
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
    double standard_error;  // of the total
};

// What playing again from the tee costs: given, or to be solved.
using ReplayCost = std::optional<double>;

// One club at one aim, by all replicates.
AimedClub aimed_club(TeeFan& fan, const ClubShots& club, int ray, double replay_cost);

struct AimSearch {
    std::vector<AimedClub> clubs;  // in the order of the shots given
    double replay_cost;
};

// `contenders` must not be empty.
AimSearch search_aims(TeeFan& fan, std::span<const Contender> contenders, int coarse_rays,
                      ReplayCost replay_cost);

// Places in `search.clubs`, the club that costs least first.
std::vector<std::size_t> by_cost(const AimSearch& search);

// What the hole costs when only these may be played from the tee; not empty.
double tee_cost(std::span<const AimedClub> clubs, ReplayCost replay_cost);

// A drawn pattern (or the pattern itself with as few shots) at the best of the aims around a ray.
Outcome drawn_outcome(TeeFan& fan, const FanShots& drawn, int ray, int coarse_rays, double replay_cost);

// How sure it is that one club is the best.
struct Confidence {
    double share;     // of the pattern draws in which it still is
    Interval margin;  // what the next club costs more: the middle of the draws
};

// Of clubs[best], the cheapest, when every club may shift its aim a little to its drawn pattern. `aimed` and
// `contenders` run in parallel. Without draws, or for a single club, a share of 1 and the margin as it
// stands.
Confidence confidence_in(TeeFan& fan, std::span<const Contender> contenders, std::span<const AimedClub> aimed,
                         std::size_t best, double replay_cost, int coarse_rays);

}  // namespace landwidth
