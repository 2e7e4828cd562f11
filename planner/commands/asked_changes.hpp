// The changes of a bag as they are asked for on the command line, for a golfer's profile.
#pragma once

#include <string>
#include <vector>

#include "planner/engine/bags/bag_change.hpp"
#include "planner/engine/bags/supposition.hpp"

namespace landwidth {

struct AskedChanges {
    std::vector<std::string> added = {};  // names of clubs; each is a change of its own
    std::vector<std::string> dropped =
        {};  // left at home in every change with an added club, or a change of their own
    // "driver=driver, 44.5 in"; each is a change of its own. Where the old club is not in the bag, the change
    // starts from a bag in which it has the place of the club it is a build of (of the driver, for a
    // driver), or a place besides.
    std::vector<std::string> replaced = {};
    // "driver, 44 in: spread -10 %"; each makes a club "driver, 44 in (supposed)", which `added` and
    // `replaced` may name; where they do not, it is weighed in place of the club it is made of.
    std::vector<std::string> supposed = {};
    bool together = false;  // all of it as one change
};

struct ChangesToWeigh {
    // With clubs nobody has hit on trial: asked for by the name of their kind, or supposed.
    Golfer golfer;
    std::vector<BagChange> changes;
    std::vector<SupposedClub> supposed;
    std::vector<std::string> warnings;
};

// Throws UsageError: no change at all, a name that no club has (with the nearest), a club that is already in
// the bag or not in it, changes that take one club out or in twice, what typed_supposition refuses.
ChangesToWeigh changes_to_weigh(const Golfer& golfer, const AskedChanges& asked);

}  // namespace landwidth
