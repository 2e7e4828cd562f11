#include "golfer-profiles/swing_weight.hpp"

#include <fmt/format.h>

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

TEST_CASE("letters and tenths come back as they went out") {
    for (int tenths = 0; tenths < 700; ++tenths) {
        const int points = tenths % 100;
        std::string expected = fmt::format("{}{}", "ABCDEFG"[tenths / 100], points / 10);
        if (points % 10 != 0) expected += fmt::format(".{}", points % 10);
        const auto read = swing_weight_of_text(expected);
        CAPTURE(expected);
        REQUIRE(read);
        REQUIRE_THAT(read->points(), WithinAbs(tenths / 10.0, 1e-9));
        REQUIRE(swing_weight_text(*read) == expected);
        REQUIRE(swing_weight_text(SwingWeight::of_points(tenths / 10.0)) == expected);
    }
}

TEST_CASE("the ends of the scale, and roundings across a letter") {
    REQUIRE(swing_weight_text(SwingWeight::of_points(0.0)) == "A0");
    REQUIRE(swing_weight_text(SwingWeight::of_points(-0.04)) == "A0");
    REQUIRE_FALSE(swing_weight_text(SwingWeight::of_points(-0.06)));
    REQUIRE(swing_weight_text(SwingWeight::of_points(69.94)) == "G9.9");
    REQUIRE_FALSE(swing_weight_text(SwingWeight::of_points(69.96)));
    REQUIRE(swing_weight_text(SwingWeight::of_points(39.96)) == "E0");
    REQUIRE_FALSE(swing_weight_text(SwingWeight{0.0}));
}

TEST_CASE("swing weights as typed") {
    REQUIRE(swing_weight_of_text("d2"));
    REQUIRE_THAT(swing_weight_of_text(" D2.25 ")->points(), WithinAbs(32.25, 1e-9));
    for (const char* bad :
         {"", "D", "2", "Z9", "H0", "D10", "D-1", "D-0", "D+1", "D 2", "D2x", "DD2", "D2,5", "Dnan", "D1e0",
          "\xC3\x84"
          "2"}) {
        CAPTURE(bad);
        REQUIRE_FALSE(swing_weight_of_text(bad));
    }
}

TEST_CASE("total, balance and swing weight give one another") {
    for (double total_kg = 0.25; total_kg < 0.6; total_kg += 0.05) {
        for (double balance_m = 0.5; balance_m < 1.0; balance_m += 0.05) {
            const SwingWeight weight = swing_weight_of(total_kg, balance_m);
            REQUIRE_THAT(balance_of(weight, total_kg), WithinAbs(balance_m, 1e-12));
            REQUIRE_THAT(total_of(weight, balance_m).value(), WithinAbs(total_kg, 1e-12));
        }
    }
    REQUIRE_FALSE(total_of(SwingWeight::of_points(30), swing_weight_fulcrum_m));
    REQUIRE_FALSE(total_of(SwingWeight::of_points(30), 0.2));
    REQUIRE(swing_weight_of(0.3, 0.2).moment_kg_m < 0.0);
}
