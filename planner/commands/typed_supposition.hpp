// A supposed change of a club as typed: "driver, 44 in: spread -10 %, ball speed +3 mph".
//
// CLUB: QUANTITY CHANGE, ... The club's name ends at the last colon. Changes carry their sign and their unit:
//
//     spread, carry spread, side spread   %            both, along or across; -60 to +150 %
//     carry                               yd, m, ft, % up to 25 % either way
//     ball speed                          mph, km/h, m/s, kn; up to 15 mph either way
//     side                                yd, m, ft; + is to the right; up to 40 yd either way
//     mishits                             points (of 100 shots) or % (of the mishits there are)
#pragma once

#include <string>
#include <string_view>

#include "planner/engine/bags/supposition.hpp"

namespace landwidth {

struct TypedSupposition {
    std::string club;  // as typed
    Supposition supposition;
    std::string words;  // what is supposed, one space between words
};

// Throws UsageError: no colon, no change, a quantity that is none of these (with the nearest), twice the same
// one, a sign or a unit that is missing or wrong, a change out of range.
TypedSupposition typed_supposition(std::string_view option, std::string_view text);

}  // namespace landwidth
