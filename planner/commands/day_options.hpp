// The options that say what day it is: wind, air, how firm the ground is.
#pragma once

#include <CLI/App.hpp>
#include <optional>
#include <string>

#include "planner/engine/day/conditions.hpp"

namespace landwidth {

class DayOptions {
  public:
    void setup(CLI::App& app);
    // --wind-card besides: a speed for every direction in place of --wind.
    void setup_wind_card(CLI::App& app);

    // The reference day but for what was typed. Without a temperature the standard one of the altitude holds.
    // Throws UsageError for what is no weather, is typed in no unit or a wrong one, or does not go together.
    Conditions conditions() const;
    // The wind of the card asked for, its bearing 0; nothing when none was. Throws UsageError.
    std::optional<Wind> wind_card() const;

  private:
    Weather weather() const;

    // As typed.
    std::optional<std::string> wind_;
    std::optional<std::string> wind_card_;
    std::optional<std::string> gusts_;
    std::optional<std::string> temperature_;
    std::optional<std::string> altitude_;
    std::optional<std::string> pressure_;
    std::optional<std::string> humidity_;
    std::string fairway_ = "ordinary";
    std::string rough_ = "ordinary";
};

}  // namespace landwidth
