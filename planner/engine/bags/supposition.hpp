// A club as it might become: "driver, 44 in: spread -10 %, ball speed +3 mph". Nobody has hit it.
//
// A supposed club is the named one with something changed. What is open about the named club is open about
// the supposed one in the same way: every draw of its pattern is the same draw with the same change, so that
// in their comparison only the change is left. It says what the change would be worth if it came true, not
// whether it will.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "golfer-profiles/evidence/bag_draws.hpp"

namespace landwidth {

struct Supposition {
    // Factors on the standard deviations of usual shots and mishits; 1: as they are.
    double carry_spread = 1.0;
    double side_spread = 1.0;
    // Usual shots; mishits go further by the same share. First the factor, then the metres.
    double carry_factor = 1.0;
    double carry_m = 0.0;
    double side_m = 0.0;  // to the right; usual shots and mishits alike
    // On the share of mishits: first the factor, then the share added.
    double mishit_factor = 1.0;
    double mishit_share = 0.0;
    // More speed of the ball, launched as high and with as much spin as now. It goes further by
    // speed_carry_m, which with_flight works out.
    double ball_speed_mps = 0.0;
    double speed_carry_m = 0.0;

    friend bool operator==(const Supposition&, const Supposition&) = default;
};

// With speed_carry_m of a club that has a pattern: how much further its usual shot carries on the reference
// day (golfer-profiles/club_flight.hpp), with the launch that is recorded or else the usual one.
Supposition with_flight(Supposition supposition, const Club& club);

// The pattern with the change. Shares of mishits stay within [0, 0.95]; where there are no mishits there are
// none after. The spread about the centres does not grow with the carry: it is supposed for itself.
ShotPattern supposed_pattern(const ShotPattern& pattern, const Supposition& supposition);

// The club with the change, on trial, of this name. Its recorded shots stay with the club they were hit with.
Club supposed_club(const Club& club, const Supposition& supposition, std::string name);

// A supposed club of a profile.
struct SupposedClub {
    std::size_t club;  // its number
    std::size_t of;    // that of the club it is made of, no supposed one
    Supposition supposition;
    std::string words;  // what is supposed: "spread -10 %, ball speed +3 mph"
};

// Joint draws as drawn_bags; those of supposed clubs follow the clubs they are made of, and are no evidence.
BagDraws drawn_with_suppositions(Golfer golfer, std::span<const SupposedClub> supposed,
                                 const GolferPrior& prior, int count);

}  // namespace landwidth
