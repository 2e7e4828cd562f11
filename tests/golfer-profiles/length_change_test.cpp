#include "golfer-profiles/length_change.hpp"

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;
using Verdicts = std::vector<LengthVerdict>;

namespace {

constexpr double in = metres_per_inch;
constexpr double mph = metres_per_second_per_mph;
constexpr LengthPractice practice{
    .club_speed_per_length = {0.0, 3.0 * mph / in},
    .smash_wood = {1.4, 1.5},
    .smash_iron = {1.25, 1.45},
    .smash_wedge = {1.0, 1.25},
    .carry_per_ball_speed = {2.0 * metres_per_yard / mph, 3.0 * metres_per_yard / mph},
    .reach_m = 1.5 * in};

}  // namespace

TEST_CASE("an inch off a driver, by hand") {
    const auto change =
        length_change(ClubKind::driver, 45.5 * in, 44.5 * in,
                      {.ball_speed_mps = 150 * mph, .carry_m = 240 * metres_per_yard}, practice);
    REQUIRE(change);
    REQUIRE_THAT(change->club_speed_mps.low / mph, WithinAbs(-3.0, 1e-9));
    REQUIRE_THAT(change->club_speed_mps.high, WithinAbs(0.0, 1e-12));
    REQUIRE_THAT(change->ball_speed_mps.low / mph, WithinAbs(-4.5, 1e-9));
    REQUIRE_THAT(change->carry_m.low / metres_per_yard, WithinAbs(-13.5, 1e-9));
    REQUIRE_THAT(change->carry_m.high, WithinAbs(0.0, 1e-12));
    REQUIRE_THAT(change->ball_speed_after_mps.value().low / mph, WithinAbs(145.5, 1e-9));
    REQUIRE_THAT(change->ball_speed_after_mps.value().high / mph, WithinAbs(150.0, 1e-9));
    REQUIRE_THAT(change->carry_after_m.value().low / metres_per_yard, WithinAbs(226.5, 1e-9));
    REQUIRE_FALSE(change->club_speed_after_mps);
    REQUIRE_FALSE(change->own_smash);
}

TEST_CASE("longer mirrors shorter, and no gain of carry is always within the range") {
    for (const double inches : {0.25, 0.5, 1.0, 1.5}) {
        const auto longer = length_change(ClubKind::driver, 45 * in, (45 + inches) * in, {}, practice);
        const auto shorter = length_change(ClubKind::driver, 45 * in, (45 - inches) * in, {}, practice);
        REQUIRE_THAT(longer->carry_m.high, WithinAbs(-shorter->carry_m.low, 1e-9));
        REQUIRE_THAT(longer->club_speed_mps.high, WithinAbs(-shorter->club_speed_mps.low, 1e-9));
        REQUIRE(longer->carry_m.low <= 0.0);
        REQUIRE(longer->carry_m.high > longer->carry_m.low);
        REQUIRE(shorter->carry_m.high >= 0.0);
    }
    LengthPractice sure_gain = practice;
    sure_gain.club_speed_per_length.low = 1.0 * mph / in;
    const auto longer = length_change(ClubKind::driver, 45 * in, 46 * in, {}, sure_gain);
    REQUIRE_THAT(longer->ball_speed_mps.low / mph, WithinAbs(1.4, 1e-9));
    REQUIRE(longer->carry_m.low == 0.0);
    const auto shorter = length_change(ClubKind::driver, 46 * in, 45 * in, {}, sure_gain);
    REQUIRE_THAT(shorter->ball_speed_mps.high / mph, WithinAbs(-1.4, 1e-9));
    REQUIRE(shorter->carry_m.high == 0.0);
}

TEST_CASE("both speeds known give the golfer's own ratio") {
    const auto change = length_change(ClubKind::driver, 45 * in, 46 * in,
                                      {.club_speed_mps = 100 * mph, .ball_speed_mps = 144 * mph}, practice);
    REQUIRE(change->own_smash);
    REQUIRE_THAT(change->smash.low, WithinAbs(1.44, 1e-12));
    REQUIRE_THAT(change->ball_speed_mps.high / mph, WithinAbs(3 * 1.44, 1e-9));
    REQUIRE_THAT(change->club_speed_after_mps.value().high / mph, WithinAbs(103.0, 1e-9));
}

