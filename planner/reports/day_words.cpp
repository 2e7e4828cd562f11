#include "planner/reports/day_words.hpp"

#include <fmt/format.h>

#include <cmath>

#include "planner/reports/display_length.hpp"
#include "planner/reports/wind_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// A share of balls below this is not worth a word.
constexpr double worth_telling = 0.01;

std::string heavier_words(double density, double reference) {
    const double percent = std::round(100.0 * (density / reference - 1.0));
    if (percent == 0.0) return "as heavy as the reference";
    return fmt::format("{:.0f} % {} than the reference", std::abs(percent),
                       percent > 0.0 ? "heavier" : "lighter");
}

std::string air_words(const Weather& weather) {
    const double density = air_of(weather).density_kg_per_m3;
    std::string words =
        fmt::format("{:.0f} °C, {:.0f} hPa", std::round(weather.temperature_k - kelvin_at_zero_celsius) + 0.0,
                    weather.pressure_pa / 100.0);
    if (weather.humidity > 0.0) words += fmt::format(", humidity {}", share_text(weather.humidity));
    return words + fmt::format(": air of {:.2f} kg/m³, {}", density,
                               heavier_words(density, air_of(standard_weather(0.0)).density_kg_per_m3));
}

std::string firmness_words(const Conditions& conditions) {
    const auto word = [](Firmness firmness) { return firmness == Firmness::soft ? "soft" : "firm"; };
    const bool fairway = conditions.fairway != Firmness::ordinary;
    const bool rough = conditions.rough != Firmness::ordinary;
    if (fairway && rough && conditions.fairway == conditions.rough)
        return fmt::format("{} fairways and rough", word(conditions.fairway));
    std::string words;
    if (fairway) words = fmt::format("{} fairways", word(conditions.fairway));
    if (rough) words += fmt::format("{}{} rough", fairway ? ", " : "", word(conditions.rough));
    return words;
}

std::string rise_words(double rise_m, DisplayUnits units) {
    const std::string number = length_number(std::abs(rise_m), units);
    if (number == "0") return "level";
    return fmt::format("{} {} {}", number, display_unit(units), rise_m > 0.0 ? "up" : "down");
}

// "9 right"; empty for a drift that rounds to nothing.
std::string drift_text(double drift_m, DisplayUnits units) {
    const std::string number = length_number(std::abs(drift_m), units);
    return number == "0" ? std::string() : fmt::format("{} {}", number, drift_m > 0.0 ? "right" : "left");
}

}  // namespace

bool shows_day(const RoundPlan& plan) {
    return !is_reference_day(plan.conditions) || plan.has_heights;
}

std::string conditions_words(const Conditions& conditions, DisplayUnits units) {
    std::string words;
    const auto add = [&](const std::string& part) {
        if (!part.empty()) words += (words.empty() ? "" : "; ") + part;
    };
    if (conditions.wind) add(wind_words(*conditions.wind, units));
    if (conditions.weather != standard_weather(0.0)) add(air_words(conditions.weather));
    add(firmness_words(conditions));
    return words;
}

std::string day_words(const Conditions& conditions, bool has_heights, DisplayUnits units) {
    if (is_reference_day(conditions) && !has_heights) return {};
    std::string words = conditions_words(conditions, units);
    if (words.empty()) words = "still air at 15 °C and 1013 hPa";
    return words + (has_heights ? "; heights of the ground as given" : "; level ground");
}

std::string plays_as_words(const PlanView& view, std::size_t hole) {
    if (!shows_day(view.plan)) return {};
    const HolePlan& plan = view.plan.holes.at(hole);
    std::string words = fmt::format("plays as {} ({} on the card)", length_text(plan.plays_as_m, view.units),
                                    length_number(view.course.holes.at(hole).line.length(), view.units));
    if (view.plan.has_heights) words += ", " + rise_words(plan.rise_m, view.units);
    const std::string wind = wind_parts_words(plan.tail_wind_mps, plan.cross_wind_mps, view.units);
    return wind.empty() ? words : fmt::format("{}, wind {}", words, wind);
}

std::string flight_words(const ShotOfTheDay& shot, DisplayUnits units) {
    std::string words = fmt::format("carries {}", length_text(shot.carry_m, units));
    if (const std::string drift = drift_text(shot.drift_m, units); !drift.empty())
        words += ", drifts " + drift;
    words += fmt::format(", runs {}", length_number(shot.run_m, units));
    if (shot.stopped_share > worth_telling) {
        words += fmt::format("; {} of the balls are stopped by trees or buildings on their way",
                             share_text(shot.stopped_share));
    }
    return words;
}

std::string flight_cell(const ShotOfTheDay& shot, DisplayUnits units) {
    std::string words = length_number(shot.carry_m, units);
    const std::string drift = length_number(std::abs(shot.drift_m), units);
    if (drift != "0") words += fmt::format(", {}{}", drift, shot.drift_m > 0.0 ? 'R' : 'L');
    if (shot.stopped_share > worth_telling)
        words += fmt::format("; {} stopped", share_text(shot.stopped_share));
    return words;
}

std::string_view setting_words(const Conditions& conditions, bool has_heights) {
    if (is_reference_day(conditions))
        return has_heights ? "in still air on the ground as given" : reference_setting;
    return has_heights ? "on the day and the ground given" : "on the day given, on level ground";
}

}  // namespace landwidth
