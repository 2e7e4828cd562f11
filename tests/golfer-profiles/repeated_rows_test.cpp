// Rows that stand twice, and honest shots that are alike.
#include "golfer-profiles/logs/repeated_rows.hpp"

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "tests/catch.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

const std::string coarse = "club,carry_yd,side_yd\n";
const std::string fine = "club,carry_yd,side_yd,ball_speed_mph,launch_deg,spin_rpm\n";

// Whole yards of a wild golfer.
std::vector<std::string> coarse_rows(int count, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> normal;
    std::vector<std::string> rows;
    for (int i = 0; i < count; ++i)
        rows.push_back("driver," + std::to_string(static_cast<int>(230 + 12 * normal(random))) + "," +
                       std::to_string(static_cast<int>(20 * normal(random))) + "\n");
    return rows;
}

std::string text_of(const std::string& header, const std::vector<std::string>& rows) {
    std::string text = header;
    for (const std::string& row : rows)
        text += row;
    return text;
}

std::vector<std::size_t> left_out(const std::vector<std::string>& texts, std::size_t log) {
    std::vector<NamedLog> logs;
    for (std::size_t i = 0; i < texts.size(); ++i)
        logs.push_back({std::string(1, static_cast<char>('a' + i)) + ".csv", log_of(texts[i])});
    const RepeatedRows repeated = repeated_rows(logs);
    std::vector<std::size_t> rows;
    for (std::size_t i = 0; i < repeated.repeats[log].size(); ++i)
        if (repeated.repeats[log][i]) rows.push_back(logs[log].log.shots[i].row);
    const bool told = std::any_of(repeated.warnings.begin(), repeated.warnings.end(),
                                  [&](const std::string& w) { return w.starts_with(logs[log].file); });
    REQUIRE(told == !rows.empty());
    return rows;
}

using Rows = std::vector<std::size_t>;

}  // namespace

TEST_CASE("a row pasted again counts once where much is recorded", "[log]") {
    const std::string a = "driver,231,5,150.3,12.1,2710\n", b = "driver,228,-3,149.1,11.8,2650\n";
    REQUIRE(left_out({fine + a + b + a}, 0) == Rows{4});
    REQUIRE(left_out({fine + a + b + "driver,231,5,150.3,12.1,2711\n"}, 0).empty());
    REQUIRE(left_out({fine + a + b + "3w,231,5,150.3,12.1,2710\n"}, 0).empty());
    REQUIRE(left_out({fine + a, fine + b + a}, 1) == Rows{3});
    // Another spelling of the club is the same row.
    REQUIRE(left_out({fine + a + b + "1W,231,5,150.3,12.1,2710\n"}, 0) == Rows{4});
}

TEST_CASE("another day or note is another shot", "[log]") {
    const std::string header = "club,carry_yd,side_yd,ball_speed_mph,launch_deg,spin_rpm,date,note\n";
    const std::string shot = "driver,231,5,150.3,12.1,2710,";
    REQUIRE(left_out({header + shot + "2026-05-01,\n" + shot + "2026-05-02,\n"}, 0).empty());
    REQUIRE(left_out({header + shot + "2026-05-01,\n" + shot + "2026-05-01,fat\n"}, 0).empty());
    REQUIRE(left_out({header + shot + "2026-05-01,\n" + shot + "2026-05-01,\n"}, 0) == Rows{3});
}

TEST_CASE("honest shots in whole yards may be alike", "[log]") {
    REQUIRE(left_out({coarse + "driver,230,5\ndriver,228,1\ndriver,230,5\n"}, 0).empty());
    std::string same = coarse;
    for (int i = 0; i < 12; ++i)
        same += "driver,230,5\n";
    REQUIRE(left_out({same}, 0).empty());
    for (unsigned seed = 1; seed <= 20; ++seed) {
        CAPTURE(seed);
        REQUIRE(left_out({text_of(coarse, coarse_rows(400, seed))}, 0).empty());
        REQUIRE(left_out(
                    {text_of(coarse, coarse_rows(60, seed)), text_of(coarse, coarse_rows(60, seed + 100))}, 1)
                    .empty());
    }
}

TEST_CASE("a block exported again counts once", "[log]") {
    std::vector<std::string> rows = coarse_rows(30, 7);
    const std::vector<std::string> block(rows.begin() + 10, rows.begin() + 16);
    rows.insert(rows.end(), block.begin(), block.end());
    REQUIRE(left_out({text_of(coarse, rows)}, 0) == Rows{32, 33, 34, 35, 36, 37});
}

TEST_CASE("a file that is mostly repetition is no slip", "[log]") {
    const std::vector<std::string> rows = coarse_rows(20, 5);
    const std::string once = text_of("", rows);
    REQUIRE(left_out({coarse + once + once}, 0).size() == 20);
    const RepeatedRows thrice = repeated_rows({{"a.csv", log_of(coarse + once + once + once)}});
    REQUIRE(std::count(thrice.repeats[0].begin(), thrice.repeats[0].end(), true) == 0);
    REQUIRE(thrice.warnings.size() == 1);
    REQUIRE(contains(thrice.warnings.front(), "over half of the rows repeat rows of the same file"));
    // Another file is another matter.
    REQUIRE(left_out({coarse + once + once + once, coarse + once}, 1).size() == 20);
}

TEST_CASE("an export that overlaps an earlier one counts once", "[log]") {
    const std::vector<std::string> rows = coarse_rows(40, 3);
    const std::vector<std::string> first(rows.begin(), rows.begin() + 25),
        second(rows.begin() + 21, rows.end());
    REQUIRE(left_out({text_of(coarse, first), text_of(coarse, second)}, 0).empty());
    REQUIRE(left_out({text_of(coarse, first), text_of(coarse, second)}, 1) == Rows{2, 3, 4, 5});
    // The same file twice, and once more sorted another way.
    const std::vector<std::string> backwards(first.rbegin(), first.rend());
    REQUIRE(left_out({text_of(coarse, first), text_of(coarse, first)}, 1).size() == 25);
    REQUIRE(left_out({text_of(coarse, first), text_of(coarse, backwards)}, 1).size() == 25);
}

TEST_CASE("what is left out is told with its rows", "[log]") {
    const std::string a = "driver,231,5,150.3,12.1,2710\n";
    const RepeatedRows repeated = repeated_rows({{"a.csv", log_of(fine + a + a)}});
    REQUIRE(repeated.warnings.size() == 1);
    REQUIRE(contains(repeated.warnings.front(), "a.csv: 1 of 2 shots left out, row 3: "));
}
