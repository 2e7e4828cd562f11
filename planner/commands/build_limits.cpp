#include "planner/commands/build_limits.hpp"

#include <fmt/format.h>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/club_build.hpp"

namespace landwidth {
namespace {

constexpr double cm_per_inch = 100.0 * metres_per_inch;
constexpr double g_per_ounce = kilograms_per_ounce / kilograms_per_gram;
constexpr double kmh_per_mph = 3.6 * metres_per_second_per_mph;

bool fits(double value, const BuildLimits& limits) {
    return value >= limits.low && value <= limits.high;
}

std::string meant(double value, const BuildLimits& limits) {
    if (limits.other > 0.0 && fits(value / limits.other, limits)) {
        return fmt::format("; {:g} {} are {:.4g} {}", value, limits.other_name, value / limits.other,
                           limits.unit);
    }
    for (const double slip : {0.1, 0.01, 10.0}) {
        if (fits(value * slip, limits)) return fmt::format("; was {:g} meant?", value * slip);
    }
    return {};
}

}  // namespace

// Wide of anything that is built, the rules' limits included: those are told in the answer.
const BuildLimits build_length_limits{17.0, 60.0, "in", metres_per_inch, cm_per_inch, "cm"};
const BuildLimits balance_limits{14.0, 60.0, "in", metres_per_inch, cm_per_inch, "cm"};
const BuildLimits head_limits{50.0, 600.0, "g", kilograms_per_gram, 1.0 / g_per_ounce, "oz"};
const BuildLimits shaft_limits{20.0, 200.0, "g", kilograms_per_gram, 1.0 / g_per_ounce, "oz"};
const BuildLimits grip_limits{10.0, 250.0, "g", kilograms_per_gram, 1.0 / g_per_ounce, "oz"};
const BuildLimits total_limits{150.0, 1000.0, "g", kilograms_per_gram, 1.0 / g_per_ounce, "oz"};
const BuildLimits shaft_balance_limits{0.3, 0.7, "of its length", 1.0, 100.0, "%"};
const BuildLimits club_speed_limits{20.0, 160.0, "mph", metres_per_second_per_mph, kmh_per_mph, "km/h"};
const BuildLimits ball_speed_limits{20.0, 240.0, "mph", metres_per_second_per_mph, kmh_per_mph, "km/h"};
const BuildLimits inertia_limits{300.0, 10000.0, "kg cm2", kg_m2_per_kg_cm2, 1000.0, "g cm2"};
const BuildLimits lie_limits{45.0, 80.0, "degrees", radians_per_degree};
const BuildLimits loft_limits{0.0, 75.0, "degrees", radians_per_degree};

bool is_within(double si_value, const BuildLimits& limits) {
    return fits(si_value / limits.si, limits);
}

std::optional<double> within(const std::optional<double>& value, std::string_view option,
                             std::string_view typed, const BuildLimits& limits) {
    if (!value) return std::nullopt;
    if (!fits(*value, limits)) {
        throw UsageError(fmt::format("{} {}: from {:g} to {:g} {} is expected{}", option, typed, limits.low,
                                     limits.high, limits.unit, meant(*value, limits)));
    }
    return *value * limits.si;
}

}  // namespace landwidth
