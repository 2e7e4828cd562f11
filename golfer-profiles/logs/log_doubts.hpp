// Shots of a log that look like a slip of typing or of the unit against the other shots of the same club, and
// numbers that do not look recorded. No shot is changed or left out for it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

// One sentence for the rows of a club that are doubted for one reason; in the order of the file. Clubs with
// fewer than five shots are compared with nothing. At most 20 of them, then how many more there are.
std::vector<std::string> log_doubts(const std::vector<LoggedShot>& shots);

// Clubs with five shots or more of which over 60 % have exactly the same side or the same carry: one
// sentence.
std::optional<std::string> same_values_doubt(const std::vector<LoggedShot>& shots);

// Where carry and total are equal in every row with both, five or more, one of the two is not what its column
// says: takes the totals out, so that no run of 0 is learnt, and says so.
std::optional<std::string> leave_out_totals_that_are_carries(std::vector<LoggedShot>& shots);

}  // namespace landwidth
