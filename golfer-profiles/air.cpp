#include "golfer-profiles/air.hpp"

#include <cmath>
#include <stdexcept>

namespace landwidth {

namespace {

// ISO 2533, standard atmosphere up to 11 km: sea level, lapse rate, gas constant of dry air, gravity and the
// nominal radius of the earth.
constexpr double sea_level_k = 288.15;
constexpr double sea_level_pa = 101325.0;
constexpr double lapse_k_per_m = 0.0065;
constexpr double dry_air_j_per_kg_k = 287.05287;
constexpr double gravity_mps2 = 9.80665;
constexpr double earth_radius_m = 6356766.0;
// The same standard: Sutherland's viscosity of air.
constexpr double sutherland_kg_per_m_s_rootk = 1.458e-6;
constexpr double sutherland_k = 110.4;

// Gas constant of water vapour (8.314463 J/mol K over 18.015268 g/mol).
constexpr double vapour_j_per_kg_k = 461.52;

// The saturation pressure over water by a Magnus formula; constants of the WMO Guide to Instruments and
// Methods of Observation, from memory. Within a few tenths of a percent at temperatures people play golf in.
double saturation_pa(double temperature_k) {
    const double celsius = temperature_k - kelvin_at_zero_celsius;
    return 611.2 * std::exp(17.62 * celsius / (243.12 + celsius));
}

}  // namespace

Weather standard_weather(double altitude_m) {
    if (!(altitude_m >= -1000.0 && altitude_m <= 9000.0))
        throw std::invalid_argument("an altitude outside -1000 to 9000 m");
    const double geopotential_m = earth_radius_m * altitude_m / (earth_radius_m + altitude_m);
    const double temperature_k = sea_level_k - lapse_k_per_m * geopotential_m;
    const double exponent = gravity_mps2 / (dry_air_j_per_kg_k * lapse_k_per_m);
    return {temperature_k, sea_level_pa * std::pow(temperature_k / sea_level_k, exponent), 0.0};
}

Weather weather_of(const WeatherReport& report) {
    Weather weather = standard_weather(report.altitude_m.value_or(0.0));
    weather.pressure_pa = report.pressure_pa.value_or(weather.pressure_pa);
    weather.temperature_k = report.temperature_k.value_or(weather.temperature_k);
    weather.humidity = report.humidity.value_or(weather.humidity);
    return weather;
}

Air air_of(const Weather& weather) {
    const double t = weather.temperature_k;
    if (!(t > 0.0 && std::isfinite(t)) ||
        !(weather.pressure_pa > 0.0 && std::isfinite(weather.pressure_pa)) ||
        !(weather.humidity >= 0.0 && weather.humidity <= 1.0))
        throw std::invalid_argument("a temperature, pressure or humidity that no air has");
    const double vapour_pa = weather.humidity * saturation_pa(t);
    return {
        (weather.pressure_pa - vapour_pa) / (dry_air_j_per_kg_k * t) + vapour_pa / (vapour_j_per_kg_k * t),
        sutherland_kg_per_m_s_rootk * t * std::sqrt(t) / (t + sutherland_k)};
}

}  // namespace landwidth
