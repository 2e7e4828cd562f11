#include "golfer-profiles/evidence/bag_draws.hpp"

#include "golfer-profiles/pattern_draws.hpp"

namespace landwidth {

BagDraws drawn_bags(const Golfer& golfer, const PatternPrior& prior, int count) {
    BagDraws draws(golfer.clubs.size());
    for (std::size_t club = 0; club < draws.size(); ++club)
        if (golfer.clubs[club].pattern) draws[club] = drawn_patterns(golfer.clubs[club], prior, club, count);
    return draws;
}

}  // namespace landwidth
