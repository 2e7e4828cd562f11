#include "golfer-profiles/logs/log_units.hpp"

#include <algorithm>
#include <utility>

#include "geometry/units.hpp"
#include "golfer-profiles/air.hpp"
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
            return "a spin rate";
        case Measure::temperature:
            return "temperature";
        case Measure::pressure:
            return "pressure";
        case Measure::share:
            break;
    }
    return "a share";
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
        {"c", Measure::temperature, 1.0, kelvin_at_zero_celsius},
        {"f", Measure::temperature, 1.0 / 1.8, kelvin_at_zero_celsius - 32.0 / 1.8},
        {"hpa", Measure::pressure, pascals_per_hpa},
        {"inhg", Measure::pressure, pascals_per_inhg},
        {"pct", Measure::share, 0.01},
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
        {"mi/h", "mph"}, {"inch", "in"},  {"inches", "in"},  {"°c", "c"},        {"°f", "f"},
        {"mbar", "hpa"}, {"%", "pct"},
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
