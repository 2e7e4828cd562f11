#include "planner/reports/display_length.hpp"

#include <fmt/format.h>

#include <cmath>

namespace landwidth {

std::string length_number(double metres, DisplayUnits units) {
    // Adding 0 turns -0 into 0.
    return fmt::format("{:.0f}", std::round(in_display_units(metres, units)) + 0.0);
}

std::string height_text(double metres, DisplayUnits units) {
    const bool feet = units == DisplayUnits::yards;
    return fmt::format("{:.0f} {}", std::round(feet ? metres / metres_per_foot : metres) + 0.0,
                       feet ? "ft" : "m");
}

std::string length_text(double metres, DisplayUnits units) {
    return fmt::format("{} {}", length_number(metres, units), display_unit(units));
}

}  // namespace landwidth
