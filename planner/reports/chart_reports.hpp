// The forms of a driver chart. Each turns results into text and computes nothing that is a golf number.
#pragma once

#include <string>

#include "planner/engine/driver_chart.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct ChartView {
    const Golfer& golfer;
    const DriverChart& chart;
    DisplayUnits units = DisplayUnits::yards;
};

// Tables for a terminal, at most 100 columns wide: the club to hit by landing width and length, the widths at
// which the verdict turns, then what it says, what it rests on, warnings and cautions. Of many lengths every
// second or third is shown; the other forms have them all.
std::string chart_text(const ChartView& view);

// "landwidth-chart/1"; always yards, whatever view.units.
std::string chart_json(const ChartView& view);

// One self-contained page: no network, no script, prints well.
std::string chart_html(const ChartView& view);

}  // namespace landwidth
