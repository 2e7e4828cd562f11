#include "planner/reports/json_day.hpp"

#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

constexpr int speed_decimals = 1;

const char* firmness_key(Firmness firmness) {
    switch (firmness) {
        case Firmness::soft:
            return "soft";
        case Firmness::ordinary:
            break;
        case Firmness::firm:
            return "firm";
    }
    return "ordinary";
}

Json json_wind(const std::optional<Wind>& wind) {
    if (!wind) return nullptr;
    Json gusts = nullptr;
    if (wind->gusts_mps) gusts = json_mph(*wind->gusts_mps);
    return {{"speed_mph", json_mph(wind->speed_mps)},
            {"from_deg", rounded_direction(wind->from.degrees(), 1)},
            {"gusts_mph", gusts}};
}

}  // namespace

double json_mph(double mps) {
    return rounded(mps / metres_per_second_per_mph, speed_decimals);
}

Json json_day(const Conditions& conditions) {
    const Weather& weather = conditions.weather;
    return {{"wind", json_wind(conditions.wind)},
            {"temperature_c", rounded(weather.temperature_k - kelvin_at_zero_celsius, 1)},
            {"pressure_hpa", rounded(weather.pressure_pa / 100.0, 1)},
            {"humidity_share", rounded(weather.humidity, 3)},
            {"air_density_kg_per_m3", rounded(air_of(weather).density_kg_per_m3, 4)},
            {"firmness",
             {{"fairway", firmness_key(conditions.fairway)}, {"rough", firmness_key(conditions.rough)}}}};
}

}  // namespace landwidth
