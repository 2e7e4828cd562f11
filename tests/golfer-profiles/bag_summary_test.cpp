#include "golfer-profiles/bag_summary.hpp"

#include <cmath>

#include "golfer-profiles/presets.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

TEST_CASE("a bag of nothing, or of a putter, has no rows") {
    Golfer golfer;
    REQUIRE(bag_summary(golfer, 10).empty());
    golfer.clubs.push_back({.name = "putter", .kind = ClubKind::putter});
    REQUIRE(bag_summary(golfer, 10).empty());
}

TEST_CASE("a wider band holds more shots; the order is the bag's") {
    const Golfer golfer = preset_golfer("bogey-man");
    const auto narrow = bag_summary(golfer, 10);
    const auto wide = bag_summary(golfer, 20);
    REQUIRE(narrow.size() == golfer.clubs.size() - 1);
    for (std::size_t i = 0; i < narrow.size(); ++i) {
        REQUIRE(narrow[i].name == golfer.clubs[i].name);
        REQUIRE(narrow[i].share_within > 0.0);
        REQUIRE(wide[i].share_within > narrow[i].share_within);
        REQUIRE(wide[i].share_within <= 1.0);
        REQUIRE(narrow[i].total_m == narrow[i].carry_m + narrow[i].run_m);
    }
}

TEST_CASE("hand numbers: one standard deviation each side of a normal") {
    Golfer golfer;
    ShotPattern pattern;
    pattern.usual = {{150, 0}, 10, 12, 0};
    pattern.run_m = 7;
    pattern.shots = 31;
    golfer.clubs.push_back({.name = "a", .kind = ClubKind::iron, .pattern = pattern});
    const ClubSummary row = bag_summary(golfer, 12).front();
    REQUIRE_THAT(row.share_within, WithinAbs(std::erf(std::sqrt(0.5)), 1e-12));
    REQUIRE(row.total_m == 157);
    REQUIRE(row.side_sd_m == 12);
    REQUIRE(row.mishit_share == 0);
    REQUIRE(row.shots == 31);
}
