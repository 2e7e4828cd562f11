// Names of clubs as golfers write them: common practice, no source.
#include "golfer-profiles/club_names.hpp"

#include <string_view>
#include <vector>

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

TEST_CASE("spellings of one club have one key, two clubs never", "[log]") {
    const std::vector<std::vector<const char*>> clubs{
        {"driver", "Driver", "1W", "Dr", "D", "1-wood", "wood 1"},
        {"Driver 10.5", "Dr 10.5"},
        {"Driver 9"},
        {"mini driver", "Mini-Driver", "mini"},
        {"3-wood", "3W", "Wood 3", "3 fairway wood", "fw3"},
        {"5-wood", "5w"},
        {"4h", "4-hybrid", "Hybrid 4", "hy4"},
        {"7-iron", "7i", "7 Iron", "i7", "Iron 7"},
        {"8-iron", "8i"},
        {"driving iron", "DI"},
        {"2 driving iron"},
        {"utility iron"},
        {"PW", "pitching wedge"},
        {"GW", "gap wedge"},
        {"AW", "approach wedge"},
        {"SW", "sand wedge", "Sand-Wedge"},
        {"56 deg", "56", "56\u00b0", "56 wedge"},
        {"LW", "lob wedge"},
        {"LW 58", "58 lob wedge x"},  // the rest must be the same, too
        {"LW 60", "lob wedge 60"},
        {"58 deg", "58\u00b0"},
        {"60 deg", "60"},
        {"old faithful", "Old Faithful "},
        {"old faithful 2"},
        {"Driver+"},
        {"Driver \u00d6"},
        {"Driver \u00dc"},
    };
    for (std::size_t i = 0; i < clubs.size(); ++i) {
        for (const char* name : clubs[i]) {
            CAPTURE(name);
            const bool odd_one = std::string_view(name).ends_with(" x");
            REQUIRE((club_key(name) == club_key(clubs[i].front())) == !odd_one);
            for (std::size_t j = 0; j < i; ++j)
                REQUIRE(club_key(name) != club_key(clubs[j].front()));
        }
    }
}

TEST_CASE("spellings of one build have one key", "[log]") {
    for (const char* build : {"44 in", "44in", "44\"", "44.0 in", "44,0 IN", "44 inch", "44 Inches", "44''",
                              "44\u2033", "driver, 44 in", "Driver 44in"}) {
        CAPTURE(build);
        REQUIRE(build_key("driver", build) == build_key("driver", "44 in"));
    }
    REQUIRE(build_key("1W", "driver, 44 in") == build_key("1W", "44\""));
    REQUIRE(build_key("driver", "Driver").empty());
    REQUIRE(build_key("driver", "44\" stiff") == build_key("driver", "44 in Stiff"));
    REQUIRE(build_key("driver", "44.5 in") != build_key("driver", "44 in"));
    REQUIRE(build_key("driver", "44 in stiff") != build_key("driver", "44 in"));
    REQUIRE(build_key("driver", "head +2 g") != build_key("driver", "head -2 g"));
    REQUIRE(build_key("driver", "D") != "");
}
