#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <stdexcept>

#include "geometry/units.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinRel;

namespace {

// The same golfers with every standard library: the distributions of <random> are not portable.
class Dice {
  public:
    explicit Dice(unsigned seed) : engine_(seed) {}
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(engine_()) / 4294967296.0;
    }
    // To three decimals, as a person or a launch monitor would write it.
    double written(double low, double high) { return std::round(between(low, high) * 1000.0) / 1000.0; }
    int whole(int low, int high) { return static_cast<int>(std::floor(between(low, high + 1))); }
    bool maybe() { return between(0, 1) < 0.5; }

  private:
    std::mt19937 engine_;
};

using Number = double (Dice::*)(double, double);

Spread random_spread(Dice& dice, Number number) {
    return {{(dice.*number)(1, 450) * metres_per_yard, (dice.*number)(-150, 150) * metres_per_yard},
            (dice.*number)(0.001, 150) * metres_per_yard,
            (dice.*number)(0.001, 150) * metres_per_yard,
            0.0};
}

ShotPattern random_pattern(Dice& dice, Number number) {
    ShotPattern pattern;
    pattern.usual = random_spread(dice, number);
    if (dice.maybe()) pattern.usual.correlation = (dice.*number)(-0.999, 0.999);
    if (dice.maybe()) pattern.tail_dof = (dice.*number)(2.001, 60);
    pattern.run_m = (dice.*number)(0, 120) * metres_per_yard;
    if (dice.maybe()) pattern.mishit = Mishit{(dice.*number)(0, 0.999), random_spread(dice, number)};
    pattern.shots = dice.whole(0, 500);
    return pattern;
}

LearntFrom random_learnt(Dice& dice, Number number) {
    LearntFrom learnt{random_pattern(dice, number), {}};
    const int shots = dice.whole(0, 8);
    for (int i = 0; i < shots; ++i)
        learnt.shots.push_back(
            {(dice.*number)(0, 450) * metres_per_yard, (dice.*number)(-150, 150) * metres_per_yard});
    return learnt;
}

Level random_level(Dice& dice) {
    switch (dice.whole(0, 3)) {
        case 0:
            return NamedLevel::tour;
        case 1:
            return NamedLevel::scratch;
        case 2:
            return NamedLevel::handicap;
        default:
            return dice.written(-10, 54);
    }
}

Golfer random_golfer(Dice& dice, Number number) {
    Golfer golfer;
    golfer.name =
        "Z\xc3\xb6"
        "e \"Z\" \\ " +
        std::to_string(dice.whole(0, 9));
    golfer.handicap_index = dice.written(-10, 54);
    golfer.hand = dice.maybe() ? Hand::left : Hand::right;
    golfer.short_game = random_level(dice);
    golfer.putting = random_level(dice);
    if (dice.maybe()) golfer.note = "two lines\nand a \ttab";
    const int clubs = dice.whole(1, static_cast<int>(most_clubs));
    for (int i = 0; i < clubs; ++i) {
        Club club;
        club.name = "club " + std::to_string(i);
        club.kind = static_cast<ClubKind>(dice.whole(0, i == 0 ? 6 : 7));
        if (dice.maybe()) club.length_m = (dice.*number)(10, 60) * metres_per_inch;
        if (dice.maybe()) club.loft_rad = (dice.*number)(0, 80) * radians_per_degree;
        if (club.kind != ClubKind::putter || dice.maybe()) club.pattern = random_pattern(dice, number);
        if (dice.maybe()) {
            club.launch =
                Launch{(dice.*number)(10, 260) * 0.44704, (dice.*number)(-10, 80) * radians_per_degree,
                       (dice.*number)(0, 15000) * (2.0 * std::numbers::pi / 60.0)};
        }
        if (club.pattern && dice.maybe()) club.learnt_from = random_learnt(dice, number);
        // The first stays in the bag: a golfer needs something to play with.
        if (i > 0) club.in_bag = dice.maybe();
        if (dice.maybe()) club.note = "note " + std::to_string(i);
        golfer.clubs.push_back(club);
    }
    return golfer;
}

Golfer smallest_golfer() {
    Golfer golfer;
    golfer.name = "x";
    ShotPattern pattern;
    pattern.usual = {{100 * metres_per_yard, 0}, 5 * metres_per_yard, 5 * metres_per_yard, 0};
    golfer.clubs.push_back({.name = "7", .kind = ClubKind::iron, .pattern = pattern});
    return golfer;
}

}  // namespace

TEST_CASE("the smallest golfer comes back the same") {
    const Golfer golfer = smallest_golfer();
    REQUIRE(parse_profile(profile_text(golfer), "x").golfer == golfer);
}

TEST_CASE("what is written in the format's units comes back bit for bit") {
    Dice dice(1);
    for (int i = 0; i < 500; ++i) {
        const Golfer golfer = random_golfer(dice, &Dice::written);
        const std::string text = profile_text(golfer);
        CAPTURE(i, text);
        REQUIRE(parse_profile(text, "x").golfer == golfer);
    }
}

