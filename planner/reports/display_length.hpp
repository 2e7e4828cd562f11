// Lengths as a reader sees them: yards or metres, whole or with one decimal.
#pragma once

#include <string>
#include <string_view>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

constexpr double in_display_units(double metres, DisplayUnits units) {
    return units == DisplayUnits::yards ? to_yards(metres) : metres;
}

constexpr double metres_of_display(double value, DisplayUnits units) {
    return units == DisplayUnits::yards ? Yards{value}.metres() : value;
}

// "yd" or "m".
constexpr std::string_view display_unit(DisplayUnits units) {
    return units == DisplayUnits::yards ? "yd" : "m";
}

// Rounded to a whole number, with the unit: "252 yd".
std::string length_text(double metres, DisplayUnits units);

// A height, which golfers who count in yards count in feet: "12 ft", "4 m"; never "-0".
std::string height_text(double metres, DisplayUnits units);

// Rounded to a whole number, without the unit: "252"; never "-0".
std::string length_number(double metres, DisplayUnits units);

}  // namespace landwidth
