// The air a ball flies through, from what a weather report says.
//
// SI: kelvin, pascal, kg/m3. Sources: ISO 2533 for the standard atmosphere; the saturation pressure of water
// by a Magnus formula (see air.cpp for how sure its constants are).
#pragma once

#include <optional>

namespace landwidth {

inline constexpr double kelvin_at_zero_celsius = 273.15;

// What is measured. Humidity relative, in [0, 1].
struct Weather {
    double temperature_k;
    double pressure_pa;  // at the place itself, not reduced to sea level
    double humidity;

    friend bool operator==(const Weather&, const Weather&) = default;
};

// ISO 2533 at an altitude above sea level, dry air; altitude in [-1000, 9000] m, else std::invalid_argument.
Weather standard_weather(double altitude_m);

// What is known of the air at a place: all of it, some, or nothing. SI.
struct WeatherReport {
    std::optional<double> temperature_k = {};
    std::optional<double> altitude_m = {};   // of the place; not with a pressure
    std::optional<double> pressure_pa = {};  // measured there
    std::optional<double> humidity = {};     // [0, 1]

    friend bool operator==(const WeatherReport&, const WeatherReport&) = default;
};

// Where a report says nothing: sea level, the standard temperature of the altitude, dry air. A pressure goes
// before an altitude.
Weather weather_of(const WeatherReport& report);

// What people play golf in; beyond is a slip of the keyboard or of the unit. The Dead Sea's shore lies at
// -430 m; no course is known above 4400 m (from memory). Assumptions.
inline constexpr double coldest_c = -20.0, hottest_c = 50.0;
inline constexpr double lowest_place_m = -500.0, highest_place_m = 4500.0;
inline constexpr double thinnest_air_pa = 55000.0, densest_air_pa = 110000.0;
inline constexpr double strongest_wind_mph = 60.0;

inline constexpr double pascals_per_hpa = 100.0;
inline constexpr double pascals_per_inhg = 3386.389;  // conventional inch of mercury at 0 C

// What flight asks of it.
struct Air {
    double density_kg_per_m3;
    double viscosity_pa_s;  // dynamic

    friend bool operator==(const Air&, const Air&) = default;
};

// Throws std::invalid_argument for what is no weather: not finite, temperature or pressure <= 0, humidity
// outside [0, 1].
Air air_of(const Weather& weather);

}  // namespace landwidth
