// Patterns learnt from shots: closed forms, recovery, shrinkage, symmetries, and inputs that say next to
// nothing.
#include "golfer-profiles/pattern_learning.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/simulated_shots.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using fixture::simulated_shots;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr PatternPrior usual_weight{10.0, 0.08, 2.0 * std::numbers::pi / 180.0, 0.5};

ShotPattern typical_driver() {
    return *preset_golfer("bogey-man").club("driver")->pattern;
}

// Unlike the typical one in everything.
ShotPattern odd_driver() {
    ShotPattern pattern = typical_driver();
    pattern.usual = {{205.0, 9.0}, 11.0, 27.0, -0.4};
    pattern.tail_dof = 5.0;
    pattern.mishit = Mishit{0.12, {{135.0, -6.0}, 18.0, 14.0, 0.0}};
    return pattern;
}

ShotPattern normal_pattern() {
    ShotPattern pattern;
    pattern.usual = {{180.0, 0.0}, 12.0, 16.0, 0.3};
    return pattern;
}

void require_holdable(const ShotPattern& pattern) {
    Golfer golfer;
    golfer.name = "x";
    golfer.clubs.push_back({.name = "driver", .kind = ClubKind::driver, .pattern = pattern});
    REQUIRE_NOTHROW(profile_text(golfer));
}

void require_same(const ShotPattern& a, const ShotPattern& b, double tolerance) {
    const auto close = [&](double x, double y) { REQUIRE_THAT(x, WithinAbs(y, tolerance)); };
    const auto same_spread = [&](const Spread& x, const Spread& y) {
        close(x.centre.carry_m, y.centre.carry_m);
        close(x.centre.side_m, y.centre.side_m);
        close(x.carry_sd_m, y.carry_sd_m);
        close(x.side_sd_m, y.side_sd_m);
        close(x.correlation, y.correlation);
    };
    same_spread(a.usual, b.usual);
    REQUIRE(a.tail_dof == b.tail_dof);
    close(a.mishit.value().share, b.mishit.value().share);
    same_spread(a.mishit->spread, b.mishit->spread);
}

ShotPattern mirrored(ShotPattern pattern) {
    pattern.usual.centre.side_m *= -1.0;
    pattern.usual.correlation *= -1.0;
    if (pattern.mishit) pattern.mishit->spread.centre.side_m *= -1.0;
    return pattern;
}

}  // namespace

TEST_CASE("a normal's fit is the mean and the mean of squares") {
    // By hand: offsets (-3, -1), (-1, 3), (1, -3), (3, 1) about (200, 10).
    const std::vector<ShotOffset> shots{{197, 9}, {199, 13}, {201, 7}, {203, 11}};
    const Spread fit = fitted_spread(shots, infinite);
    REQUIRE_THAT(fit.centre.carry_m, WithinAbs(200.0, 1e-12));
    REQUIRE_THAT(fit.centre.side_m, WithinAbs(10.0, 1e-12));
    REQUIRE_THAT(fit.carry_sd_m, WithinAbs(std::sqrt(5.0), 1e-12));
    REQUIRE_THAT(fit.side_sd_m, WithinAbs(std::sqrt(5.0), 1e-12));
    REQUIRE_THAT(fit.correlation, WithinAbs(0.0, 1e-12));
}

TEST_CASE("what holds no spread is refused") {
    const std::vector<ShotOffset> line{{1, 1}, {2, 2}, {3, 3}, {7, 7}};
    const std::vector<ShotOffset> few{{1, 1}, {2, 5}};
    const std::vector<ShotOffset> good{{1, 1}, {2, 5}, {3, 0}};
    REQUIRE_THROWS_AS(fitted_spread(line, 5.0), std::invalid_argument);
    REQUIRE_THROWS_AS(fitted_spread(few, 5.0), std::invalid_argument);
    REQUIRE_THROWS_AS(fitted_spread(good, 2.0), std::invalid_argument);
    REQUIRE_NOTHROW(fitted_spread(good, 5.0));
    // Nine of ten on a line are more than (3 + 1) / (3 + 2), fewer than (30 + 1) / (30 + 2).
    std::vector<ShotOffset> nearly(line);
    for (int i = 8; i < 13; ++i)
        nearly.push_back({1.0 * i, 1.0 * i});
    nearly.push_back({5.0, -5.0});
    REQUIRE_THROWS_AS(fitted_spread(nearly, 3.0), std::invalid_argument);
    REQUIRE_NOTHROW(fitted_spread(nearly, 30.0));
}

