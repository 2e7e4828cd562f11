#include "golfer-profiles/bag_summary.hpp"

namespace landwidth {

std::vector<ClubSummary> bag_summary(const Golfer& golfer, double half_width_m) {
    std::vector<ClubSummary> rows;
    for (const Club& club : golfer.clubs) {
        if (!club.pattern) continue;
        const ShotPattern& pattern = *club.pattern;
        const double carry = pattern.usual.centre.carry_m;
        rows.push_back(
            {.name = club.name,
             .kind = club.kind,
             .carry_m = carry,
             .run_m = pattern.run_m,
             .total_m = carry + pattern.run_m,
             .side_sd_m = pattern.usual.side_sd_m,
             .share_within = share_left_of(pattern, half_width_m) - share_left_of(pattern, -half_width_m),
             .mishit_share = pattern.mishit ? pattern.mishit->share : 0.0,
             .shots = pattern.shots,
             .in_bag = club.in_bag});
    }
    return rows;
}

}  // namespace landwidth
