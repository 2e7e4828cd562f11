#include "planner/engine/bags/bag_change.hpp"

#include <algorithm>

namespace landwidth {

Golfer with_change(Golfer golfer, const BagChange& change) {
    for (const std::size_t club : change.in)
        golfer.clubs[club].in_bag = true;
    for (const std::size_t club : change.out)
        golfer.clubs[club].in_bag = false;
    return golfer;
}

std::size_t clubs_carried(const Golfer& golfer) {
    return static_cast<std::size_t>(std::ranges::count_if(golfer.clubs, &Club::in_bag));
}

}  // namespace landwidth
