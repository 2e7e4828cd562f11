// Shots of logs that a profile has learnt from already: a grown export learnt onto the profile of the shorter
// one would count its first shots twice.
//
// A profile keeps of a shot its club and where it landed, so these are compared, as repeated_rows compares
// the rows of overlapping files: in the same order, or as many of either as chance does not make alike. What
// is kept may have been brought to the reference day; so shots are compared as recorded, as brought there,
// and as brought there but for the small difference that other shots beside them make (a twentieth of a
// yard). Where only one of the two was brought there nothing can be compared, and where both name the same
// session that is said.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/logged_clubs.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// Takes the shots that `onto` keeps out of `clubs`, and clubs that have none left; `recorded` is `clubs`
// before prepare_sessions. Lost balls have no place: those the profile counts are taken out of a club's where
// all its kept shots are found again. Returns what was left out and what could not be compared, one sentence
// each.
//
// Throws InputError when nothing is left.
std::vector<std::string> leave_out_known(LoggedClubs& clubs, const LoggedClubs& recorded, Golfer& onto,
                                         const std::vector<NamedLog>& logs);

}  // namespace landwidth
