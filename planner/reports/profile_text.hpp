// The forms of a golfer's bag.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/bag_summary.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct BagView {
    const Golfer& golfer;
    const std::vector<ClubSummary>& clubs;
    double half_width_m;  // that the shares in `clubs` were made with
    DisplayUnits units = DisplayUnits::yards;
};

std::string bag_text(const BagView& bag);

// One object: golfer, half_width_yd and clubs, lengths in the units of the view with the unit in the name
// ("carry_yd" or "carry_m").
std::string bag_json(const BagView& bag);

// Every finding of a check and its outcome in the last line.
std::string check_text(const ProfileCheck& check, const std::string& file_name);

}  // namespace landwidth
