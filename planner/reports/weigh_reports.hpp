// The forms of a comparison of bags. Each turns results into text and computes nothing that is a golf number.
#pragma once

#include <string>
#include <vector>

#include "planner/engine/bags/weighing.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct WeighView {
    const std::vector<Course>& courses;
    const Golfer& golfer;  // with the clubs on trial
    const Weighing& weighing;
    DisplayUnits units = DisplayUnits::yards;
};

// For a terminal, at most 100 columns wide: the changes side by side, then each with its holes, how sure it
// is and what to do next.
std::string weigh_text(const WeighView& view);

// "landwidth-weighing/1"; always yards, whatever view.units. Gains are strokes saved a round.
std::string weigh_json(const WeighView& view);

// One self-contained page to hand over: the patterns over each other with the shots behind them, the changes,
// the holes, how sure, what to do next.
std::string weigh_html(const WeighView& view);

}  // namespace landwidth
