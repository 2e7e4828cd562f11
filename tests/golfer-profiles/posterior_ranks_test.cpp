// Is the posterior as wide as it should be? Golfers are drawn from the prior, sessions from the golfers; then
// the rank of each true number among its posterior draws is uniform (S. Cook, A. Gelman and D. Rubin, J.
// Comput. Graph. Statist. 15, 2006; S. Talts and others, arXiv 1804.06788). Known prior, same model: this
// checks the sampler, not the golfer.
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>
#include <functional>
#include <string>

#include "golfer-profiles/counter_bits.hpp"
#include "golfer-profiles/evidence/golfer_sampler.hpp"
#include "golfer-profiles/presets.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/simulated_shots.hpp"

using namespace landwidth;

namespace {

constexpr int golfers = 500;
constexpr int draws = 99;
constexpr int apart = 4;  // so many draws from one that is ranked to the next: neighbours are not independent
constexpr int bins = 20;

// The patterns of a driver, of a build of it and of a 3-wood.
struct Bag {
    ShotPattern driver, build, wood;
};

struct Quantity {
    std::string name;
    std::function<double(const Bag&)> value;
    std::vector<int> ranks = std::vector<int>(bins, 0);
};

std::vector<Quantity> quantities() {
    return {{"mean carry", [](const Bag& b) { return b.driver.usual.centre.carry_m; }},
            {"mean side", [](const Bag& b) { return b.driver.usual.centre.side_m; }},
            {"carry deviation", [](const Bag& b) { return b.driver.usual.carry_sd_m; }},
            {"side deviation", [](const Bag& b) { return b.driver.usual.side_sd_m; }},
            {"correlation", [](const Bag& b) { return b.driver.usual.correlation; }},
            {"tail", [](const Bag& b) { return b.driver.tail_dof; }},
            {"mishit share", [](const Bag& b) { return b.driver.mishit->share; }},
            {"mishit carry", [](const Bag& b) { return b.driver.mishit->spread.centre.carry_m; }},
            {"mishit side deviation", [](const Bag& b) { return b.driver.mishit->spread.side_sd_m; }},
            {"the wood's side deviation", [](const Bag& b) { return b.wood.usual.side_sd_m; }},
            {"the builds' carries apart",
             [](const Bag& b) { return b.build.usual.centre.carry_m - b.driver.usual.centre.carry_m; }},
            {"the builds' spreads apart",
             [](const Bag& b) { return b.build.usual.side_sd_m / b.driver.usual.side_sd_m; }}};
}

Golfer three_clubs() {
    const Golfer bogey = preset_golfer("bogey-man");
    Golfer golfer = bogey;
    golfer.clubs = {*bogey.club("driver"), *bogey.club("driver"), *bogey.club("3-wood")};
    golfer.clubs[1].name = "driver, 44 in";
    golfer.clubs[1].build_of = "driver";
    for (Club& club : golfer.clubs)
        club.learnt_from = LearntFrom{*club.pattern, {}};
    return golfer;
}

Bag bag_in(const GolferModel& model, const GolferState& state, const Golfer& golfer) {
    const auto pattern = [&](std::size_t build) {
        return pattern_in(model, state, build, *golfer.clubs[build].pattern);
    };
    return {pattern(0), pattern(1), pattern(2)};
}

}  // namespace

// False alarms: 1 % for all quantities and sizes together.
TEST_CASE("true numbers rank evenly among their posterior draws") {
    constexpr int sizes = 2;
    for (const int shots : {6, 40}) {
        std::vector<Quantity> ranked = quantities();
        CounterBits ties(static_cast<std::uint64_t>(shots));
        for (std::uint64_t number = 0; number < golfers; ++number) {
            Golfer golfer = three_clubs();
            const GolferPrior prior;
            CounterBits bits(mixed(1000 * static_cast<std::uint64_t>(shots) + number));
            const GolferModel unmeasured = golfer_model(golfer, prior, 1.0);
            const Bag truth = bag_in(unmeasured, drawn_before_shots(unmeasured, false, bits), golfer);
            const auto hit = [&](std::size_t club, const ShotPattern& pattern, int count) {
                golfer.clubs[club].learnt_from->shots =
                    fixture::simulated_shots(pattern, count, 3 * number + club);
            };
            hit(0, truth.driver, shots);
            hit(1, truth.build, shots / 3);
            hit(2, truth.wood, shots / 2);
            const GolferModel model = golfer_model(golfer, prior, 1.0);
            const std::vector<GolferState> drawn = drawn_after_shots(model, bits, apart * draws);
            std::vector<Bag> ranked_draws;
            for (std::size_t i = apart - 1; i < drawn.size(); i += apart)
                ranked_draws.push_back(bag_in(model, drawn[i], golfer));
            for (Quantity& quantity : ranked) {
                // The tail lies on a grid: ties fall either way.
                int below = 0;
                int ties_count = 0;
                for (const Bag& bag : ranked_draws) {
                    const double value = quantity.value(bag);
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
