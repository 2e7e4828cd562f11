#include "tests/benchmarks/simulated_golfers.hpp"

#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>

#include "geometry/units.hpp"
#include "golfer-profiles/counter_bits.hpp"
#include "golfer-profiles/pattern_draws.hpp"
#include "golfer-profiles/presets.hpp"

namespace landwidth::bench {
namespace {

constexpr std::uint64_t golfer_stream = 0x676f6c66ULL << 24U;

class Dice {
  public:
    explicit Dice(std::uint64_t key) : bits_(mixed(key)) {}
    double normal() { return boost::random::normal_distribution<double>()(bits_); }
    double uniform() { return boost::random::uniform_01<double>()(bits_); }
    double between(double low, double high) { return low + (high - low) * uniform(); }

  private:
    CounterBits bits_;
};

ShotPattern unlike_the_prior(const ShotPattern& typical, bool differ_more, Dice& dice) {
    const double carry_differs = differ_more ? 0.10 : 0.05;
    const double direction_differs = (differ_more ? 2.6 : 1.2) * radians_per_degree;
    const double spread_differs = std::log(1.3);
    ShotPattern pattern = typical;
    Spread& usual = pattern.usual;
    const double stretch = 1.0 + carry_differs * dice.normal();
    usual.centre.carry_m *= stretch;
    usual.centre.side_m += usual.centre.carry_m * std::tan(direction_differs * dice.normal());
    usual.carry_sd_m *= std::exp(spread_differs * dice.normal());
    usual.side_sd_m *= std::exp(spread_differs * dice.normal());
    usual.correlation = dice.between(-0.5, 0.3);
    pattern.tail_dof = dice.between(4.0, 15.0);
    Mishit& mishit = *pattern.mishit;
    mishit.share *= std::exp2(dice.between(-1.0, 1.0));
    mishit.spread.centre.carry_m *= stretch * (1.0 + 0.1 * dice.normal());
    mishit.spread.centre.side_m += 0.5 * mishit.spread.side_sd_m * dice.normal();
    mishit.spread.carry_sd_m *= std::exp(spread_differs * dice.normal());
    mishit.spread.side_sd_m *= std::exp(spread_differs * dice.normal());
    return pattern;
}

}  // namespace

ClubPair simulated_golfer(Population population, const PatternPrior& prior, std::uint64_t number) {
    constexpr double handicaps[] = {4.0, 14.0, 24.0};
    constexpr double drives_yd[] = {250.0, 230.0, 205.0};
    const Golfer typical = typical_golfer({"simulated", handicaps[number % 3], drives_yd[number % 3]});
    ClubPair pair{*typical.club("3-wood"), *typical.club("driver"), {}, {}};
    std::uint64_t key = golfer_stream + 2 * number;
    Dice dice(key);
    pair.typical_control = *pair.control.pattern;
    pair.typical_driver = *pair.driver.pattern;
    for (Club* club : {&pair.control, &pair.driver}) {
        club->pattern = population == Population::from_the_prior
                            ? drawn_patterns(*club, prior, key++, 1).front()
                            : unlike_the_prior(*club->pattern, number % 2 == 0, dice);
    }
    return pair;
}

}  // namespace landwidth::bench
