// The changes of a bag as they are asked for on the command line, for a golfer's profile.
#pragma once

#include <string>
#include <vector>

#include "planner/engine/bags/bag_change.hpp"

namespace landwidth {

struct AskedChanges {
    std::vector<std::string> added;  // names of clubs; each is a change of its own
    std::vector<std::string>
        dropped;  // left at home in every change with an added club, or a change of their own
    std::vector<std::string> replaced;  // "driver=driver, 44.5 in"; each is a change of its own
};

struct ChangesToWeigh {
    Golfer golfer;  // with clubs nobody has hit yet, which were asked for by the name of their kind, on trial
    std::vector<BagChange> changes;
    std::vector<std::string> warnings;
};

// Throws UsageError: no change at all, a name that no club has (with the nearest), a club that is already in
// the bag or not in it.
ChangesToWeigh changes_to_weigh(const Golfer& golfer, const AskedChanges& asked);

}  // namespace landwidth
