// A change to the bag: clubs that come in, clubs that go out.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct BagChange {
    std::string label;             // as a person would say it: "driver, 44.5 in for driver"
    std::vector<std::size_t> in;   // numbers of clubs in the profile, now on trial
    std::vector<std::size_t> out;  // now in the bag
};

// The golfer with the bag after the change: the same clubs under the same numbers, other in_bag marks.
Golfer with_change(Golfer golfer, const BagChange& change);

std::size_t clubs_carried(const Golfer& golfer);

}  // namespace landwidth
