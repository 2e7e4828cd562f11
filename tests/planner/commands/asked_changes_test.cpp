// What is typed becomes changes of a bag; what is refused stands in tests/corpus/commands.
#include "planner/commands/asked_changes.hpp"

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "planner/commands/typed_supposition.hpp"
#include "tests/catch.hpp"

namespace landwidth {
namespace {

using Catch::Matchers::WithinAbs;
using Numbers = std::vector<std::size_t>;

Club hit(const char* name, ClubKind kind, bool in_bag, const char* build_of = "") {
    Club club{.name = name, .kind = kind, .build_of = build_of};
    club.pattern = ShotPattern{.usual = {{180.0, 0.0}, 10.0, 12.0, 0.0},
                               .mishit = Mishit{0.1, {{120.0, 0.0}, 15.0, 15.0, 0.0}},
                               .shots = 20};
    club.in_bag = in_bag;
    return club;
}

enum : std::size_t {
    driver,
    wood,
    iron,
    putter,
    long_driver,
    short_driver,
    other_driver,
    build,
    driving_iron
};

Golfer golfer() {
    Golfer made;
    made.clubs = {hit("driver", ClubKind::driver, true),
                  hit("3-wood", ClubKind::fairway_wood, true),
                  hit("7-iron", ClubKind::iron, true),
                  {.name = "putter", .kind = ClubKind::putter},
                  hit("driver, 45.5 in", ClubKind::driver, false),
                  hit("driver, 44 in", ClubKind::driver, false),
                  hit("old faithful", ClubKind::driver, false),
                  hit("low spin", ClubKind::fairway_wood, false, "3-wood"),
                  hit("driving iron", ClubKind::driving_iron, false)};
    return made;
}

ChangesToWeigh changes(const AskedChanges& asked, const Golfer& of = golfer()) {
    return changes_to_weigh(of, asked);
}

TEST_CASE("clubs for clubs of the bag, each on its own", "[asked_changes]") {
    const ChangesToWeigh result =
        changes({{"driving iron"}, {"7-iron"}, {"driver=driver, 44 in", "3-wood=low spin"}});
    REQUIRE(result.changes.size() == 3);
    CHECK(result.changes[0].label == "with driving iron, without 7-iron");
    CHECK(result.changes[0].in == Numbers{driving_iron});
    CHECK(result.changes[0].out == Numbers{iron});
    CHECK(result.changes[1].label == "driver, 44 in for driver");
    CHECK(result.changes[1].in == Numbers{short_driver});
    CHECK(result.changes[1].out == Numbers{driver});
    for (const BagChange& change : result.changes)
        CHECK(change.before.empty());
    CHECK(result.supposed.empty());
}

TEST_CASE("two builds on trial are compared in the place of the club", "[asked_changes]") {
    const auto one = [](const char* text, const Golfer& of = golfer()) {
        const ChangesToWeigh result = changes({{}, {}, {text}}, of);
        REQUIRE(result.changes.size() == 1);
        return result.changes.front();
    };
    const BagChange by_name = one("driver, 45.5 in=driver, 44 in");
    CHECK(by_name.label == "driver, 44 in for driver, 45.5 in");
    CHECK(by_name.in == Numbers{short_driver});
    CHECK(by_name.out == Numbers{long_driver});
    CHECK(by_name.before == Exchange{{long_driver}, {driver}});
    // As the profile says what it is a build of, and any driver for the driver.
    CHECK(one("low spin=driving iron").before == Exchange{{build}, {wood}});
    CHECK(one("old faithful=driver, 44 in").before == Exchange{{other_driver}, {driver}});
    // Back to the club of the bag.
    const BagChange back = one("driver, 44 in=driver");
    CHECK(back.in == Numbers{driver});
    CHECK(back.out == Numbers{short_driver});
    CHECK(back.before == Exchange{{short_driver}, {driver}});
    // No such club in the bag: it has a place besides.
    Golfer without = golfer();
    without.clubs[driver].in_bag = false;
    CHECK(one("driver, 45.5 in=driver, 44 in", without).before == Exchange{{long_driver}, {}});
    CHECK(one("driving iron=low spin").before == Exchange{{driving_iron}, {}});
}

TEST_CASE("whose place it is must be clear", "[asked_changes]") {
    Golfer two = golfer();
    two.clubs.push_back(hit("driver, 46 in", ClubKind::driver, true));
    CHECK_THROWS_AS(changes({{}, {}, {"driver, 45.5 in=driver, 44 in"}}, two), UsageError);
    // One of the two is what comes in.
    CHECK(changes({{}, {}, {"driver, 45.5 in=driver, 46 in"}}, two).changes[0].before.out ==
          Numbers{two.clubs.size() - 1});
    CHECK_THROWS_AS(changes({{}, {}, {"driver, 45.5 in=3-wood"}}), UsageError);
}

TEST_CASE("all together is one change", "[asked_changes]") {
    const ChangesToWeigh result = changes({.added = {"driving iron"},
                                           .dropped = {"7-iron"},
                                           .replaced = {"driver=driver, 44 in", "3-wood=low spin"},
                                           .together = true});
    REQUIRE(result.changes.size() == 1);
    const BagChange& change = result.changes.front();
    CHECK(change.label == "driver, 44 in for driver, low spin for 3-wood, with driving iron, without 7-iron");
    CHECK(change.in == Numbers{short_driver, build, driving_iron});
    CHECK(change.out == Numbers{driver, wood, iron});
    CHECK(change.before.empty());
    // One step after the other.
    const BagChange steps =
        changes({.replaced = {"driver=driver, 45.5 in", "driver, 45.5 in=driver, 44 in"}, .together = true})
            .changes.front();
    CHECK(steps.in == Numbers{short_driver});
    CHECK(steps.out == Numbers{driver});
    CHECK(steps.before.empty());
    // With a baseline of its own.
    const BagChange builds =
        changes({.added = {"driving iron"}, .replaced = {"driver, 45.5 in=driver, 44 in"}, .together = true})
            .changes.front();
    CHECK(builds.in == Numbers{short_driver, driving_iron});
    CHECK(builds.out == Numbers{long_driver});
    CHECK(builds.before == Exchange{{long_driver}, {driver}});
}

TEST_CASE("a supposed club is weighed in place of its club", "[asked_changes]") {
    const ChangesToWeigh result =
        changes({.supposed = {"driver: spread -10 %", "driver, 44 in: side -3 yd"}});
    REQUIRE(result.changes.size() == 2);
    REQUIRE(result.supposed.size() == 2);
    CHECK(result.supposed[0].of == driver);
    CHECK(result.supposed[0].words == "spread -10 %");
    CHECK(result.golfer.clubs[result.supposed[0].club].name == "driver (supposed)");
    CHECK(result.changes[0].label == "driver (supposed) for driver");
    CHECK(result.changes[0].out == Numbers{driver});
    CHECK(result.changes[0].before.empty());
    CHECK(result.golfer.clubs[result.supposed[1].club].name == "driver, 44 in (supposed)");
    CHECK(result.changes[1].out == Numbers{short_driver});
    CHECK(result.changes[1].before == Exchange{{short_driver}, {driver}});
    CHECK_THAT(result.golfer.clubs[result.supposed[0].club].pattern->usual.side_sd_m, WithinAbs(10.8, 1e-12));
}

TEST_CASE("a supposed club that another change names has none of its own", "[asked_changes]") {
    const ChangesToWeigh result = changes(
        {.replaced = {"driver=driver, 44 in (supposed)"}, .supposed = {"driver, 44 in: spread -10 %"}});
    REQUIRE(result.changes.size() == 1);
    CHECK(result.changes[0].in == Numbers{result.supposed[0].club});
    CHECK(result.changes[0].out == Numbers{driver});
    CHECK(result.changes[0].before.empty());
    // Two of one club are told apart, and a supposed one is not supposed again.
    const ChangesToWeigh two = changes({.supposed = {"driver: spread -10 %", "driver: spread -20 %"}});
    CHECK(two.golfer.clubs[two.supposed[1].club].name == "driver (supposed 2)");
    CHECK_THROWS_AS(changes({.supposed = {"driver: spread -10 %", "driver (supposed): spread -20 %"}}),
                    UsageError);
}

TEST_CASE("every quantity of a supposition in its units", "[asked_changes]") {
    const auto of = [](const char* text) { return typed_supposition("--suppose", text).supposition; };
    const TypedSupposition all = typed_supposition(
        "--suppose",
        " driver, 44 in :  Spread  -10 %, ball speed +3 mph ,carry +5yd, side -4 m, mishits -3 points");
    CHECK(all.club == "driver, 44 in");
    CHECK(all.words == "Spread -10 %, ball speed +3 mph ,carry +5yd, side -4 m, mishits -3 points");
    CHECK_THAT(all.supposition.carry_spread, WithinAbs(0.9, 1e-12));
    CHECK_THAT(all.supposition.side_spread, WithinAbs(0.9, 1e-12));
    CHECK_THAT(all.supposition.ball_speed_mps, WithinAbs(1.34112, 1e-12));
    CHECK_THAT(all.supposition.carry_m, WithinAbs(4.572, 1e-12));
    CHECK_THAT(all.supposition.side_m, WithinAbs(-4.0, 1e-12));
    CHECK_THAT(all.supposition.mishit_share, WithinAbs(-0.03, 1e-12));
    CHECK_THAT(of("d: side spread +20%").side_spread, WithinAbs(1.2, 1e-12));
    CHECK(of("d: side spread +20%").carry_spread == 1.0);
    CHECK_THAT(of("d: carry spread \u22125 %").carry_spread, WithinAbs(0.95, 1e-12));
    CHECK(of("d: carry spread -5 %").side_spread == 1.0);
    CHECK_THAT(of("d: carry -2 %").carry_factor, WithinAbs(0.98, 1e-12));
    CHECK_THAT(of("d: carry + 4 m").carry_m, WithinAbs(4.0, 1e-12));
    CHECK_THAT(of("d: mishits -30 %").mishit_factor, WithinAbs(0.7, 1e-12));
    CHECK_THAT(of("d: ball speed +2 m/s").ball_speed_mps, WithinAbs(2.0, 1e-12));
    CHECK_THAT(of("d: ball speed -5 km/h").ball_speed_mps, WithinAbs(-5.0 / 3.6, 1e-9));
    CHECK_NOTHROW(of("d: carry spread -5 %, side spread +5 %"));
    CHECK_THROWS_AS(of("d: spread -5 %, carry spread +5 %"), UsageError);
    CHECK_THROWS_AS(of("d: carry +2 %, carry +2 yd"), UsageError);
    // Of the names of clubs the last colon counts.
    CHECK(typed_supposition("--suppose", "fitting: driver: side +1 yd").club == "fitting: driver");
}

}  // namespace
}  // namespace landwidth
