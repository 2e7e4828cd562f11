// The shots after the tee shot, in words.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// "to the green", "lay-up", "advance", "recovery".
std::string_view purpose_name(ShotPurpose purpose);

// "sand wedge, 60 % swing"; a full swing is the club alone.
std::string swing_words(const PlanView& view, std::size_t club, double swing);

// One sentence without a full stop for each shot of the plan after the tee shot: "5-iron 172 yd, laying up to
// 95 yd", "3-wood from 230 yd in the rough to the green (laying up with the 7-iron to 90 yd costs 0.12
// more)", "9-iron, 50 % swing, out of the trees to 140 yd". Empty where the plan has none.
std::vector<std::string> next_shot_words(const PlanView& view, std::size_t hole);

}  // namespace landwidth
