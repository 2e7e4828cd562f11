#include "golfer-profiles/evidence/club_figures.hpp"

#include <vector>

#include "golfer-profiles/evidence/log_odds.hpp"
#include "golfer-profiles/evidence/mishit_chance.hpp"
#include "tests/catch.hpp"

using namespace landwidth;

TEST_CASE("raw figures are those of the numbers as recorded") {
    const std::vector<ShotOffset> shots{{200, -10}, {210, 0}, {220, 5}, {150, 45}};
    const RawShots raw = raw_figures(shots);
    REQUIRE(raw.shots == 4);
    REQUIRE(raw.carry.mean == Approx(195.0));
    REQUIRE(raw.carry.sd == Approx(31.0912635));  // by hand: squares 25, 225, 625, 2025 over 3
    REQUIRE(raw.carry.median == Approx(205.0));
    REQUIRE(raw.carry.low == Approx(150.0 + 0.15 * 50.0));
    REQUIRE(raw.carry.high == Approx(210.0 + 0.85 * 10.0));
    REQUIRE(raw.side.median == Approx(2.5));
    const RawShots one = raw_figures(std::vector<ShotOffset>{{200, 3}});
    REQUIRE(one.carry.sd == 0.0);
    REQUIRE(one.carry.low == 200.0);
    REQUIRE(one.side.high == 3.0);
}

TEST_CASE("a pattern's numbers are as open as its draws") {
    ShotPattern pattern{.usual = {{200, 0}, 10, 15, 0}, .mishit = Mishit{0.1, {{120, 0}, 20, 30, 0}}};
    std::vector<ShotPattern> draws;
    for (int i = 0; i <= 20; ++i) {
        draws.push_back(pattern);
        draws.back().usual.centre.carry_m = 190 + i;
        draws.back().mishit->share = 0.01 * i;
    }
    const OpenPattern open = open_pattern(pattern, draws);
    REQUIRE(open.carry.middle == 200.0);
    REQUIRE(open.carry.low == Approx(191.0));
    REQUIRE(open.carry.high == Approx(209.0));
    REQUIRE(open.mishit_share.low == Approx(0.01));
    REQUIRE(open.side.low == open.side.high);
}

TEST_CASE("a shot far from the usual and near the mishits was one") {
    ShotPattern pattern{.usual = {{200, 0}, 10, 15, 0}, .mishit = Mishit{0.1, {{120, 0}, 20, 30, 0}}};
    const std::vector<double> chance =
        mishit_chances(pattern, std::vector<ShotOffset>{{200, 0}, {120, 5}, {170, 0}});
    REQUIRE(chance[0] < 0.001);
    REQUIRE(chance[1] > 0.999);
    REQUIRE(chance[2] > chance[0]);
    // By hand at the usual middle: 0.9 / (10 x 15) against 0.1 exp(-8) / (20 x 30).
    REQUIRE(chance[0] == Approx(0.1 * std::exp(-8.0) / 600 / (0.9 / 150 + 0.1 * std::exp(-8.0) / 600)));
    pattern.mishit.reset();
    REQUIRE(mishit_chances(pattern, std::vector<ShotOffset>{{120, 5}}).front() == 0.0);
}

TEST_CASE("over draws the chance of a mishit is the mean of theirs") {
    const ShotPattern near{.usual = {{200, 0}, 10, 15, 0}, .mishit = Mishit{0.1, {{150, 0}, 20, 30, 0}}};
    ShotPattern far = near;
    far.mishit->spread.centre.carry_m = 100;
    const std::vector<ShotOffset> shots{{160, 4}, {201, -2}};
    const std::vector<double> both = mishit_chances(std::vector<ShotPattern>{near, far, far}, shots);
    const std::vector<double> of_near = mishit_chances(near, shots), of_far = mishit_chances(far, shots);
    for (std::size_t i = 0; i < shots.size(); ++i)
        REQUIRE(both[i] == Approx((of_near[i] + 2.0 * of_far[i]) / 3.0));
    REQUIRE(of_near[0] != Approx(of_far[0]));
}

TEST_CASE("the evidence of a club holds its shots with and without mishits") {
    const ShotPattern pattern{.usual = {{200, 0}, 10, 15, 0}, .mishit = Mishit{0.1, {{120, 0}, 20, 30, 0}}};
    const std::vector<ShotPattern> draws(3, pattern);
    const ClubEvidence evidence =
        club_evidence(pattern, std::vector<ShotOffset>{{195, -4}, {110, 30}, {207, 4}}, draws);
    REQUIRE(evidence.raw.shots == 3);
    REQUIRE(evidence.raw_usual.shots == 2);
    REQUIRE(evidence.raw_usual.carry.mean == Approx(201.0));
    REQUIRE(evidence.raw_usual.side.mean == Approx(0.0));
    REQUIRE(evidence.mishit_chance.size() == 3);
    REQUIRE(evidence.mishit_chance[1] > taken_for_mishit);
    REQUIRE(evidence.open.carry.middle == 200.0);
    const ClubEvidence none = club_evidence(pattern, {}, draws);
    REQUIRE(none.raw.shots == 0);
    REQUIRE(none.raw_usual.shots == 0);
    REQUIRE(none.mishit_chance.empty());
    REQUIRE(none.open.side_sd.middle == 15.0);
}

TEST_CASE("log odds and shares turn into each other") {
    REQUIRE(log_odds_of(0.5) == 0.0);
    REQUIRE(log_odds_of(0.1) == Approx(-std::log(9.0)));
    for (const double share : {0.0001, 0.12, 0.5, 0.995})
        REQUIRE(share_of_log_odds(log_odds_of(share)) == Approx(share));
    REQUIRE(share_of_log_odds(-1000.0) == 0.0);
    REQUIRE(share_of_log_odds(1000.0) == 1.0);
}
