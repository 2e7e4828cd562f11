// Conditions said for a whole log beside those of its rows.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

// Gives every shot what `said` says and its row does not: a row goes before what is said for all. A wind said
// for all does not blow into a row that was hit indoors. Returns what is worth a word, one sentence each,
// without the file's name: what is said by both, what is not used since carries are given as of the reference
// day, and how carries from indoors are taken.
std::vector<std::string> complete_conditions(ShotLog& log, const SessionConditions& said);

}  // namespace landwidth
