// Does the usual shot go one way or two? A predictive check of the one t that the model gives every club, and
// the two ways to put in its place where it fails: a miss to both sides, or a slice now and then among
// straight shots.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "golfer-profiles/evidence/golfer_prior.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct ShapeFound {
    std::string club;  // the family: builds of a club share how its shots go
    std::array<Way, 2> ways;
    std::size_t shots;  // looked at
    // Of as many sets of shots as were drawn from the fitted single pattern, how many are as badly described
    // by one t as the recorded ones.
    int as_odd, drawn;
};

// Every club with at least fewest_for_shape recorded shots at hand, builds together, set on each other by
// their middles and spreads; those that fall far short are left aside. The gain in log likelihood of two t's
// over one (expectation and maximisation: A. Dempster, N. Laird, D. Rubin, J. R. Statist. Soc. B 39, 1977) is
// compared with the same of sets drawn from the pattern as it stands (predictive check: G. Box, J. R.
// Statist. Soc. A 143, 1980; D. Rubin, Ann. Statist. 12, 1984). Two ways are taken when at most 1 of 150 such
// sets is as odd and the two stand apart. `golfer`'s patterns are fitted and have no ways. Deterministic.
std::vector<ShapeFound> shapes_found(const Golfer& golfer);
inline constexpr std::size_t fewest_for_shape = 20;

// The two ways with another share of the second, moved and stretched to mean 0 and deviation 1 again.
std::array<Way, 2> with_share(const std::array<Way, 2>& ways, double share_of_second);
// The pattern, which has ways, with another share of the second: the ways stay where they are and the usual
// shot as a whole moves.
void go_ways(ShotPattern& pattern, double share_of_second);

}  // namespace landwidth
