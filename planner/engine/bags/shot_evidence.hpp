// What the recorded shots of the clubs that changes of a bag are about say, beside what is made of them.
#pragma once

#include <cstddef>
#include <map>
#include <vector>

#include "golfer-profiles/evidence/bag_draws.hpp"
#include "golfer-profiles/evidence/club_figures.hpp"
#include "planner/engine/bags/compared_clubs.hpp"

namespace landwidth {

// By number of the club in the profile.
using ShotEvidence = std::map<std::size_t, ClubEvidence>;

// Of the compared clubs and of all builds of the same clubs (see family_of), where the profile keeps their
// shots. `draws` by club of the golfer, at least one for each with a pattern; which shots count as mishits is
// asked as in learning.
ShotEvidence shot_evidence(const Golfer& golfer, const std::vector<ComparedClub>& compared,
                           const BagDraws& draws);

}  // namespace landwidth
