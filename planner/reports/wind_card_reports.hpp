// The forms of a wind card. Each turns results into text and computes nothing that is a golf number.
#pragma once

#include <string>

#include "planner/engine/wind_card.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct WindCardView {
    const Course& course;
    const Golfer& golfer;
    const WindCard& card;
    DisplayUnits units = DisplayUnits::yards;
};

// For a terminal, at most 100 columns wide: the club on every tee in still air and by the wind, the strokes
// of the round, then in words where the wind changes the club.
std::string wind_card_text(const WindCardView& view);

// "landwidth-wind-card/1"; always yards and mph, whatever view.units.
std::string wind_card_json(const WindCardView& view);

// One self-contained page to print and carry: a wind rose for every hole, turned as the hole is played, and
// the same as a table.
std::string wind_card_html(const WindCardView& view);

}  // namespace landwidth
