#include "planner/reports/way_words.hpp"

#include <fmt/format.h>

#include <cmath>

#include "planner/reports/display_length.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {

std::string ways_words(const Spread& usual, const std::array<Way, 2>& ways, DisplayUnits units) {
    const auto words = [&](const Way& way) {
        const double side = spread_of(usual, way).centre.side_m;
        return fmt::format("{} about {} {}", share_text(way.share), length_text(std::abs(side), units),
                           side < 0 ? "left" : "right");
    };
    return words(ways[0]) + ", " + words(ways[1]);
}

std::string ways_words(const ShotPattern& pattern, DisplayUnits units) {
    return pattern.ways ? ways_words(pattern.usual, *pattern.ways, units) : std::string();
}

}  // namespace landwidth
