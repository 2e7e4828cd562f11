// A shot pattern as a set of weighted shots, for sums over "where can this ball go".
//
// Sobol points mapped through the pattern by inversion, the usual shots and the mishits each with their own
// points, so that the smallest mishit share is resolved. Each point comes with its mirror image about the
// long axis, so that a mirrored pattern has the mirrored shots to the last digit. Replicates are independent
// digital shifts of the same points: their spread measures the error. Everything depends on the arguments
// alone: the same on any number of threads.
#pragma once

#include <cstdint>
#include <vector>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// Where a ball first lands, seen from where it is hit.
struct WeightedShot {
    double distance_m;  // >= 0
    double angle_rad;   // right of the aim line positive, (-pi, pi]
    double weight;      // of a set: add to 1
};

// 2^log2_points usual shots and a quarter as many mishits where the pattern has any. log2_points in [3, 16].
std::vector<WeightedShot> weighted_shots(const ShotPattern& pattern, int log2_points,
                                         std::uint64_t replicate);

}  // namespace landwidth
