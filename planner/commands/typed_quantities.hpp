// Quantities as typed on the command line, a number with its unit behind it: "12mph", "8 C", "29.9inHg".
//
// Nothing is guessed: a number without a unit is refused, and so is one that only makes sense in another
// unit. `option` is the option's name for the message. All throw UsageError: one line that says what to
// write.
#pragma once

#include <string>
#include <string_view>

#include "planner/engine/day/conditions.hpp"

namespace landwidth {

// mph, km/h, m/s or knots; from 0 to 60 mph.
double typed_wind_speed_mps(std::string_view option, std::string_view typed);

// "12mph@240": speed and where it blows from, degrees 0 to 360 clockwise from true north or one of the 16
// points of the compass. Without gusts.
Wind typed_wind(std::string_view option, std::string_view typed);

// C or F; from -20 to 50 C.
double typed_temperature_k(std::string_view option, std::string_view typed);

// Of a place above sea level: ft, yd or m; from -500 to 4500 m.
double typed_altitude_m(std::string_view option, std::string_view typed);

// hPa, mbar or inHg; from 550 to 1100 hPa.
double typed_pressure_pa(std::string_view option, std::string_view typed);

// "60%", as a share.
double typed_humidity(std::string_view option, std::string_view typed);

}  // namespace landwidth
