// Draws of what a pattern may be: against closed forms, and that they tighten about the fit.
#include "golfer-profiles/pattern_draws.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "golfer-profiles/pattern_learning.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/simulated_shots.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using fixture::simulated_shots;

namespace {

constexpr double direction_differs = 2.0 * std::numbers::pi / 180.0;
constexpr PatternPrior usual_weight{10.0, 0.08, direction_differs, 0.5};

Club typical_driver() {
    return *preset_golfer("bogey-man").club("driver");
}

Club learnt_driver(const ShotPattern& prior, const std::vector<ShotOffset>& shots,
                   const PatternPrior& weight) {
    Club club = typical_driver();
    club.pattern = learnt_pattern(shots, prior, weight).pattern;
    club.learnt_from = LearntFrom{prior, shots};
    return club;
}

template <class Number>
std::vector<double> sorted(const std::vector<ShotPattern>& draws, Number number) {
    std::vector<double> values;
    for (const ShotPattern& draw : draws)
        values.push_back(number(draw));
    std::ranges::sort(values);
    return values;
}

double mean(const std::vector<double>& values) {
    double sum = 0.0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

double sd(const std::vector<double>& values) {
    double squares = 0.0;
    for (const double value : values)
        squares += std::pow(value - mean(values), 2);
    return std::sqrt(squares / static_cast<double>(values.size()));
}

double carry(const ShotPattern& p) {
    return p.usual.centre.carry_m;
}
double side(const ShotPattern& p) {
    return p.usual.centre.side_m;
}
double carry_scale(const ShotPattern& p) {
    return p.usual.carry_sd_m * (std::isinf(p.tail_dof) ? 1.0 : std::sqrt((p.tail_dof - 2.0) / p.tail_dof));
}

}  // namespace

TEST_CASE("the same arguments give the same draws; more begin with the fewer; clubs differ") {
    const Club preset = typical_driver();
    const Club learnt = learnt_driver(*preset.pattern, simulated_shots(*preset.pattern, 20, 1), usual_weight);
    for (const Club& club : {preset, learnt}) {
        const auto draws = drawn_patterns(club, usual_weight, 3, 20);
        REQUIRE(draws.size() == 20);
        REQUIRE(drawn_patterns(club, usual_weight, 3, 20) == draws);
        auto more = drawn_patterns(club, usual_weight, 3, 50);
        more.resize(20, draws.front());
        REQUIRE(more == draws);
        REQUIRE(drawn_patterns(club, usual_weight, 4, 20).front() != draws.front());
        REQUIRE(drawn_patterns(club, usual_weight, 3, 0).empty());
        REQUIRE(draws.front().run_m == club.pattern->run_m);
        REQUIRE(draws.front().shots == club.pattern->shots);
    }
}

// A median's standard error is 1.25 sd / sqrt(draws), a deviation's 0.71 of it of itself: five of them.
TEST_CASE("a preset's draws differ as golfers of a level do, with the preset in the middle") {
    constexpr int count = 4000;
    const Club club = typical_driver();
    const ShotPattern& typical = *club.pattern;
    const auto draws = drawn_patterns(club, usual_weight, 1, count);
    const double root = std::sqrt(count);
    const auto carries = sorted(draws, carry);
    const auto sides = sorted(draws, side);
    const double differs = 0.08 * carry(typical);
    REQUIRE_THAT(mean(carries), WithinAbs(carry(typical), 5.0 * differs / root));
    REQUIRE_THAT(sd(carries), WithinRel(differs, 5.0 * 0.71 / root));
    REQUIRE_THAT(sd(sides), WithinRel(std::tan(direction_differs) * carry(typical), 5.0 * 0.71 / root));
    const auto log_scale = sorted(draws, [](const ShotPattern& p) { return std::log(carry_scale(p)); });
    REQUIRE_THAT(log_scale[count / 2],
                 WithinAbs(std::log(carry_scale(typical)), 5.0 * 1.25 * sd(log_scale) / root + 0.005));
    const auto share = sorted(draws, [](const ShotPattern& p) { return p.mishit->share; });
    const double a = 10.0 * typical.mishit->share + 0.5;  // the mean of a beta distribution is a / (a + b)
    REQUIRE_THAT(mean(share), WithinAbs(a / 11.0, 5.0 * sd(share) / root));
    const auto mishit_sd =
        sorted(draws, [](const ShotPattern& p) { return std::log(p.mishit->spread.side_sd_m); });
    REQUIRE_THAT(mishit_sd[count / 2], WithinAbs(std::log(typical.mishit->spread.side_sd_m),
                                                 5.0 * 1.25 * sd(mishit_sd) / root + 0.01));
}

// With a normal, no mishits, and a prior that leaves the centre open: inverse Wishart about the mean of the
// squares, of n0 + 5/3 + n - 1 degrees of freedom; its mean divides by 3 less. The centre: a t, whose
// variance is that covariance over n.
TEST_CASE("a normal's posterior is the closed form") {
    constexpr int count = 8000, shots = 20;
    ShotPattern prior;
    prior.usual = {{180.0, 0.0}, 12.0, 16.0, 0.3};
    const PatternPrior open{6.0, 50.0, 1.5, 0.0};
    const auto session = simulated_shots(prior, shots, 2);
    const auto draws = drawn_patterns(learnt_driver(prior, session, open), open, 1, count);
    ShotOffset middle{0.0, 0.0};
    for (const ShotOffset& shot : session) {
        middle.carry_m += shot.carry_m / shots;
        middle.side_m += shot.side_m / shots;
    }
    double squares = 0.0;
    for (const ShotOffset& shot : session)
        squares += std::pow(shot.carry_m - middle.carry_m, 2);
    const double degrees = 6.0 + 5.0 / 3.0 + shots - 1.0;
    const double expected = (6.0 * 144.0 + squares) / (degrees - 3.0);
    const auto variance =
        sorted(draws, [](const ShotPattern& p) { return p.usual.carry_sd_m * p.usual.carry_sd_m; });
    const double root = std::sqrt(count / 1.5);  // neighbouring draws are not quite independent
    REQUIRE_THAT(mean(variance), WithinAbs(expected, 5.0 * sd(variance) / root));
    const auto carries = sorted(draws, carry);
    REQUIRE_THAT(mean(carries), WithinAbs(middle.carry_m, 5.0 * sd(carries) / root));
    REQUIRE_THAT(sd(carries), WithinRel(std::sqrt(expected / shots), 5.0 * 0.9 / root));
}

TEST_CASE("many shots: the draws lie close about the fit") {
    const ShotPattern prior = *typical_driver().pattern;
    ShotPattern truth = prior;
    truth.usual.side_sd_m *= 1.3;
    truth.usual.centre.carry_m *= 1.06;
    double last = 1e9;
    for (const int shots : {10, 100, 1000}) {
        const Club club = learnt_driver(prior, simulated_shots(truth, shots, 3), usual_weight);
        const auto draws = drawn_patterns(club, usual_weight, 1, 400);
        const auto carries = sorted(draws, carry);
        REQUIRE(sd(carries) < 0.5 * last);
        last = sd(carries);
        REQUIRE_THAT(mean(carries), WithinAbs(carry(*club.pattern), 0.5 * last));
    }
    // The information about a t's centre, of the usual shots alone.
    const double dof = truth.tail_dof;
    const double per_shot = truth.usual.carry_sd_m * std::sqrt((dof - 2.0) / dof * (dof + 4.0) / (dof + 2.0) /
                                                               (1.0 - truth.mishit->share));
    REQUIRE_THAT(last, WithinRel(per_shot / std::sqrt(1000.0), 0.2));
}

TEST_CASE("every draw is a pattern that a profile can hold") {
    const ShotPattern prior = *typical_driver().pattern;
    const std::vector<ShotOffset> same(40, ShotOffset{150.0, 3.0});
    const std::vector<ShotOffset> one{{20.0, -100.0}};
    for (const auto& shots : {std::vector<ShotOffset>{}, one, same}) {
        const Club club = learnt_driver(prior, shots, usual_weight);
        for (const ShotPattern& draw : drawn_patterns(club, usual_weight, 1, 300)) {
            Golfer golfer;
            golfer.name = "x";
            golfer.clubs = {club};
            golfer.clubs[0].pattern = draw;
            REQUIRE_NOTHROW(profile_text(golfer));
        }
    }
}
