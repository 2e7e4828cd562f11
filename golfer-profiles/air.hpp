// The air a ball flies through, from what a weather report says.
//
// SI: kelvin, pascal, kg/m3. Sources: ISO 2533 for the standard atmosphere; the saturation pressure of water
// by a Magnus formula (see air.cpp for how sure its constants are).
#pragma once

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
