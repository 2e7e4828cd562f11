// The driver chart as a picture: over length and landing width, where the driver pays, where the control club
// does, where either will do, and the break-even width.
//
// Read without its colours: the driver's ground is plain, the control club's hatched, the rest blank; every
// cell says the club and what it saves.
#pragma once

#include <string>

#include "planner/reports/chart_reports.hpp"

namespace landwidth {

// One <svg> element with its own styles and patterns (all named chart-...), for the inside of any page or a
// file of its own; as wide as its container, at most its natural size.
std::string chart_picture(const ChartView& view);

}  // namespace landwidth
