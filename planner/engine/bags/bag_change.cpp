#include "planner/engine/bags/bag_change.hpp"

#include <algorithm>

namespace landwidth {

Golfer with_exchange(Golfer golfer, const Exchange& exchange) {
    for (const std::size_t club : exchange.in)
        golfer.clubs[club].in_bag = true;
    for (const std::size_t club : exchange.out)
        golfer.clubs[club].in_bag = false;
    return golfer;
}

Golfer baseline_of(Golfer golfer, const BagChange& change) {
    return with_exchange(std::move(golfer), change.before);
}

Golfer with_change(Golfer golfer, const BagChange& change) {
    return with_exchange(baseline_of(std::move(golfer), change), {change.in, change.out});
}

Exchange exchange_between(const Golfer& from, const Golfer& to) {
    Exchange exchange;
    for (std::size_t club = 0; club < from.clubs.size(); ++club) {
        if (from.clubs[club].in_bag == to.clubs[club].in_bag) continue;
        (to.clubs[club].in_bag ? exchange.in : exchange.out).push_back(club);
    }
    return exchange;
}

std::size_t clubs_carried(const Golfer& golfer) {
    return static_cast<std::size_t>(std::ranges::count_if(golfer.clubs, &Club::in_bag));
}

}  // namespace landwidth