// Five standard errors. Of the centre sqrt(S (v + 4) / (v + 2) / n), S the scale matrix; of the logarithm of
// a deviation half of sqrt((2 s1 + s2) / n), s1 = (v + 4) / (v + 2), s2 = 2 s1 / v (D. Tyler, Ann. Statist.
// 11, 1983; from memory).
TEST_CASE("a simulated t gives its parameters back") {
    constexpr int count = 20000;
    constexpr double dof = 5.0;
    ShotPattern truth = normal_pattern();
    truth.tail_dof = dof;
    const Spread fit = fitted_spread(simulated_shots(truth, count, 1), dof);
    const double s1 = (dof + 4.0) / (dof + 2.0);
    const double centre_error = std::sqrt((dof - 2.0) / dof * s1 / count);
    const double log_sd_error = 0.5 * std::sqrt((2.0 * s1 + 2.0 * s1 / dof) / count);
    REQUIRE_THAT(fit.centre.carry_m, WithinAbs(180.0, 5.0 * 12.0 * centre_error));
    REQUIRE_THAT(fit.centre.side_m, WithinAbs(0.0, 5.0 * 16.0 * centre_error));
    REQUIRE_THAT(std::log(fit.carry_sd_m / 12.0), WithinAbs(0.0, 5.0 * log_sd_error));
    REQUIRE_THAT(std::log(fit.side_sd_m / 16.0), WithinAbs(0.0, 5.0 * log_sd_error));
    REQUIRE_THAT(fit.correlation, WithinAbs(0.3, 5.0 * std::sqrt(s1 / count)));
}

// Standard errors as if it were known which shots are mishits, doubled for not knowing, times four; the tail
// to the neighbouring step of its grid.
TEST_CASE("a simulated mixture gives its parameters back, whatever the prior says") {
    constexpr int count = 20000;
    const ShotPattern truth = odd_driver();
    const ShotPattern fit =
        learnt_pattern(simulated_shots(truth, count, 2), typical_driver(), usual_weight).pattern;
    const double usual_error = 8.0 / std::sqrt(count * (1.0 - truth.mishit->share));
    const double mishit_error = 8.0 / std::sqrt(count * truth.mishit->share);
    REQUIRE_THAT(fit.usual.centre.carry_m, WithinAbs(205.0, 11.0 * usual_error));
    REQUIRE_THAT(fit.usual.centre.side_m, WithinAbs(9.0, 27.0 * usual_error));
    REQUIRE_THAT(fit.usual.carry_sd_m, WithinRel(11.0, usual_error));
    REQUIRE_THAT(fit.usual.side_sd_m, WithinRel(27.0, usual_error));
    REQUIRE_THAT(fit.usual.correlation, WithinAbs(-0.4, usual_error));
    REQUIRE_THAT(std::log2(fit.tail_dof / 5.0), WithinAbs(0.0, 0.3));
    REQUIRE_THAT(fit.mishit->share, WithinAbs(0.12, 8.0 * std::sqrt(0.12 * 0.88 / count)));
    REQUIRE_THAT(fit.mishit->spread.centre.carry_m, WithinAbs(135.0, 18.0 * mishit_error));
    REQUIRE_THAT(fit.mishit->spread.centre.side_m, WithinAbs(-6.0, 14.0 * mishit_error));
    REQUIRE_THAT(fit.mishit->spread.carry_sd_m, WithinRel(18.0, mishit_error));
    REQUIRE(fit.shots == count);
}

TEST_CASE("with a prior that weighs nothing a normal-only session gives the closed form") {
    const auto shots = simulated_shots(normal_pattern(), 25, 3);
    const PatternPrior nothing{1e-9, 1e6, 1.57, 0.0};
    ShotPattern prior = normal_pattern();
    prior.usual.centre.carry_m = 120.0;
    const ShotPattern fit = learnt_pattern(shots, prior, nothing).pattern;
    const Spread closed = fitted_spread(shots, infinite);
    REQUIRE_THAT(fit.usual.centre.carry_m, WithinRel(closed.centre.carry_m, 1e-8));
    REQUIRE_THAT(fit.usual.carry_sd_m, WithinRel(closed.carry_sd_m, 1e-8));
    REQUIRE_THAT(fit.usual.side_sd_m, WithinRel(closed.side_sd_m, 1e-8));
    REQUIRE_THAT(fit.usual.correlation, WithinRel(closed.correlation, 1e-8));
    REQUIRE_FALSE(fit.mishit.has_value());
}

