// The forms of a bag's gaps.
#pragma once

#include <string>

#include "planner/engine/bags/bag_gaps.hpp"
#include "planner/reports/document.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct GapsView {
    const Golfer& golfer;
    const BagGaps& gaps;
    DisplayUnits units = DisplayUnits::yards;
};

// What text and page say. `picture` is HTML for the page.
Document gaps_document(const GapsView& view, std::string picture = {});

std::string gaps_text(const GapsView& view);

// The same as a page, with every club's carry drawn along one scale.
std::string gaps_html(const GapsView& view);

// One object, "landwidth-gaps/1": lengths in the units of the view with the unit in the name ("carry_yd" or
// "carry_m"), intervals as [low, high].
std::string gaps_json(const GapsView& view);

}  // namespace landwidth
