// Clubs whose stated pattern is not what their recorded shots say: edited by hand, or learnt by other
// assumptions.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/evidence/golfer_prior.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// One sentence each. Only clubs with recorded shots at hand are looked at, and only differences of more than
// half of what the shots leave open (one standard deviation) are told. Plans take such a pattern as it
// stands, and what the shots leave open about it.
std::vector<std::string> edited_clubs(const Golfer& golfer, const GolferPrior& prior);

}  // namespace landwidth
