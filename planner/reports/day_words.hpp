// The day and the ground of a plan in words. Empty where a plan is made for the reference day on level
// ground, so that its reports say nothing of either.
#pragma once

#include <string>
#include <string_view>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// Whether a text or a page says anything of day and ground.
bool shows_day(const RoundPlan& plan);

// "wind 12 mph from 240 (WSW), gusting 18; 8 °C, 1002 hPa, humidity 60 %: air of 1.26 kg/m³, 3 % heavier than
// the reference; soft fairways". Empty on the reference day.
std::string conditions_words(const Conditions& conditions, DisplayUnits units);

// The same for the head of a report, and what is known of the ground. Empty on the reference day on level
// ground.
std::string day_words(const Conditions& conditions, bool has_heights, DisplayUnits units);

// "plays as 412 yd (402 on the card), 6 yd up, wind 9 mph against, 7 mph from the left". Empty where the plan
// does not show the day.
std::string plays_as_words(const PlanView& view, std::size_t hole);

// "carries 208 yd, drifts 9 right, runs 14; 3 % of the balls are stopped by trees or buildings on their way".
std::string flight_words(const ShotOfTheDay& shot, DisplayUnits units);
// The same for a cell of a table, without run and unit: "208, 9R; 3 % stopped".
std::string flight_cell(const ShotOfTheDay& shot, DisplayUnits units);

// What the figures hold for, for cautions: "in still air on level ground", "on the day given, on level
// ground", ...
std::string_view setting_words(const Conditions& conditions, bool has_heights);

}  // namespace landwidth
