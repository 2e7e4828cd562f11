#include "planner/reports/wind_words.hpp"

#include <fmt/format.h>

#include <cmath>

namespace landwidth {
namespace {

constexpr double metres_per_second_per_kmh = 1.0 / 3.6;

std::string gusts_words(const Wind& wind, std::string_view word, DisplayUnits units) {
    return wind.gusts_mps ? fmt::format(", {} {}", word, speed_number(*wind.gusts_mps, units))
                          : std::string();
}

}  // namespace

std::string_view compass_point(Bearing bearing) {
    const double steps = bearing.degrees() * compass_points.size() / 360.0;
    return compass_points[static_cast<std::size_t>(std::lround(steps)) % compass_points.size()];
}

std::string speed_number(double speed_mps, DisplayUnits units) {
    const double unit = units == DisplayUnits::yards ? metres_per_second_per_mph : metres_per_second_per_kmh;
    // Adding 0 turns -0 into 0.
    return fmt::format("{:.0f}", std::round(speed_mps / unit) + 0.0);
}

std::string speed_text(double speed_mps, DisplayUnits units) {
    return fmt::format("{} {}", speed_number(speed_mps, units),
                       units == DisplayUnits::yards ? "mph" : "km/h");
}

std::string wind_words(const Wind& wind, DisplayUnits units) {
    return fmt::format("wind {} from {:.0f} ({}){}", speed_text(wind.speed_mps, units),
                       std::fmod(std::round(wind.from.degrees()), 360.0), compass_point(wind.from),
                       gusts_words(wind, "gusting", units));
}

std::string wind_label(const Wind& wind, DisplayUnits units) {
    return speed_text(wind.speed_mps, units) + gusts_words(wind, "gusts", units);
}

std::string wind_parts_words(double tail_mps, double cross_mps, DisplayUnits units) {
    std::string words;
    const auto add = [&](double part_mps, std::string_view positive, std::string_view negative) {
        const std::string number = speed_number(std::abs(part_mps), units);
        if (number == "0") return;
        if (!words.empty()) words += ", ";
        words +=
            fmt::format("{} {}", speed_text(std::abs(part_mps), units), part_mps > 0.0 ? positive : negative);
    };
    add(tail_mps, "behind", "against");
    add(cross_mps, "from the left", "from the right");
    return words;
}

}  // namespace landwidth
