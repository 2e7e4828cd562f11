#include "planner/engine/bag_shots.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>

#include "geometry/error.hpp"
#include "geometry/units.hpp"

namespace landwidth {

namespace {

// Chosen by the errors measured in tests/benchmarks: the coarse sets rank aims within 0.005 strokes, the
// replicates together are the answer.
constexpr int coarse_log2_points = 9;
constexpr int fine_log2_points = 11;
constexpr int replicate_log2_points = 12;
constexpr std::uint64_t replicate_count = 8;
constexpr int draw_log2_points = 8;

ClubShots club_shots(const Golfer& golfer, std::size_t club, const BagFlights& flights,
                     const EngineAssumptions& a, const std::vector<ShotPattern>& draws) {
    const ShotPattern& own = *golfer.clubs[club].pattern;
    const auto shots_of = [&](const ShotPattern& pattern, int log2_points, std::uint64_t replicate) {
        return fan_shots(pattern, log2_points, replicate, a, flights.full(club), flights.day().wind);
    };
    ClubShots shots{club, shots_of(own, coarse_log2_points, 0), shots_of(own, fine_log2_points, 0),
                    {},   shots_of(own, draw_log2_points, 0),   {}};
    for (std::uint64_t replicate = 1; replicate <= replicate_count; ++replicate)
        shots.replicates.push_back(shots_of(own, replicate_log2_points, replicate));
    for (const ShotPattern& drawn : draws)
        shots.draws.push_back(shots_of(drawn, draw_log2_points, 0));
    return shots;
}

}  // namespace

BagShots bag_shots(const Golfer& golfer, const BagFlights& flights, const EngineAssumptions& assumptions,
                   const BagDraws& draws) {
    BagShots bag;
    std::vector<std::size_t> clubs;
    for (std::size_t club = 0; club < golfer.clubs.size(); ++club)
        if (is_playable(golfer.clubs[club])) clubs.push_back(club);
    if (clubs.empty())
        throw InputError("profile of " + golfer.name,
                         "no club but the putter has a shot pattern; give at least one a pattern");
    static const std::vector<ShotPattern> none;
    bag.clubs.resize(clubs.size());
    tbb::parallel_for(std::size_t{0}, clubs.size(), [&](std::size_t i) {
        bag.clubs[i] =
            club_shots(golfer, clubs[i], flights, assumptions, draws.empty() ? none : draws[clubs[i]]);
    });
    return bag;
}

}  // namespace landwidth
