#include "planner/commands/typed_quantities.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/log_units.hpp"
#include "planner/commands/typed_text.hpp"
#include "planner/reports/wind_words.hpp"

namespace landwidth {
namespace {

double wind_speed_mps(const Typed& typed, std::string_view speed, std::string_view example) {
    const TypedQuantity quantity = quantity_of(typed, speed, example);
    const double mps = si_of(typed, quantity, Measure::speed, example);
    if (mps < 0.0) typed.refuse(fmt::format("a speed is not below 0: write {}", example));
    const double mph = mps / metres_per_second_per_mph;
    if (mph > strongest_wind_mph * (1.0 + 1e-9)) {
        typed.refuse(fmt::format("nobody plays golf in a wind of {:.4g} mph; up to {:g} mph is expected", mph,
                                 strongest_wind_mph));
    }
    return mps;
}

std::optional<Bearing> compass_bearing(std::string_view word) {
    const std::string small = in_small_letters(word);
    for (std::size_t i = 0; i < compass_points.size(); ++i)
        if (small == in_small_letters(compass_points[i]))
            return Bearing::from_degrees(360.0 * static_cast<double>(i) / compass_points.size());
    return std::nullopt;
}

constexpr std::string_view wind_example = "12mph@240 or 12mph@WSW (mph, km/h, m/s or kn)";

Bearing wind_bearing(const Typed& typed, std::string_view word) {
    if (const auto point = compass_bearing(word)) return *point;
    double degrees = 0.0;
    const auto [stopped, error] = std::from_chars(word.data(), word.data() + word.size(), degrees);
    const std::string rest =
        in_small_letters(trimmed(word.substr(static_cast<std::size_t>(stopped - word.data()))));
    const std::optional<LogUnit> unit = unit_written(rest);
    if (error == std::errc() && unit && unit->measure == Measure::speed)
        typed.refuse("the unit belongs to the speed: write 12mph@240");
    const bool plain = rest.empty() || (unit && unit->measure == Measure::angle);
    if (error != std::errc() || !plain || !(degrees >= 0.0 && degrees <= 360.0)) {
        typed.refuse(
            "behind the @ stands where the wind blows from, 0 to 360 degrees from north or a point of the "
            "compass such as N, SW or WSW: write 12mph@240");
    }
    return Bearing::from_degrees(degrees);
}

void check_temperature(const Typed& typed, const TypedQuantity& quantity, double celsius) {
    constexpr double rounding = 1e-9;
    if (celsius >= coldest_c - rounding && celsius <= hottest_c + rounding) return;
    const bool in_fahrenheit = quantity.unit.ends_with('f');
    // What the number would be had the other unit been meant.
    const double other_c = in_fahrenheit ? quantity.number : (quantity.number - 32.0) / 1.8;
    const std::string meant =
        other_c >= coldest_c && other_c <= hottest_c
            ? fmt::format("; was {:g}{} meant?", quantity.number, in_fahrenheit ? "C" : "F")
            : std::string();
    typed.refuse(fmt::format("that is {:.3g} C or {:.3g} F; from {:g} to {:g} C is expected{}", celsius,
                             1.8 * celsius + 32.0, coldest_c, hottest_c, meant));
}

bool is_air_pressure(double pressure_pa) {
    return pressure_pa >= thinnest_air_pa && pressure_pa <= densest_air_pa;
}

}  // namespace

double typed_wind_speed_mps(std::string_view option, std::string_view text) {
    const Typed typed{option, text};
    if (text.find('@') != std::string_view::npos)
        typed.refuse("a speed alone is expected, without a bearing: write 18mph");
    return wind_speed_mps(typed, text, "18mph (or km/h, m/s, kn)");
}

Wind typed_wind(std::string_view option, std::string_view text) {
    const Typed typed{option, text};
    const std::size_t at = text.find('@');
    if (at == std::string_view::npos) {
        wind_speed_mps(typed, text, wind_example);
        typed.refuse("where the wind blows from is missing: write 12mph@240 or 12mph@WSW");
    }
    const std::string_view from = trimmed(text.substr(at + 1));
    // A unit behind the bearing explains a speed without one: told first.
    const Bearing bearing = wind_bearing(typed, from);
    const std::string_view speed = trimmed(text.substr(0, at));
    return {wind_speed_mps(typed, speed, wind_example), bearing};
}

double typed_temperature_k(std::string_view option, std::string_view text) {
    constexpr std::string_view example = "8C or 46F";
    const Typed typed{option, text};
    const TypedQuantity quantity = quantity_of(typed, text, example);
    const double kelvin = si_of(typed, quantity, Measure::temperature, example);
    check_temperature(typed, quantity, kelvin - kelvin_at_zero_celsius);
    return kelvin;
}

double typed_altitude_m(std::string_view option, std::string_view text) {
    constexpr std::string_view example = "5280ft or 1600m";
    const Typed typed{option, text};
    const TypedQuantity quantity = quantity_of(typed, text, example);
    const double altitude_m = si_of(typed, quantity, Measure::length, example);
    if (altitude_m >= lowest_place_m && altitude_m <= highest_place_m) return altitude_m;
    const double in_feet_m = quantity.number * metres_per_foot;
    const bool feet_meant = in_feet_m >= lowest_place_m && in_feet_m <= highest_place_m;
    typed.refuse(fmt::format("no course lies at {:.0f} m; from {:g} to {:g} m above sea level is expected{}",
                             altitude_m, lowest_place_m, highest_place_m,
                             feet_meant ? fmt::format("; was {:g}ft meant?", quantity.number) : ""));
}

double typed_pressure_pa(std::string_view option, std::string_view text) {
    constexpr std::string_view example = "1002hPa, 1002mbar or 29.6inHg";
    const Typed typed{option, text};
    const TypedQuantity quantity = quantity_of(typed, text, example);
    const double pressure_pa = si_of(typed, quantity, Measure::pressure, example);
    const bool inches = quantity.unit == "inhg";
    if (is_air_pressure(pressure_pa)) return pressure_pa;
    const bool other_meant = is_air_pressure(quantity.number * (inches ? pascals_per_hpa : pascals_per_inhg));
    typed.refuse(fmt::format(
        "no course has air of {:.4g} hPa; from {:g} to {:g} hPa, measured there, is expected{}",
        pressure_pa / pascals_per_hpa, thinnest_air_pa / pascals_per_hpa, densest_air_pa / pascals_per_hpa,
        other_meant ? fmt::format("; was {:g}{} meant?", quantity.number, inches ? "hPa" : "inHg") : ""));
}

double typed_humidity(std::string_view option, std::string_view text) {
    constexpr std::string_view example = "60%";
    const Typed typed{option, text};
    const TypedQuantity quantity = quantity_of(typed, text, example);
    if (quantity.unit != "%") typed.refuse(fmt::format("per cent are expected: write {}", example));
    if (!(quantity.number >= 0.0 && quantity.number <= 100.0)) typed.refuse("from 0% to 100% is expected");
    return quantity.number / 100.0;
}

}  // namespace landwidth
