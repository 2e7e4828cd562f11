// A club joins a bag: in the place of the one it replaces, or as one more.
#pragma once

#include "golfer-profiles/logged_clubs.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// The club of the profile that a logged one is: of the same name as same_name compares, or, unless it is a
// build, the only one that the presets call by the same name ("7i" for "7-iron"). nullptr when there is none.
Club* club_meant(Golfer& golfer, const LoggedClub& logged);

enum class Joined { replaced, carried, on_trial };

// `club` takes the place of `replaced` when that is not null (and is carried when that was); otherwise it is
// put among the clubs by its carry, on trial when `is_build` or when the bag is full.
Joined join_bag(Golfer& golfer, Club club, Club* replaced, bool is_build);

}  // namespace landwidth
