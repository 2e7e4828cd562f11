#include "golfer-profiles/sessions/session_conditions.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include "geometry/units.hpp"
#include "golfer-profiles/club_flight.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {
namespace {

template <typename Value, std::size_t count>
std::optional<Value> value_named(const std::array<std::pair<std::string_view, Value>, count>& names,
                                 std::string_view word) {
    for (const auto& [name, value] : names)
        if (same_name(name, word)) return value;
    return std::nullopt;
}

// Clockwise from the line, 45 degrees apart.
constexpr std::array<std::string_view, 8> winds_by_name{"against", "against-right", "right", "behind-right",
                                                        "behind",  "behind-left",   "left",  "against-left"};

std::string wind_words(const ShotWind& wind) {
    constexpr double turn = 2.0 * std::numbers::pi;
    const double turns = wind.from_rad / turn - std::floor(wind.from_rad / turn);
    const double eighths = turns * winds_by_name.size();
    const auto nearest = static_cast<std::size_t>(std::lround(eighths)) % winds_by_name.size();
    const std::string speed = fmt::format("wind {:.3g} mph", wind.speed_mps / metres_per_second_per_mph);
    constexpr double as_named = 1e-6;
    if (std::abs(eighths - std::round(eighths)) > as_named)
        return fmt::format("{} from {:.0f}° off the line", speed, 360.0 * turns);
    const std::string_view name = winds_by_name[nearest];
    return fmt::format("{} {}{}", speed, name == "left" || name == "right" ? "from the " : "", name);
}

}  // namespace

std::optional<BallUsed> ball_named(std::string_view word) {
    return value_named<BallUsed, 2>({{{"course", BallUsed::course}, {"range", BallUsed::range}}}, word);
}

std::optional<HitFrom> surface_named(std::string_view word) {
    return value_named<HitFrom, 3>(
        {{{"grass", HitFrom::grass}, {"mat", HitFrom::mat}, {"tee", HitFrom::tee}}}, word);
}

std::optional<bool> yes_or_no(std::string_view word) {
    return value_named<bool, 6>(
        {{{"yes", true}, {"no", false}, {"true", true}, {"false", false}, {"1", true}, {"0", false}}}, word);
}

std::optional<CarryAir> carry_air_named(std::string_view word) {
    return value_named<CarryAir, 2>({{{"as-hit", CarryAir::as_hit}, {"reference", CarryAir::reference}}},
                                    word);
}

std::optional<double> wind_from_named(std::string_view word) {
    for (std::size_t i = 0; i < winds_by_name.size(); ++i)
        if (same_name(winds_by_name[i], word))
            return 2.0 * std::numbers::pi * static_cast<double>(i) / winds_by_name.size();
    return std::nullopt;
}

std::string contradiction_in(const SessionConditions& said) {
    if (said.indoors.value_or(false) && said.wind && said.wind->speed_mps > 0.0)
        return "indoors and a wind; one of them is wrong";
    if (said.weather.altitude_m && said.weather.pressure_pa)
        return "an altitude and a pressure both say how thick the air is; give the pressure if it was "
               "measured "
               "there, else the altitude";
    return {};
}

bool says_air(const SessionConditions& said) {
    return said.weather != WeatherReport{} || said.wind;
}

std::optional<AirFlow> flow_of(const SessionConditions& said) {
    if (said.air == CarryAir::reference || !says_air(said)) return std::nullopt;
    AirFlow flow{.air = air_of(weather_of(said.weather))};
    if (said.wind && said.wind->speed_mps > 0.0) {
        flow.along_mps = -said.wind->speed_mps * std::cos(said.wind->from_rad);
        flow.right_mps = -said.wind->speed_mps * std::sin(said.wind->from_rad);
    } else if (flow.air == reference_air().air) {
        return std::nullopt;
    }
    return flow;
}

bool is_from_bay(const SessionConditions& said) {
    return said.indoors.value_or(false) || said.surface == HitFrom::mat;
}

std::string conditions_words(const SessionConditions& said) {
    std::string words;
    const auto add = [&](const std::string& part) { words += (words.empty() ? "" : ", ") + part; };
    if (said.air != CarryAir::reference) {
        if (said.weather != WeatherReport{}) {
            const Weather weather = weather_of(said.weather);
            add(fmt::format("{:.0f} °C, {:.0f} hPa",
                            std::round(weather.temperature_k - kelvin_at_zero_celsius) + 0.0,
                            weather.pressure_pa / pascals_per_hpa));
            if (weather.humidity > 0.0) add(fmt::format("humidity {:.0f} %", 100.0 * weather.humidity));
        }
        if (said.wind && said.wind->speed_mps > 0.0) add(wind_words(*said.wind));
    }
    if (said.ball == BallUsed::range) add("range balls");
    return words;
}

}  // namespace landwidth