TEST_CASE("any number comes back to 5e-10, and the text then stays as it is") {
    Dice dice(2);
    for (int i = 0; i < 500; ++i) {
        const Golfer golfer = random_golfer(dice, &Dice::between);
        const std::string text = profile_text(golfer);
        const Golfer again = parse_profile(text, "x").golfer;
        CAPTURE(i, text);
        REQUIRE(profile_text(again) == text);
        for (std::size_t c = 0; c < golfer.clubs.size(); ++c) {
            if (!golfer.clubs[c].pattern) continue;
            const ShotPattern& a = *golfer.clubs[c].pattern;
            const ShotPattern& b = again.clubs[c].pattern.value();
            REQUIRE_THAT(b.usual.centre.carry_m, WithinRel(a.usual.centre.carry_m, 5e-10));
            REQUIRE_THAT(b.usual.side_sd_m, WithinRel(a.usual.side_sd_m, 5e-10));
            REQUIRE(b.usual.correlation == a.usual.correlation);
            REQUIRE(b.tail_dof == a.tail_dof);
            if (!golfer.clubs[c].learnt_from) continue;
            const auto& shots = golfer.clubs[c].learnt_from->shots;
            const auto& shots_again = again.clubs[c].learnt_from.value().shots;
            REQUIRE(shots_again.size() == shots.size());
            for (std::size_t i = 0; i < shots.size(); ++i)
                REQUIRE_THAT(shots_again[i].carry_m, WithinRel(shots[i].carry_m, 5e-10));
        }
    }
}

TEST_CASE("fourteen clubs in the bag, more on trial, but not any number") {
    Golfer golfer = smallest_golfer();
    for (int i = 1; i < 40; ++i) {
        golfer.clubs.push_back(golfer.clubs.front());
        golfer.clubs.back().name = std::to_string(100 + i);
        golfer.clubs.back().in_bag = i < 14;
    }
    const Golfer again = parse_profile(profile_text(golfer), "x").golfer;
    REQUIRE(again == golfer);
    REQUIRE(std::ranges::count_if(again.clubs, &Club::in_bag) == 14);
    golfer.clubs.back().in_bag = true;
    REQUIRE_THROWS_AS(profile_text(golfer), std::logic_error);
    golfer.clubs.back().in_bag = false;
    golfer.clubs.push_back(golfer.clubs.back());
    golfer.clubs.back().name = "one more";
    REQUIRE_THROWS_AS(profile_text(golfer), std::logic_error);
}

TEST_CASE("the shots a club was learnt from stand several on a line") {
    Golfer golfer = smallest_golfer();
    golfer.clubs[0].learnt_from = LearntFrom{*golfer.clubs[0].pattern, {}};
    for (int i = 0; i < 100; ++i)
        golfer.clubs[0].learnt_from->shots.push_back(
            {(100.5 + i) * metres_per_yard, -3.25 * metres_per_yard});
    const std::string text = profile_text(golfer);
    CAPTURE(text);
    REQUIRE(text.find("[100.5, -3.25], [101.5, -3.25], [102.5, -3.25]") != std::string::npos);
    std::size_t lines = 0;
    std::size_t start = 0;
    for (std::size_t end; (end = text.find('\n', start)) != std::string::npos; start = end + 1) {
        REQUIRE(end - start <= 112);
        ++lines;
    }
    REQUIRE(lines < 40);
}

TEST_CASE("a golfer the format cannot hold is a defect of the caller, not a bad file") {
    const auto breaks = [](const auto& change) {
        Golfer golfer = smallest_golfer();
        change(golfer);
        REQUIRE_THROWS_AS(profile_text(golfer), std::logic_error);
    };
    breaks([](Golfer& g) { g.clubs.clear(); });
    breaks([](Golfer& g) { g.clubs.resize(15, g.clubs.front()); });
    breaks([](Golfer& g) { g.clubs[0].in_bag = false; });
    breaks([](Golfer& g) {
        g.clubs[0].learnt_from = LearntFrom{*g.clubs[0].pattern, std::vector<ShotOffset>(1001, {90, 0})};
    });
    breaks([](Golfer& g) { g.clubs[0].learnt_from = LearntFrom{*g.clubs[0].pattern, {{90, std::nan("")}}}; });
    breaks([](Golfer& g) { g.name = "\xff"; });
    breaks([](Golfer& g) { g.clubs[0].pattern->usual.carry_sd_m = 0; });
    breaks([](Golfer& g) { g.clubs[0].pattern->usual.side_sd_m = std::nan(""); });
    breaks([](Golfer& g) { g.clubs[0].pattern->mishit = Mishit{0.1, {{50, 0}, 5, 5, 0.3}}; });
}
