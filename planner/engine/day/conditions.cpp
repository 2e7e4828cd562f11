#include "planner/engine/day/conditions.hpp"

namespace landwidth {

bool is_reference_day(const Conditions& conditions) {
    const std::optional<Wind>& wind = conditions.wind;
    const bool calm = !wind || (wind->speed_mps == 0.0 && wind->gusts_mps.value_or(0.0) == 0.0);
    return calm && conditions.weather == standard_weather(0.0) && conditions.fairway == Firmness::ordinary &&
           conditions.rough == Firmness::ordinary;
}

}  // namespace landwidth
