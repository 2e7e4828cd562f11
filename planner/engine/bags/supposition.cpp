#include "planner/engine/bags/supposition.hpp"

#include <algorithm>
#include <utility>

#include "golfer-profiles/club_flight.hpp"

namespace landwidth {

namespace {

constexpr double most_mishits = 0.95;
constexpr double least_carry_m = 1.0;

void widen(Spread& spread, const Supposition& supposition) {
    spread.carry_sd_m = std::min(largest_sd_m, spread.carry_sd_m * supposition.carry_spread);
    spread.side_sd_m = std::min(largest_sd_m, spread.side_sd_m * supposition.side_spread);
}

// Hit faster, or so that it carries as far as is supposed: the air of another day then acts on that ball.
Launch supposed_launch(const Club& club, const Supposition& supposition, double carry_m) {
    if (supposition.ball_speed_mps != 0.0) {
        Launch launch = *club.launch;
        launch.ball_speed_mps += supposition.ball_speed_mps;
        return launch;
    }
    if (carry_m == club.pattern->usual.centre.carry_m) return *club.launch;
    return ClubFlight(club).launch_for(carry_m).launch;
}

}  // namespace

Supposition with_flight(Supposition supposition, const Club& club) {
    supposition.speed_carry_m = 0.0;
    if (supposition.ball_speed_mps == 0.0) return supposition;
    const ClubFlight flight(club);
    Launch faster = flight.launch();
    faster.ball_speed_mps += supposition.ball_speed_mps;
    const auto carry_m = [&](const Launch& launch) {
        return fly({launch}, reference_air(), flight.aerodynamics()).landing.along_m;
    };
    supposition.speed_carry_m = carry_m(faster) - carry_m(flight.launch());
    return supposition;
}

ShotPattern supposed_pattern(const ShotPattern& pattern, const Supposition& supposition) {
    ShotPattern supposed = pattern;
    const double carry_m = pattern.usual.centre.carry_m;
    const double then_m = std::max(
        least_carry_m, carry_m * supposition.carry_factor + supposition.carry_m + supposition.speed_carry_m);
    supposed.usual.centre.carry_m = then_m;
    supposed.usual.centre.side_m += supposition.side_m;
    widen(supposed.usual, supposition);
    if (!supposed.mishit) return supposed;
    Mishit& mishit = *supposed.mishit;
    if (then_m != carry_m) mishit.spread.centre.carry_m *= then_m / carry_m;
    mishit.spread.centre.side_m += supposition.side_m;
    widen(mishit.spread, supposition);
    mishit.share =
        std::clamp(mishit.share * supposition.mishit_factor + supposition.mishit_share, 0.0, most_mishits);
    return supposed;
}

Club supposed_club(const Club& club, const Supposition& supposition, std::string name) {
    Club supposed = club;
    supposed.name = std::move(name);
    supposed.pattern = supposed_pattern(*club.pattern, supposition);
    if (club.launch)
        supposed.launch = supposed_launch(club, supposition, supposed.pattern->usual.centre.carry_m);
    supposed.in_bag = false;
    supposed.learnt_from.reset();
    return supposed;
}

BagDraws drawn_with_suppositions(Golfer golfer, std::span<const SupposedClub> supposed,
                                 const GolferPrior& prior, int count) {
    for (const SupposedClub& club : supposed) {
        golfer.clubs[club.club].pattern.reset();
        golfer.clubs[club.club].build_of.clear();
    }
    BagDraws draws = drawn_bags(golfer, prior, count);
    for (const SupposedClub& club : supposed)
        for (const ShotPattern& pattern : draws[club.of])
            draws[club.club].push_back(supposed_pattern(pattern, club.supposition));
    return draws;
}

}  // namespace landwidth
