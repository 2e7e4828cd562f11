// What recorded shots say of the clubs that changes are about.
#include "planner/engine/bags/shot_evidence.hpp"

#include "tests/catch.hpp"

using namespace landwidth;

namespace {

Club hit(const char* name, std::vector<ShotOffset> shots) {
    Club club;
    club.name = name;
    club.pattern = ShotPattern{.usual = {{180.0, 0.0}, 10.0, 12.0, 0.0},
                               .mishit = Mishit{0.1, {{120.0, 0.0}, 20.0, 25.0, 0.0}},
                               .shots = static_cast<int>(shots.size())};
    if (!shots.empty()) club.learnt_from = LearntFrom{*club.pattern, std::move(shots)};
    return club;
}

BagDraws as_stated(const Golfer& golfer) {
    BagDraws draws(golfer.clubs.size());
    for (std::size_t i = 0; i < draws.size(); ++i)
        if (golfer.clubs[i].pattern) draws[i] = {*golfer.clubs[i].pattern, *golfer.clubs[i].pattern};
    return draws;
}

}  // namespace

TEST_CASE("the evidence is of the compared clubs and their builds with shots at hand", "[weigh]") {
    Golfer golfer;
    golfer.clubs = {hit("driver", {{185, 2}, {179, -3}, {95, 4}}), hit("driver, 44 in", {{181, 2}}),
                    hit("driver, 46 in", {}), hit("3-wood", {{170, 0}})};
    golfer.clubs.emplace_back().kind = ClubKind::putter;
    const ShotEvidence evidence = shot_evidence(golfer, {{1, true}}, as_stated(golfer));
    REQUIRE(evidence.size() == 2);
    CHECK(evidence.at(1).raw.shots == 1);
    const ClubEvidence& driver = evidence.at(0);
    CHECK(driver.raw.shots == 3);
    CHECK(driver.raw_usual.shots == 2);
    REQUIRE(driver.mishit_chance.size() == 3);
    CHECK(driver.mishit_chance[0] < 0.05);
    CHECK(driver.mishit_chance[2] > 0.95);
    CHECK(driver.open.carry.middle == 180.0);
    CHECK(shot_evidence(golfer, {{2, false}}, as_stated(golfer)).size() == 2);
    CHECK(shot_evidence(golfer, {}, as_stated(golfer)).empty());
}
