// The clubs whose shot patterns show what changes of a bag are about.
#pragma once

#include <cstddef>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct WeighedChange;

struct ComparedClub {
    std::size_t club;  // number in the profile
    bool comes_in;     // with one of the changes
};

// Each club once: first those that come in, as the changes name them; then those that a change takes off the
// tee of a hole or puts there, the most holes first, at most `most_others`; then those that stay at home and
// were hit from no tee.
std::vector<ComparedClub> compared_clubs(const Golfer& golfer, const std::vector<WeighedChange>& changes,
                                         std::size_t most_others = 4);

}  // namespace landwidth
