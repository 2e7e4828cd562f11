// A change to the bag: clubs that come in, clubs that go out, and the bag that it is a change of.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

// Numbers of clubs in the profile. What goes out is carried before, what comes in is not.
struct Exchange {
    std::vector<std::size_t> in = {};
    std::vector<std::size_t> out = {};

    bool empty() const { return in.empty() && out.empty(); }
    friend auto operator<=>(const Exchange&, const Exchange&) = default;
};

// Two builds of which neither is in the bag are compared from a bag of their own: one of them in the place of
// the club they are builds of. `before` turns the bag of today into that one, the baseline.
struct BagChange {
    std::string label;             // as a person would say it: "driver, 44.5 in for driver"
    std::vector<std::size_t> in;   // not in the baseline
    std::vector<std::size_t> out;  // in the baseline
    Exchange before = {};          // empty: the baseline is the bag of today
};

// The golfer with another bag: the same clubs under the same numbers, other in_bag marks.
Golfer with_exchange(Golfer golfer, const Exchange& exchange);
// Before the change: today's bag, or that which `before` makes of it.
Golfer baseline_of(Golfer golfer, const BagChange& change);
// After it.
Golfer with_change(Golfer golfer, const BagChange& change);

// What turns one bag of a profile into another, ascending.
Exchange exchange_between(const Golfer& from, const Golfer& to);

std::size_t clubs_carried(const Golfer& golfer);

}  // namespace landwidth
