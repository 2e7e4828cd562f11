#include "golfer-profiles/profile.hpp"

#include "tests/catch.hpp"

using namespace landwidth;

TEST_CASE("names differ only by more than case and outer spaces") {
    REQUIRE(same_name("3-wood", " 3-WOOD\t"));
    REQUIRE(same_name("", "  "));
    REQUIRE_FALSE(same_name("3-wood", "3 wood"));
    REQUIRE_FALSE(same_name("driver", "driver 2"));
}

TEST_CASE("what can be a name") {
    REQUIRE(name_problem("3-wood").empty());
    REQUIRE(name_problem("J\xc3\xb8rgen").empty());
    REQUIRE(name_problem("") == "is empty");
    REQUIRE(name_problem(" \t") == "is empty");
    REQUIRE(name_problem("a\x1b[31m") == "contains a control character");
    REQUIRE(name_problem("a\xff") == "is not UTF-8 text");
    REQUIRE(name_problem(std::string(100, 'x')).empty());
    REQUIRE(name_problem(std::string(101, 'x')) == "is longer than 100 bytes");
}

TEST_CASE("an empty bag has no club, another finds it by name") {
    Golfer golfer;
    REQUIRE(golfer.club("driver") == nullptr);
    golfer.clubs = {{.name = "Driver", .kind = ClubKind::driver},
                    {.name = "putter", .kind = ClubKind::putter}};
    REQUIRE(golfer.club("driver") == &golfer.clubs[0]);
    REQUIRE(golfer.club("PUTTER ") == &golfer.clubs[1]);
    REQUIRE(golfer.club("5-wood") == nullptr);
}

TEST_CASE("kinds and their words go both ways") {
    for (const char* word :
         {"driver", "mini-driver", "fairway-wood", "hybrid", "driving-iron", "iron", "wedge", "putter"}) {
        REQUIRE(club_kind_named(word).has_value());
        REQUIRE(club_kind_name(*club_kind_named(word)) == word);
    }
    REQUIRE_FALSE(club_kind_named("wood").has_value());
    REQUIRE_FALSE(club_kind_named("").has_value());
}

TEST_CASE("the handicap a level stands for") {
    REQUIRE(handicap_of(NamedLevel::tour, 14, -5) == -5);
    REQUIRE(handicap_of(NamedLevel::scratch, 14, -5) == 0);
    REQUIRE(handicap_of(NamedLevel::handicap, 14, -5) == 14);
    REQUIRE(handicap_of(7.5, 14, -5) == 7.5);
}
