// How likely two different shots of a golfer are recorded alike in every number.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

// How many numbers are recorded of a shot.
int quantities_in(const LoggedShot& shot);

// Of every shot, in order: the chance that another one of its club reads the same; 1 for a lost ball.
// `club_of` numbers the club of each shot from 0. The shots are those of one log: what tells the steps
// numbers are rounded to.
std::vector<double> honest_chances(const std::vector<LoggedShot>& shots,
                                   const std::vector<std::size_t>& club_of);

}  // namespace landwidth