TEST_CASE("a normal-only session's spread is the prior's and the shots', by their numbers") {
    const auto shots = simulated_shots(normal_pattern(), 25, 3);
    PatternPrior weight = usual_weight;
    weight.log_tail_differs = 0.0;
    ShotPattern prior = normal_pattern();
    prior.usual.carry_sd_m = 20.0;
    const Spread fit = learnt_pattern(shots, prior, weight).pattern.usual;
    double squares = 0.0;
    for (const ShotOffset& shot : shots)
        squares += std::pow(shot.carry_m - fit.centre.carry_m, 2);
    REQUIRE_THAT(fit.carry_sd_m * fit.carry_sd_m, WithinRel((10.0 * 400.0 + squares) / 35.0, 1e-9));
}

TEST_CASE("no shots leave the prior as it is") {
    const ShotPattern prior = typical_driver();
    const PatternFit fit = learnt_pattern({}, prior, usual_weight);
    REQUIRE(fit.pattern == prior);
    REQUIRE(fit.mishit_chance.empty());
}

// Of the way from the prior's number to the true one, the mean of some sessions.
TEST_CASE("few shots lean on the prior, many do not") {
    const ShotPattern prior = typical_driver();
    const ShotPattern truth = odd_driver();
    const auto way = [&](int count, const auto& number) {
        constexpr std::uint64_t sessions = 40;
        double sum = 0.0;
        for (std::uint64_t key = 0; key < sessions; ++key) {
            const auto shots = simulated_shots(truth, count, 100 + key);
            sum += number(learnt_pattern(shots, prior, usual_weight).pattern) - number(prior);
        }
        return sum / sessions / (number(truth) - number(prior));
    };
    const auto side_sd = [](const ShotPattern& p) { return p.usual.side_sd_m; };
    const auto share = [](const ShotPattern& p) { return p.mishit->share; };
    for (const auto& number : {+side_sd, +share}) {
        REQUIRE(way(3, number) > 0.0);
        REQUIRE(way(3, number) < 0.5);
        REQUIRE(way(100, number) > way(3, number));
        REQUIRE_THAT(way(1000, number), WithinAbs(1.0, 0.15));
    }
}

TEST_CASE("the more the prior weighs, the nearer the fit stays to it") {
    const ShotPattern prior = typical_driver();
    const auto shots = simulated_shots(odd_driver(), 20, 5);
    double last_spread = infinite;
    double last_centre = infinite;
    for (const double weight : {4.0, 8.0, 16.0, 32.0, 100.0, 1000.0}) {
        PatternPrior heavier = usual_weight;
        heavier.worth_shots = weight;
        heavier.log_tail_differs = 0.0;
        const double spread =
            std::abs(learnt_pattern(shots, prior, heavier).pattern.usual.side_sd_m - prior.usual.side_sd_m);
        REQUIRE(spread < last_spread);
        last_spread = spread;
        PatternPrior closer = usual_weight;
        closer.carry_differs_share = 0.4 / weight;
        const double centre = std::abs(learnt_pattern(shots, prior, closer).pattern.usual.centre.carry_m -
                                       prior.usual.centre.carry_m);
        REQUIRE(centre < last_centre);
        last_centre = centre;
    }
    REQUIRE(last_spread < 0.3);
    REQUIRE(last_centre < 0.1);
}

TEST_CASE("shots behind the prior make it weigh more") {
    const auto shots = simulated_shots(odd_driver(), 15, 6);
    ShotPattern measured = typical_driver();
    measured.shots = 200;
    const ShotPattern fit = learnt_pattern(shots, measured, usual_weight).pattern;
    const ShotPattern loose = learnt_pattern(shots, typical_driver(), usual_weight).pattern;
    const auto off = [&](const ShotPattern& p) {
        return std::abs(p.usual.centre.carry_m - measured.usual.centre.carry_m);
    };
    REQUIRE(off(fit) < 0.5 * off(loose));
    REQUIRE(fit.shots == 215);
    REQUIRE(fit.run_m == measured.run_m);
}

