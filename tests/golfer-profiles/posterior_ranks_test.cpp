// Is the posterior as wide as it should be? Golfers are drawn from the prior, sessions from the golfers; then
// the rank of each true number among its posterior draws is uniform (S. Cook, A. Gelman and D. Rubin, J.
// Comput. Graph. Statist. 15, 2006; S. Talts and others, arXiv 1804.06788). Known prior, same model: this
// checks the sampler, not the golfer.
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>
#include <functional>
#include <numbers>
#include <string>

#include "golfer-profiles/counter_bits.hpp"
#include "golfer-profiles/pattern_draws.hpp"
#include "golfer-profiles/presets.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/simulated_shots.hpp"

using namespace landwidth;

namespace {

constexpr PatternPrior weight{10.0, 0.08, 2.0 * std::numbers::pi / 180.0, 0.5};
constexpr int golfers = 600;
constexpr int draws = 99;  // of twice as many, every second: neighbours are not quite independent
constexpr int bins = 20;

struct Quantity {
    std::string name;
    std::function<double(const ShotPattern&)> value;
    std::vector<int> ranks = std::vector<int>(bins, 0);
};

std::vector<Quantity> quantities() {
    return {{"mean carry", [](const ShotPattern& p) { return p.usual.centre.carry_m; }},
            {"mean side", [](const ShotPattern& p) { return p.usual.centre.side_m; }},
            {"carry deviation", [](const ShotPattern& p) { return p.usual.carry_sd_m; }},
            {"side deviation", [](const ShotPattern& p) { return p.usual.side_sd_m; }},
            {"correlation", [](const ShotPattern& p) { return p.usual.correlation; }},
            {"tail", [](const ShotPattern& p) { return p.tail_dof; }},
            {"mishit share", [](const ShotPattern& p) { return p.mishit->share; }},
            {"mishit carry", [](const ShotPattern& p) { return p.mishit->spread.centre.carry_m; }},
            {"mishit side deviation", [](const ShotPattern& p) { return p.mishit->spread.side_sd_m; }},
            {"left of 20 m", [](const ShotPattern& p) { return share_left_of(p, 20.0); }}};
}

}  // namespace

// False alarms: 1 % for all quantities and sizes together.
TEST_CASE("true numbers rank evenly among their posterior draws") {
    constexpr int sizes = 2;
    for (const int shots : {6, 40}) {
        std::vector<Quantity> ranked = quantities();
        CounterBits ties(static_cast<std::uint64_t>(shots));
        for (std::uint64_t number = 0; number < golfers; ++number) {
            Club club = *preset_golfer("bogey-man").club("driver");
            const ShotPattern typical = *club.pattern;
            const ShotPattern truth = drawn_patterns(club, weight, 1000 + number, 1).front();
            club.learnt_from = LearntFrom{typical, fixture::simulated_shots(truth, shots, number)};
            const auto drawn = drawn_patterns(club, weight, number, 2 * draws);
            for (Quantity& quantity : ranked) {
                // The tail lies on a grid: ties fall either way.
                int below = 0;
                int ties_count = 0;
                for (std::size_t i = 1; i < drawn.size(); i += 2) {
                    const double value = quantity.value(drawn[i]);
                    below += value < quantity.value(truth) ? 1 : 0;
                    ties_count += value == quantity.value(truth) ? 1 : 0;
                }
                const double share = boost::random::uniform_01<double>()(ties);
                const int rank = below + static_cast<int>(share * (ties_count + 1));
                ++quantity.ranks[static_cast<std::size_t>(rank * bins / (draws + 1))];
            }
        }
        const double allowed = boost::math::quantile(boost::math::complement(
            boost::math::chi_squared(bins - 1.0), 0.01 / (sizes * static_cast<double>(ranked.size()))));
        for (const Quantity& quantity : ranked) {
            constexpr double expected = static_cast<double>(golfers) / bins;
            double chi_squared = 0.0;
            for (const int count : quantity.ranks)
                chi_squared += std::pow(count - expected, 2) / expected;
            CAPTURE(quantity.name, shots, chi_squared, allowed);
            CHECK(chi_squared < allowed);
        }
    }
}
