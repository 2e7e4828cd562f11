// What would flip a close verdict, in words.
#pragma once

#include <string>
#include <string_view>

#include "planner/engine/break_evens.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// "flips to 3-wood if the landing width is under 24 yd (31 now), the side spread over 23 yd (18 now) or the
// carry under 205 yd (212 now)"; what does not flip within the range searched is left out. When nothing does:
// "no landing width, side spread or carry within reach flips it to 3-wood". A clause without a full stop.
// Whole numbers, with one decimal where the two would read the same.
std::string break_even_words(const BreakEvens& break_evens, std::string_view next_club, DisplayUnits units);

// The same for a hole of a plan; empty where the plan has no break-evens.
std::string break_even_words(const PlanView& view, std::size_t hole);

}  // namespace landwidth
