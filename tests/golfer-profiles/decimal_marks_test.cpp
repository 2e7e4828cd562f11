// Commas and points: read where there is one reading, refused where there are two.
#include "golfer-profiles/logs/decimal_marks.hpp"

#include <string_view>

#include "tests/catch.hpp"

using namespace landwidth;

namespace {

DecimalMarks marks_of(std::initializer_list<std::string_view> seen) {
    DecimalMarks marks;
    for (const std::string_view digits : seen)
        marks.note(digits);
    return marks;
}

}  // namespace

TEST_CASE("numbers with one reading need no other number", "[log]") {
    const DecimalMarks nothing_seen;
    REQUIRE(nothing_seen.value("231") == 231.0);
    REQUIRE(nothing_seen.value("231.5") == 231.5);
    REQUIRE(nothing_seen.value("231,5") == 231.5);
    REQUIRE(nothing_seen.value("0,234") == 0.234);
    REQUIRE(nothing_seen.value("2345,678") == 2345.678);
    REQUIRE(nothing_seen.value("1.234") == 1.234);
    REQUIRE(nothing_seen.value("1,234.5") == 1234.5);
    REQUIRE(nothing_seen.value("1.234,5") == 1234.5);
    REQUIRE(nothing_seen.value("1,234,567") == 1234567.0);
    REQUIRE(nothing_seen.value(".5") == 0.5);
}

TEST_CASE("a comma before three digits is read by the other numbers of the file", "[log]") {
    REQUIRE(marks_of({}).is_ambiguous("1,234"));
    REQUIRE(!marks_of({}).value("1,234"));
    REQUIRE(marks_of({"231,5"}).value("1,234") == 1.234);
    REQUIRE(marks_of({"231.5"}).value("1,234") == 1234.0);
    REQUIRE(marks_of({"231,5"}).value("2.686") == 2686.0);
    REQUIRE(marks_of({"231.5"}).value("2.686") == 2.686);
    // Both kinds in one file: nothing can be told from it.
    REQUIRE(marks_of({"231,5", "231.5"}).is_ambiguous("1,234"));
    REQUIRE(marks_of({"231,5", "231.5"}).is_ambiguous("1.234"));
    REQUIRE(marks_of({"231,5", "231.5"}).value("12.5") == 12.5);
}

TEST_CASE("digits that are no number are none", "[log]") {
    for (const std::string_view digits :
         {"", ".", ",", "1,2,3", "1.2.3", "12,34,567", "1,234,56", "1,234.567.8", "231,", "0,234,567"}) {
        CAPTURE(digits);
        REQUIRE(!marks_of({}).value(digits));
        REQUIRE(!marks_of({}).is_ambiguous(digits));
    }
}
