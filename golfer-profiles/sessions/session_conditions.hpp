// What shots were hit in: air, wind, ball, ground, under a roof or not, as a row of a log or the user says
// it.
//
// Profiles hold shots of the reference day (still air of ISO 2533 at sea level, a course ball). Whatever is
// not said is taken to be as on that day; `to_reference.hpp` brings the rest there.
//
// Wind is told against the line of the shot and not by the compass, since a bay knows its line and seldom its
// bearing: an angle clockwise from the line says where it comes from. 0 is straight against, 90 degrees from
// the right, 180 from behind, 270 from the left.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "golfer-profiles/air.hpp"
#include "golfer-profiles/ball_flight.hpp"

namespace landwidth {

enum class BallUsed { course, range };
enum class HitFrom { grass, mat, tee };
// Whether carries are as they were in that air, or an indoor system or a launch monitor gives them as of the
// reference day. The second must never be corrected again.
enum class CarryAir { as_hit, reference };

struct ShotWind {
    double speed_mps;  // >= 0
    double from_rad;   // clockwise from the line of the shot: 0 is against

    friend bool operator==(const ShotWind&, const ShotWind&) = default;
};

struct SessionConditions {
    WeatherReport weather = {};
    std::optional<ShotWind> wind = {};
    std::optional<BallUsed> ball = {};
    std::optional<HitFrom> surface = {};
    std::optional<bool> indoors = {};
    std::optional<CarryAir> air = {};

    friend bool operator==(const SessionConditions&, const SessionConditions&) = default;
};

// The words of files and options; nothing for any other word. Case does not matter.
std::optional<BallUsed> ball_named(std::string_view word);       // course, range
std::optional<HitFrom> surface_named(std::string_view word);     // grass, mat, tee
std::optional<bool> yes_or_no(std::string_view word);            // yes, no, true, false, 1, 0
std::optional<CarryAir> carry_air_named(std::string_view word);  // as-hit, reference
// Where a wind comes from, radians: against, against-right, right, behind-right, behind, behind-left, left,
// against-left.
std::optional<double> wind_from_named(std::string_view word);

// Why what is said cannot all hold, as the end of a sentence; empty when it can: a wind indoors, an altitude
// beside a pressure.
std::string contradiction_in(const SessionConditions& said);

// The air and wind to bring a shot from; absent when it was hit in those of the reference day, or its carry
// is given as of that day. `said` has no contradiction.
std::optional<AirFlow> flow_of(const SessionConditions& said);

// Whether anything is said of air or wind.
bool says_air(const SessionConditions& said);

// From a bay: under a roof, or off a mat.
bool is_from_bay(const SessionConditions& said);

// "8 °C, 1013 hPa, wind 8 mph against, range balls"; empty when nothing is said that moves a ball.
std::string conditions_words(const SessionConditions& said);

}  // namespace landwidth
