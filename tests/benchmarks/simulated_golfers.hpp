// Golfers whose true patterns are known, to see whether what is learnt from their shots is as sure as it
// says. Invented; no prior was set by them.
#pragma once

#include <string_view>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth::bench {

struct SimulatedGolfer {
    std::string_view name;
    double handicap_said;
    ShotPattern driver;  // the truth
};

// Typical of the level; 20 yd of bias; straight (13 yd at 200); wild and fast with long misses; says 25,
// plays 4; a one-sided slice (a third of the usual shots far right and short).
std::vector<SimulatedGolfer> simulated_golfers();

// The golfer's typical bag with these shots of the driver and, where there are any, of a build of it.
Golfer measured(const SimulatedGolfer& golfer, const std::vector<ShotOffset>& driver,
                const std::vector<ShotOffset>& build);

}  // namespace landwidth::bench
