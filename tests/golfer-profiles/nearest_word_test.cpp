#include "golfer-profiles/nearest_word.hpp"

#include <array>

#include "tests/catch.hpp"

using namespace landwidth;

namespace {
constexpr std::array<std::string_view, 5> keys{"carry_yd", "carry_sd_yd", "side_yd", "run_yd", "note"};
}

TEST_CASE("nothing is near an empty word, a strange one, or when there are no candidates") {
    REQUIRE_FALSE(nearest_word("", keys));
    REQUIRE_FALSE(nearest_word("temperature", keys));
    REQUIRE_FALSE(nearest_word(std::string(100000, 'x'), keys));
    REQUIRE_FALSE(nearest_word("carry_yd", {}));
}

TEST_CASE("slips of the keyboard find their word") {
    REQUIRE(nearest_word("carry_yd", keys) == "carry_yd");
    REQUIRE(nearest_word("cary_yd", keys) == "carry_yd");
    REQUIRE(nearest_word("carry_sdyd", keys) == "carry_sd_yd");
    REQUIRE(nearest_word("Carry-SD yd", keys) == "carry_sd_yd");
    REQUIRE(nearest_word("rnu_yd", keys) == "run_yd");
    REQUIRE(nearest_word("notes", keys) == "note");
}
