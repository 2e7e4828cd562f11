// What a number of landwidth build may be: a slip of the decimal point, a unit or an option is told and not
// computed with.
#pragma once

#include <optional>
#include <string_view>

namespace landwidth {

struct BuildLimits {
    double low, high;
    std::string_view unit;
    double si;           // of one unit
    double other = 0.0;  // so many of another unit, one that is often typed, are one of this ...
    std::string_view other_name = {};  // ... "cm"; 0: none
};

extern const BuildLimits build_length_limits;
extern const BuildLimits balance_limits;
extern const BuildLimits head_limits;
extern const BuildLimits shaft_limits;
extern const BuildLimits grip_limits;
extern const BuildLimits total_limits;
extern const BuildLimits shaft_balance_limits;
extern const BuildLimits club_speed_limits;
extern const BuildLimits ball_speed_limits;
extern const BuildLimits inertia_limits;
extern const BuildLimits lie_limits;
extern const BuildLimits loft_limits;

bool is_within(double si_value, const BuildLimits& limits);

// In SI; nothing for nothing. Throws UsageError naming the option, what was `typed`, the limits and what was
// probably meant.
std::optional<double> within(const std::optional<double>& value, std::string_view option,
                             std::string_view typed, const BuildLimits& limits);

}  // namespace landwidth
