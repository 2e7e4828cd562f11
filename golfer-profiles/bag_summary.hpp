// The bag as a table: one row a club that is hit at full swing, for people to look over.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct ClubSummary {
    std::string name;
    ClubKind kind;
    // The usual shot: means and one standard deviation.
    double carry_m, run_m, total_m;
    double side_sd_m;
    double
        share_within;  // of all shots, mishits too: landing within the half width of the aim line, in [0, 1]
    double mishit_share;
    int shots;  // recorded shots behind the numbers; 0: a preset
    bool in_bag;
};

// Clubs without a pattern are left out; the order is the profile's; clubs on trial are among them.
// half_width_m > 0.
std::vector<ClubSummary> bag_summary(const Golfer& golfer, double half_width_m);

}  // namespace landwidth
