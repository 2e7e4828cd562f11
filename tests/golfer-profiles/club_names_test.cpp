// Names of clubs as golfers write them: common practice, no source.
#include "golfer-profiles/club_names.hpp"

#include "tests/catch.hpp"

using namespace landwidth;

TEST_CASE("a name tells the kind", "[log]") {
    const std::pair<const char*, ClubKind> names[] = {
        {"driver", ClubKind::driver},
        {"Driver 10.5", ClubKind::driver},
        {"1-wood", ClubKind::driver},
        {"D", ClubKind::driver},
        {"Mini Driver", ClubKind::mini_driver},
        {"3-wood", ClubKind::fairway_wood},
        {"3W", ClubKind::fairway_wood},
        {"5 Wood", ClubKind::fairway_wood},
        {"fairway", ClubKind::fairway_wood},
        {"4h", ClubKind::hybrid},
        {"Hybrid 3", ClubKind::hybrid},
        {"driving iron", ClubKind::driving_iron},
        {"2 utility iron", ClubKind::driving_iron},
        {"7-iron", ClubKind::iron},
        {"7i", ClubKind::iron},
        {"i7", ClubKind::iron},
        {"Iron 6", ClubKind::iron},
        {"PW", ClubKind::wedge},
        {"sand wedge", ClubKind::wedge},
        {"56", ClubKind::wedge},
        {"52\u00b0", ClubKind::wedge},
        {"60 deg", ClubKind::wedge},
        {"putter", ClubKind::putter},
    };
    for (const auto& [name, kind] : names) {
        CAPTURE(name);
        REQUIRE(kind_by_name(name) == kind);
    }
    for (const char* name : {"utility", "old faithful", "7", "", "wonder 3"}) {
        CAPTURE(name);
        REQUIRE(!kind_by_name(name));
    }
}

TEST_CASE("a name tells which of its kind a club is", "[log]") {
    REQUIRE(usual_name(ClubKind::iron, "7i") == "7-iron");
    REQUIRE(usual_name(ClubKind::fairway_wood, "5 Wood") == "5-wood");
    REQUIRE(usual_name(ClubKind::hybrid, "H4") == "4-hybrid");
    REQUIRE(usual_name(ClubKind::wedge, "SW") == "sand wedge");
    REQUIRE(usual_name(ClubKind::wedge, "52 deg") == "gap wedge");
    REQUIRE(!usual_name(ClubKind::wedge, "wedge"));
    REQUIRE(!usual_name(ClubKind::iron, "iron"));
}
