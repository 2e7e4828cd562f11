// The units a shot log may be written in, in its headings (carry_yd) and in its cells (212 m); lengths and
// speeds on the command line are read by them too.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace landwidth {

// What kind of quantity a number is; on_face: a place on a club's face, a small length.
enum class Measure { length, speed, angle, spin, on_face, temperature, pressure, share };

struct LogUnit {
    std::string_view suffix;  // in a heading: "yd", "kmh"
    Measure measure;
    double si;  // of one unit: metres, metres per second, radians, radians per second, kelvin, pascals
    double zero = 0.0;  // SI value of 0 of the unit: 273.15 K of 0 C

    double in_si(double value) const { return value * si + zero; }
    double of_si(double si_value) const { return (si_value - zero) / si; }

    friend bool operator==(const LogUnit& a, const LogUnit& b) { return a.suffix == b.suffix; }
};

// "a length", "a speed", ...
std::string_view measure_words(Measure measure);

// yd, m and ft; mph, mps, kmh and kn; deg; rpm; mm, cm and in on the face; c and f; hpa and inhg; pct.
const std::vector<LogUnit>& log_units();

// As people write it in a cell, in any case: "yd", "yards", "m/s", "km/h", "°".
std::optional<LogUnit> unit_written(std::string_view word);

// In small ASCII letters; other characters as they are.
std::string in_small_letters(std::string_view text);

}  // namespace landwidth
