// Shots that stand in the logs twice: a row pasted again, a block exported again, a second export that
// overlaps the first.
//
// Two honest shots can be alike, the more easily the coarser they are recorded. So a run of rows that all
// stood before, in the same order, is a repetition only when
// - it has three different rows, or at least four quantities are recorded in each of its rows, and
// - honest shots would make such a run less than once in 50 logs like this one. How often two honest rows are
//   alike follows from how finely each quantity is written (whole yards, tenths) and how widely the club
//   scatters in it, taken as normal: step / (2 sqrt(pi) sd), at most 1, the quantities taken as independent
//   once total, speeds are seen relative to the carry.
// Between two files rows in another order are repetitions too when they are three or more, at least half of
// the smaller file, and over ten times as many as honest shots would make.
//
// No slip of exporting writes more than half of a file again: where so many rows of a file repeat rows of the
// same file, all of them count, and it is said.
//
// Alike means: the same club and build under any spelling, and the same date, session, note and every number.
// Example: 30 drives in whole yards of carry and side. Two of them alike: 450 pairs, one in 2,500 alike, both
// count. Rows 20 to 22 as rows 4 to 6: 450 / 2,500^3; the later three are left out.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/logs/named_log.hpp"

namespace landwidth {

struct RepeatedRows {
    // Of each log, of each of its shots: it repeats an earlier one.
    std::vector<std::vector<bool>> repeats;
    std::vector<std::string> warnings;  // one a log that has some, with its name
};

// Time grows with the number of rows, not with its square.
RepeatedRows repeated_rows(const std::vector<NamedLog>& logs);

// Of each shot of `log`: it repeats one of `earlier`, by the same rules. Repetitions within `log` are none.
std::vector<bool> repeated_from(const NamedLog& earlier, const NamedLog& log);

}  // namespace landwidth
