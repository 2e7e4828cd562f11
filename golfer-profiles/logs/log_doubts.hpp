// Shots of a log that look like a slip of typing or of the unit against the other shots of the same club.
// Nothing is changed or left out for it.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

// One sentence each, with the row; in the order of the file. Clubs with fewer than five shots are compared
// with nothing. At most 20 of them, then how many more there are.
std::vector<std::string> log_doubts(const std::vector<LoggedShot>& shots);

}  // namespace landwidth
