// Carries that are something else: totals, or metres under a heading in yards. Ball speeds tell.
//
// A club's middle carry is compared with what its middle ball speed, launch angle and spin usually carry
// (usual_carry; without launch and spin, of the ball speed alone). Clubs differ from it by 3 % (4 % without
// launch and spin), all clubs of a log together by 1.5 % (ball, air): standard deviations, assumptions; over
// the 23 rows of tour players' means the first is 3.4 %. Metres read as yards fall 8.6 % short with every
// club, totals are long by what each kind of club runs. The log is doubted when one of these is twelve times
// as likely as carries: several clubs that agree make it surer.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/logs/log_columns.hpp"
#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

// One sentence with what to do about it; nothing when carries look like carries, or when too little tells.
// Clubs with fewer than five shots of known ball speed tell nothing. `column` is that of the carries.
std::optional<std::string> carry_doubt(const std::vector<LoggedShot>& shots, const LogColumn& column);

}  // namespace landwidth