TEST_CASE("irons and wedges give less ball speed than woods; a putter has no table") {
    const auto ball = [](ClubKind kind) {
        const double from_m = built_lengths(kind).low;
        return length_change(kind, from_m, from_m + 1 * in, {}, practice).value().ball_speed_mps.high;
    };
    REQUIRE(ball(ClubKind::wedge) < ball(ClubKind::iron));
    REQUIRE(ball(ClubKind::iron) < ball(ClubKind::hybrid));
    REQUIRE_THAT(ball(ClubKind::driving_iron), WithinAbs(ball(ClubKind::iron), 1e-9));
    REQUIRE_THAT(ball(ClubKind::driver), WithinAbs(ball(ClubKind::fairway_wood), 1e-9));
    REQUIRE_FALSE(length_change(ClubKind::putter, 34 * in, 35 * in, {}, practice));
}

TEST_CASE("a rule of thumb goes on nowhere: too large a change, lengths that are not built") {
    const auto silent = [](ClubKind kind, double from, double to) {
        const auto silence = length_silence(kind, from * in, to * in, practice);
        // No figure is made where nothing is said.
        REQUIRE(length_change(kind, from * in, to * in, {}, practice).has_value() == !silence);
        return silence;
    };
    REQUIRE_FALSE(silent(ClubKind::driver, 45.5, 44));
    REQUIRE_FALSE(silent(ClubKind::driver, 44, 43));
    REQUIRE_FALSE(silent(ClubKind::driver, 47, 48));
    REQUIRE(silent(ClubKind::driver, 45.5, 43.5) == LengthSilence::change_too_large);
    REQUIRE(silent(ClubKind::driver, 43, 48) == LengthSilence::change_too_large);
    REQUIRE(silent(ClubKind::driver, 43.5, 42.5) == LengthSilence::no_such_length);
    REQUIRE(silent(ClubKind::driver, 48, 48.5) == LengthSilence::no_such_length);
    REQUIRE(silent(ClubKind::driver, 45, 20) == LengthSilence::no_such_length);
    REQUIRE_FALSE(silent(ClubKind::iron, 37, 36.5));
    REQUIRE(silent(ClubKind::iron, 37, 45) == LengthSilence::no_such_length);
}

TEST_CASE("a length on a limit is within it") {
    REQUIRE(length_verdicts(ClubKind::iron, 18 * in).empty());
    REQUIRE(length_verdicts(ClubKind::iron, 46 * in).empty());
    REQUIRE(length_verdicts(ClubKind::iron, 17.9 * in) == Verdicts{LengthVerdict::shorter_than_rules});
    REQUIRE(length_verdicts(ClubKind::fairway_wood, 46.25 * in) ==
            Verdicts{LengthVerdict::longer_than_local_rule});
    REQUIRE(length_verdicts(ClubKind::fairway_wood, 48 * in) ==
            Verdicts{LengthVerdict::longer_than_local_rule});
    REQUIRE(length_verdicts(ClubKind::fairway_wood, 48.1 * in) == Verdicts{LengthVerdict::longer_than_rules});
    REQUIRE(length_verdicts(ClubKind::putter, 52 * in).empty());
    REQUIRE(length_verdicts(ClubKind::putter, 17 * in) == Verdicts{LengthVerdict::shorter_than_rules});
}

TEST_CASE("what the trade says of a driver's length") {
    const auto driver = [](double inches) { return length_verdicts(ClubKind::driver, inches * in); };
    REQUIRE(driver(43.5) == Verdicts{LengthVerdict::seldom_still_a_driver});
    REQUIRE(driver(44.5) == Verdicts{LengthVerdict::usual_driver});
    REQUIRE(driver(45.5) == Verdicts{LengthVerdict::usual_driver});
    REQUIRE(driver(46) == Verdicts{LengthVerdict::longer_than_usual_driver});
    REQUIRE(driver(46.5) ==
            Verdicts{LengthVerdict::longer_than_local_rule, LengthVerdict::longer_than_usual_driver});
    REQUIRE(driver(47) == Verdicts{LengthVerdict::longer_than_local_rule, LengthVerdict::extreme_driver});
    REQUIRE(driver(48.5) == Verdicts{LengthVerdict::longer_than_rules, LengthVerdict::extreme_driver});
}
