// Where on the face a golfer's balls were struck, and what that did to them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/logged_clubs.hpp"

namespace landwidth {

// A straight line through points, by least squares.
struct StrikeSlope {
    std::size_t shots;      // at least 3
    double per_cm;          // of the quantity
    double standard_error;  // of per_cm, of independent errors of one size
};

struct StrikeEffect {
    std::string club;     // as LoggedClub::name
    std::size_t shots;    // with a place on the face
    double mean_toe_m;    // towards the toe positive
    double off_centre_m;  // root mean square distance from the centre, over what is recorded of it
    // Share of the ball speed for each centimetre off the centre, of the club's median: -0.02 is 2 % less.
    std::optional<StrikeSlope> ball_speed_share;
    // Metres to the right for each centimetre further to the toe.
    std::optional<StrikeSlope> side_m;
};

// Of the clubs with at least one place recorded, in their order. Slopes need three shots at different places.
std::vector<StrikeEffect> strike_effects(const std::vector<NamedLog>& logs, const LoggedClubs& clubs);

}  // namespace landwidth
