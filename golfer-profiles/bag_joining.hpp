// A club joins a bag: in the place of the one it replaces, or as one more.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/logged_clubs.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// The club of the profile that a logged one is: of the same name or build under any spelling (club_key,
// build_key), or else the only one that the presets call by the same name ("60 deg" for "lob wedge"). A build
// that is the one carried stands for its club. nullptr when there is none, and when another of `all`, the
// clubs of the same logs, fits it better ("SW" fits the sand wedge better than "56 deg"; of two lofts the one
// nearer to its own; of equals none): two clubs of a log never become one of the profile.
Club* club_meant(Golfer& golfer, const LoggedClub& logged, const std::vector<LoggedClub>& all = {});

// Throws InputError(file, ...) when the profile and the clubs in `all` that are new to it are more than a
// profile holds.
void check_room(Golfer& golfer, const std::vector<LoggedClub>& all, const std::string& file);

enum class Joined { replaced, carried, on_trial };

// `club` takes the place of `replaced` when that is not null (and is carried when that was); otherwise it is
// put among the clubs by its carry, on trial when `is_build` or when the bag is full.
Joined join_bag(Golfer& golfer, Club club, Club* replaced, bool is_build);

}  // namespace landwidth
