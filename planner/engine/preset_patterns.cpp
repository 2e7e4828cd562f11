#include "planner/engine/preset_patterns.hpp"

#include <fmt/format.h>

namespace landwidth {

std::optional<std::string> preset_patterns_warning(const Golfer& golfer) {
    std::size_t presets = 0;
    std::size_t patterns = 0;
    for (const Club& club : golfer.clubs)
        if (is_playable(club)) {
            ++patterns;
            presets += club.pattern->shots == 0 ? 1 : 0;
        }
    if (presets == 0) return std::nullopt;
    return fmt::format(
        "{} of {} clubs have a preset pattern and no recorded shots; measure them before trusting a small "
        "margin",
        presets, patterns);
}

}  // namespace landwidth
