// How sure a pattern is: draws of what the golfer's true pattern may be, given how few shots stand behind it.
//
// Prior and posterior: the usual shot's centre and covariance are taken as learnt from n = `shots` + a
// preset's worth of shots (assumption preset_worth_shots), normal-inverse-Wishart: covariance ~ inverse
// Wishart(n, n S), centre | covariance ~ normal(centre, covariance / n); the mishit share ~ Beta(n share +
// 1/2, n (1 - share) + 1/2). Tails, the mishits' own centre and spread, and the run are kept. Draws of
// different clubs are independent.
#pragma once

#include <cstdint>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// The draw numbered `draw` of the club numbered `club`: the same arguments give the same pattern. worth_shots
// >= 2.
ShotPattern drawn_pattern(const ShotPattern& pattern, double worth_shots, std::uint64_t club,
                          std::uint64_t draw);

}  // namespace landwidth
