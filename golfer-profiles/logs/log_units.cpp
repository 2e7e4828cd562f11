#include "golfer-profiles/logs/log_units.hpp"

#include <algorithm>
#include <utility>

#include "geometry/units.hpp"
#include "golfer-profiles/profile_format.hpp"

namespace landwidth {

std::string in_small_letters(std::string_view text) {
    std::string result(text);
    for (char& c : result)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return result;
}

std::string_view measure_words(Measure measure) {
    switch (measure) {
        case Measure::length:
            return "a length";
        case Measure::speed:
            return "a speed";
        case Measure::angle:
            return "an angle";
        case Measure::on_face:
            return "a place on the face";
        case Measure::spin:
            break;
    }
    return "a spin rate";
}

const std::vector<LogUnit>& log_units() {
    static const std::vector<LogUnit> units{
        {"yd", Measure::length, metres_per_yard},
        {"m", Measure::length, 1.0},
        {"ft", Measure::length, metres_per_foot},
        {"mph", Measure::speed, metres_per_second_per_mph},
        {"mps", Measure::speed, 1.0},
        {"kmh", Measure::speed, 1.0 / 3.6},
        {"kn", Measure::speed, 1852.0 / 3600.0},
        {"deg", Measure::angle, radians_per_degree},
        {"rpm", Measure::spin, radians_per_second_per_rpm},
        {"mm", Measure::on_face, 0.001},
        {"cm", Measure::on_face, 0.01},
        {"in", Measure::on_face, metres_per_inch},
    };
    return units;
}

std::optional<LogUnit> unit_written(std::string_view word) {
    static constexpr std::pair<std::string_view, std::string_view> spellings[]{
        {"yds", "yd"},   {"yard", "yd"},  {"yards", "yd"},   {"metre", "m"},     {"metres", "m"},
        {"meter", "m"},  {"meters", "m"}, {"mtr", "m"},      {"foot", "ft"},     {"feet", "ft"},
        {"m/s", "mps"},  {"km/h", "kmh"}, {"kph", "kmh"},    {"kt", "kn"},       {"kts", "kn"},
        {"knot", "kn"},  {"knots", "kn"}, {"degree", "deg"}, {"degrees", "deg"}, {"°", "deg"},
        {"mi/h", "mph"}, {"inch", "in"},  {"inches", "in"},
    };
    std::string suffix = in_small_letters(word);
    for (const auto& [written, meant] : spellings)
        if (suffix == written) suffix = meant;
    const auto found = std::find_if(log_units().begin(), log_units().end(),
                                    [&](const LogUnit& u) { return u.suffix == suffix; });
    if (found == log_units().end()) return std::nullopt;
    return *found;
}

}  // namespace landwidth