TEST_CASE("mirrored shots give the mirrored pattern") {
    auto shots = simulated_shots(odd_driver(), 40, 7);
    const ShotPattern fit = learnt_pattern(shots, typical_driver(), usual_weight).pattern;
    for (ShotOffset& shot : shots)
        shot.side_m *= -1.0;
    const ShotPattern mirror = learnt_pattern(shots, mirrored(typical_driver()), usual_weight).pattern;
    require_same(mirrored(mirror), fit, 1e-8);
}

TEST_CASE("the order of the shots does not matter") {
    auto shots = simulated_shots(odd_driver(), 60, 8);
    const ShotPattern fit = learnt_pattern(shots, typical_driver(), usual_weight).pattern;
    std::reverse(shots.begin(), shots.end());
    std::rotate(shots.begin(), shots.begin() + 17, shots.end());
    require_same(learnt_pattern(shots, typical_driver(), usual_weight).pattern, fit, 1e-8);
}

TEST_CASE("short shots are mishits, wide ones that go far are not") {
    ShotPattern steady = typical_driver();
    steady.mishit.reset();
    auto shots = simulated_shots(steady, 27, 9);
    const double carry = steady.usual.centre.carry_m;
    const std::size_t topped = shots.size();
    shots.push_back({0.5 * carry, 0.0});
    shots.push_back({0.55 * carry, 12.0});
    const std::size_t wide = shots.size();
    shots.push_back({carry, 4.0 * steady.usual.side_sd_m});
    shots.push_back({1.05 * carry, -4.0 * steady.usual.side_sd_m});
    const auto chances = learnt_pattern(shots, typical_driver(), usual_weight).mishit_chance;
    REQUIRE(chances.size() == shots.size());
    REQUIRE(chances[topped] > 0.95);
    REQUIRE(chances[topped + 1] > 0.95);
    REQUIRE(chances[wide] < 0.05);
    REQUIRE(chances[wide + 1] < 0.05);
}

TEST_CASE("shots that say next to nothing still give a pattern a profile can hold") {
    const ShotOffset middling{190.0, -4.0};
    for (const ShotPattern& prior : {typical_driver(), normal_pattern()}) {
        for (const int count : {1, 2, 3, 1000}) {
            const std::vector<ShotOffset> same(static_cast<std::size_t>(count), middling);
            require_holdable(learnt_pattern(same, prior, usual_weight).pattern);
        }
        std::vector<ShotOffset> line;
        for (int i = 0; i < 50; ++i)
            line.push_back({100.0 + i, 1.0 * i});
        require_holdable(learnt_pattern(line, prior, usual_weight).pattern);
        // As wild as a profile's shots can be.
        std::vector<ShotOffset> corners;
        for (int i = 0; i < 400; ++i)
            corners.push_back({i % 2 == 0 ? 0.0 : 411.0, i % 4 < 2 ? -137.0 : 137.0});
        const PatternFit fit = learnt_pattern(corners, prior, usual_weight);
        require_holdable(fit.pattern);
        for (const double chance : fit.mishit_chance) {
            REQUIRE(chance >= 0.0);
            REQUIRE(chance <= 1.0);
        }
    }
}

TEST_CASE("the chance of a mishit under a pattern is Bayes' rule") {
    ShotPattern pattern;
    pattern.usual = {{200.0, 0.0}, 10.0, 10.0, 0.0};
    const std::vector<ShotOffset> shots{{200.0, 0.0}, {160.0, 0.0}};
    CHECK(mishit_chances(pattern, shots) == std::vector<double>{0.0, 0.0});
    pattern.mishit = Mishit{0.2, {{150.0, 0.0}, 20.0, 20.0, 0.0}};
    const std::vector<double> chances = mishit_chances(pattern, shots);
    REQUIRE(chances.size() == 2);
    for (std::size_t i = 0; i < 2; ++i) {
        // Densities of round normals, without the 2 pi they share.
        const double carry = shots[i].carry_m;
        const double usual = 0.8 / 100.0 * std::exp(-0.5 * std::pow((carry - 200.0) / 10.0, 2));
        const double mishit = 0.2 / 400.0 * std::exp(-0.5 * std::pow((carry - 150.0) / 20.0, 2));
        REQUIRE_THAT(chances[i], WithinRel(mishit / (usual + mishit), 1e-9));
    }
    const PatternFit fit = learnt_pattern(shots, pattern, usual_weight);
    const std::vector<double> again = mishit_chances(fit.pattern, shots);
    for (std::size_t i = 0; i < 2; ++i)
        REQUIRE_THAT(again[i], WithinAbs(fit.mishit_chance[i], 1e-6));
}
