// What cannot be read without doubt is refused in one line that names row and column.
#include <string>

#include "golfer-profiles/shot_log.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

// A row with this carry and side under the plain header.
std::string refusal_of_cells(const std::string& carry, const std::string& side) {
    return refusal_of("club;carry_yd;side_yd\ndriver;230;1\ndriver;" + carry + ";" + side + "\n");
}

}  // namespace

TEST_CASE("cells that cannot be read", "[log]") {
    const std::string carry = "shots.csv: row 3, column \"carry_yd\": ";
    const std::string side = "shots.csv: row 3, column \"side_yd\": ";
    REQUIRE(refusal_of_cells("far", "1") == carry + "\"far\": a number is expected");
    REQUIRE(refusal_of_cells("230 paces", "1") == carry + "\"230 paces\": a number is expected");
    REQUIRE(refusal_of_cells("23O", "1") == carry + "\"23O\": a number is expected");
    REQUIRE(refusal_of_cells("2 30", "1") == carry + "\"2 30\": a number is expected");
    REQUIRE(refusal_of_cells("nan", "1") == carry + "\"nan\": a number is expected");
    REQUIRE(refusal_of_cells("1e2", "1") == carry + "\"1e2\": a number is expected");
    REQUIRE(refusal_of_cells("98 mph", "1") == carry + "\"98 mph\": \"mph\" is no unit of a length");
    REQUIRE(refusal_of_cells("1,234", "1") ==
            carry +
                "\"1,234\": the comma may stand for decimals or for thousands; write the number without it");
    REQUIRE(refusal_of_cells("-230", "1") == carry + "\"-230\": a carry cannot be negative");
    REQUIRE(contains(refusal_of_cells("2310", "1"),
                     carry + "\"2310\": that is 2310 yd; 0 to 450 yd is possible"));
    REQUIRE(contains(refusal_of_cells("", "1"), carry + "empty: a number is expected"));
    REQUIRE(contains(refusal_of_cells("230", ""), side + "empty: a number is expected"));
    REQUIRE(contains(refusal_of_cells("230", "-12R"), side + "\"-12R\": a sign and a letter"));
    REQUIRE(contains(refusal_of_cells("230", "L12R"), side + "\"L12R\": two letters for one side"));
    REQUIRE(contains(refusal_of_cells("230", "12X"), side + "\"12X\": a number is expected"));
    REQUIRE(contains(refusal_of_cells("230", "X12"), side + "\"X12\": a number, with R or L"));
    REQUIRE(contains(refusal_of_cells("230", "R"), side + "\"R\": a number"));
    REQUIRE(contains(refusal_of_cells("230", "400"), side + "\"400\": that is 400 yd"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\n,230,1\n"),
                     "row 2, column \"club\": empty: the name is empty"));
}

TEST_CASE("rows and headers that cannot be read", "[log]") {
    REQUIRE(contains(refusal_of(""), "shots.csv: the file is empty"));
    REQUIRE(contains(refusal_of("\n\n"), "shots.csv: the file is empty"));
    REQUIRE(contains(refusal_of(",,\n,,\n"), "shots.csv: no row has anything in it"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\n"), "shots.csv: a header and no shots under it"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\ndriver,230\n"), "row 2: 2 cells under 3 headings"));
    REQUIRE(
        contains(refusal_of("club,carry_yd,side_yd\ndriver,231,5,12\n"), "row 2: 4 cells under 3 headings"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd,Carry_yd\nd,230,1,2\n"),
                     "row 1: two columns are headed \"Carry_yd\""));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd,carry_m\nd,230,1,210\n"),
                     "row 1: two columns for one quantity, \"carry_yd\" and \"carry_m\""));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\ndriver,\"230,1\n"), "row 2: a quotation mark"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\ndr\xe9,230,1\n"), "line 2, "));
    REQUIRE(contains(refusal_of("PK\x03\x04zip"), "save the sheet as CSV"));
    REQUIRE(contains(refusal_of(std::string("c\0l\0u\0", 6)), "UTF-16 without a byte-order mark"));
    REQUIRE(contains(refusal_of(std::string("\xff\xfe"
                                            "c\0l",
                                            5)),
                     "no good UTF-16"));
}

TEST_CASE("missing columns name those there are", "[log]") {
    REQUIRE(
        contains(refusal_of("club,Carry,side_yd\nd,230,1\n"),
                 "row 1: no column for the carry (carry_yd or carry_m), nor for the total; did you mean "
                 "\"Carry\"? the columns are \"club\", \"Carry\", \"side_yd\"; say which it is with --column "
                 "carry_yd="));
    REQUIRE(contains(refusal_of("club,carry_yd\nd,230\n"), "no column for the side"));
    REQUIRE(contains(refusal_of("carry_yd,side_yd\n230,1\n"), "no column for the club"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\nd,230,1\n", {{"spin_rpm", "Spin"}}),
                     "row 1: no column \"Spin\" for spin_rpm; "));
    REQUIRE(contains(refusal_of("club,Cary,side_yd\nd,230,1\n", {{"carry_yd", "Carry"}}),
                     "did you mean \"Cary\"?"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\nd,230,1\n", {{"cary_yd", "Carry"}}),
                     "--column cary_yd: there is no such column; did you mean \"carry_yd\"?"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\nd,230,1\n", {{"club", "a"}, {"club", "b"}}),
                     "named twice"));
}

TEST_CASE("positions that cannot be of one shot", "[log]") {
    const auto refusal = [](const std::string& row) {
        return refusal_of("club,start_lon,start_lat,finish_lon,finish_lat,target_lon,target_lat\ndriver," +
                          row + "\n");
    };
    REQUIRE(refusal("-3,54,-3.001,54.001,-3.001,54.002") == "read");
    REQUIRE(contains(refusal("-3,95,-3.001,54.001,-3.001,54.002"),
                     "row 2: the start at longitude -3, latitude 95"));
    REQUIRE(contains(refusal("54,-123,54.001,-123,54.002,-123"), "are longitude and latitude swapped?"));
    REQUIRE(contains(refusal("-3,54,54.001,-3.001,-3.001,54.002"), "swapped in one of them?"));
    REQUIRE(contains(refusal("-3,54,-3.001,54.001,-3,54"), "row 2: the target is where the shot started"));
    REQUIRE(
        contains(refusal("-3,54,-3.001,55.001,-3.001,54.002"), "further than any shot; is a digit wrong?"));
    REQUIRE(contains(refusal("-3,54,-3.001,53.999,-3,54.002"), "111 m behind the start"));
    REQUIRE(contains(refusal("-3,,-3.001,55.001,-3.001,54.002"), "row 2, column \"start_lat\": empty"));
    REQUIRE(contains(refusal_of("club,start_lon,start_lat,finish_lon,finish_lat\nd,1,1,1,1\n"),
                     "no column for target_lon"));
    REQUIRE(contains(refusal_of("club,carry_yd,start_lon\nd,1,1\n"), "put them into two files"));
}

TEST_CASE("a row of units that contradicts", "[log]") {
    REQUIRE(contains(refusal_of("club,Carry (yd),side_yd\n,m,yd\ndriver,230,1\n"),
                     "column \"Carry (yd)\": the row of units under it says m"));
    REQUIRE(contains(refusal_of("club,Carry,side_yd\n,m,yd\ndriver,230,1\n", {{"carry_yd", "Carry"}}),
                     "column \"Carry\" is taken for carry_yd, but the row of units says m"));
}
