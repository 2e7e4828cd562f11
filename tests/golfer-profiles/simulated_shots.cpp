#include "tests/golfer-profiles/simulated_shots.hpp"

#include <boost/random/uniform_01.hpp>
#include <limits>

#include "golfer-profiles/counter_bits.hpp"

namespace landwidth::fixture {

std::vector<ShotOffset> simulated_shots(const ShotPattern& pattern, int count, std::uint64_t key) {
    constexpr std::uint64_t stream = 0x73657373ULL << 24U;
    CounterBits bits(mixed(stream + key));
    boost::random::uniform_01<double> uniform;
    const double mishits = pattern.mishit ? pattern.mishit->share : 0.0;
    std::vector<ShotOffset> shots;
    for (int i = 0; i < count; ++i) {
        const bool mishit = uniform(bits) < mishits;
        const double out = uniform(bits);
        const double direction = uniform(bits);
        const Spread usual = !pattern.ways ? pattern.usual
                             : uniform(bits) < (*pattern.ways)[0].share
                                 ? spread_of(pattern.usual, (*pattern.ways)[0])
                                 : spread_of(pattern.usual, (*pattern.ways)[1]);
        shots.push_back(mishit ? spread_point(pattern.mishit->spread, std::numeric_limits<double>::infinity(),
                                              out, direction)
                               : spread_point(usual, pattern.tail_dof, out, direction));
    }
    return shots;
}

}  // namespace landwidth::fixture
