#include <algorithm>
#include <sstream>

#include "planner/reports/break_even_words.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/words.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

namespace landwidth {
namespace {

using fixture::hostile_names;
using fixture::PlanFixture;
using fixture::two_holes;

std::vector<std::string> lines(const std::string& text) {
    std::istringstream stream(text);
    std::vector<std::string> all;
    for (std::string line; std::getline(stream, line);)
        all.push_back(line);
    return all;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

// A text with its line breaks and indents undone.
std::string unwrapped(const std::string& text) {
    std::istringstream stream(text);
    std::string joined;
    for (std::string word; stream >> word;)
        joined += word + " ";
    return joined;
}

// Characters of UTF-8, each counted one wide: right for texts without wide or combining ones.
std::size_t characters(const std::string& line) {
    std::size_t count = 0;
    for (const char c : line)
        count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1U : 0U;
    return count;
}

std::string row_of(const std::string& text, const std::string& start) {
    for (const std::string& line : lines(text)) {
        if (line.starts_with(start + " ")) return line;
    }
    return "";
}

TEST_CASE("a row says club, aim, outcome and cost", "[plan_text]") {
    const std::string text = plan_text(two_holes().view());
    const std::string first = row_of(text, "1");
    for (const char* part :
         {"4", "406", "3-wood", "7 yd left", "58 %", "13 %", "178", "4.61", "+0.08 driver", "83 %"}) {
        CAPTURE(first, part);
        CHECK(has(first, part));
    }
    const std::string second = row_of(text, "2");
    for (const char* part :
         {"3?", "160", "7-iron", "centre", "41 %", "12 %", "10", "3.42", "+0.01 6-iron", "toss-up"}) {
        CAPTURE(second, part);
        CHECK(has(second, part));
    }
    CHECK(has(lines(text).front(), "tee white"));
    CHECK(has(text, "Par with a ?"));
    CHECK(has(text, "Toss-up:"));
}

TEST_CASE("the personal field adds the next shots, the scores and the round's spread", "[plan_text]") {
    const std::string text = plan_text(fixture::own_field().view());
    CHECK(has(text, "Strokes: valued for this golfer's own clubs"));
    CHECK(has(unwrapped(text),
              "then 7-iron 132 yd, laying up to 52 yd (going for it with the 3-wood costs 0.12 "
              "more); then sand wedge, 60 % swing, from 52 yd to the green"));
    CHECK(has(unwrapped(text), "one takes 6 strokes or fewer, five take 8 or fewer and nine 10 or fewer"));
    // Hole 1: 1 + 11, 38, 32, 13 + 4 + 1 %. Hole 2: 12, 44, 35, 8 + 1 %.
    const auto all = lines(text);
    const auto head = std::find_if(all.begin(), all.end(),
                                   [](const std::string& line) { return line.starts_with("scores "); });
    REQUIRE(all.end() - head > 3);
    CHECK(unwrapped(*head) == "scores birdie or better par bogey double or worse ");
    CHECK(unwrapped(head[1]) == "1 12 % 38 % 32 % 18 % ");
    CHECK(unwrapped(head[2]) == "2 12 % 44 % 35 % 9 % ");
}

TEST_CASE("the published table has neither scores nor next shots", "[plan_text]") {
    const std::string text = plan_text(two_holes().view());
    CHECK(has(text, "Strokes: the published tour table, adjusted to the handicap."));
    CHECK_FALSE(has(text, "birdie"));
    CHECK_FALSE(has(text, "then "));
    CHECK_FALSE(has(text, "points"));
}

TEST_CASE("another aim has a column of its own beside the strokes", "[plan_text]") {
    const std::string points = plan_text(fixture::own_field_for_points().view());
    CHECK(has(row_of(points, "hole"), "strokes  points  next best"));
    CHECK(has(row_of(points, "1"), "4.61    1.96  -0.11 driver"));
    CHECK(has(points, "Points: Stableford"));
    CHECK(has(row_of(points, "this plan"), "3.58"));
    CHECK(has(row_of(points, "driver on every par 4 and longer"), "-0.11"));
    CHECK(has(points, "Strokes of the round: 8.03."));
    const std::string par = plan_text(fixture::own_field_for_par().view());
    CHECK(has(row_of(par, "1"), "4.61  50.0 %  -2.1 % driver"));
    CHECK(has(par, "Chance: of par or better"));
    CHECK(has(row_of(par, "this plan"), "1.06"));
}

TEST_CASE("what would flip a close verdict stands on the tee", "[plan_text]") {
    PlanFixture fixture = two_holes();
    const std::string text = unwrapped(plan_text(fixture.view()));
    for (const std::size_t hole : {std::size_t{0}, std::size_t{1}})
        CHECK(has(text, break_even_words(fixture.view(), hole)));
    CHECK(has(text, "Flips: what makes the next best club as good"));
    for (HolePlan& hole : fixture.plan.holes)
        hole.break_evens.reset();
    const std::string without = unwrapped(plan_text(fixture.view()));
    CHECK_FALSE(has(without, "flips"));
    CHECK_FALSE(has(without, "Flips"));
}

TEST_CASE("metres are shown as metres", "[plan_text]") {
    const std::string text = plan_text(two_holes().view(DisplayUnits::metres));
    const std::string first = row_of(text, "1");
    CHECK(has(first, "372"));
    CHECK(has(first, "6 m left"));
    CHECK(has(first, "163"));
    CHECK_FALSE(has(text, " yd"));
}

TEST_CASE("the round is compared with and without the driver", "[plan_text]") {
    const std::string text = plan_text(two_holes().view());
    CHECK(has(text, "round, par 7"));
    CHECK(has(row_of(text, "this plan"), "8.03"));
    CHECK(has(row_of(text, "driver on every par 4 and longer"), "8.11       +0.08"));
    CHECK(has(row_of(text, "never the driver"), "8.03       +0.00"));

    PlanFixture none = two_holes();
    none.plan.always_driver.reset();
    CHECK(row_of(plan_text(none.view()), "driver on every par").empty());
}

TEST_CASE("aims, cautions, warnings and attribution stand below", "[plan_text]") {
    const PlanFixture fixture = two_holes();
    const std::string text = unwrapped(plan_text(fixture.view()));
    CHECK(has(text, aim_words(fixture.plan.holes[0].choices[0], DisplayUnits::yards)));
    const auto cautions = caution_words(fixture.view(), 0);
    REQUIRE_FALSE(cautions.empty());
    for (const std::string& caution : cautions)
        CHECK(has(text, caution));
    for (const std::string& caution : standing_cautions())
        CHECK(has(text, caution));
    CHECK(has(text, fixture.plan.warnings[0]));
    CHECK(has(text, "holm.osm, invented data of the Landwidth tests"));
}

TEST_CASE("a bag of one club has nothing to compare", "[plan_text]") {
    PlanFixture fixture = two_holes();
    fixture.plan.holes[0].choices.resize(1);
    fixture.plan.holes[0].verdict.margin.reset();
    fixture.plan.holes[0].verdict.over.reset();
    const std::string row = row_of(plan_text(fixture.view()), "1");
    CHECK(has(row, "none"));
    CHECK(row.ends_with("-"));
}

TEST_CASE("no line is wider than 100 columns", "[plan_text]") {
    PlanFixture long_names = two_holes();
    for (Club& club : long_names.golfer.clubs)
        club.name += " Gr\u00fcnlandst\u00fcrmer der gro\u00dfen Weiten";
    for (Hole& hole : long_names.course.holes) {
        hole.tee = "M\u00e4nner, von ganz hinten am Waldrand";
        hole.ref = "Alte Neun, " + hole.ref;
    }
    long_names.course.name = std::string(400, 'x');
    long_names.plan.warnings.push_back(std::string(250, 'w'));
    for (const DisplayUnits units : {DisplayUnits::yards, DisplayUnits::metres}) {
        for (const std::string& line : lines(plan_text(long_names.view(units)))) {
            CAPTURE(line);
            CHECK(characters(line) <= 100);
        }
        for (const std::string& line : lines(plan_text(two_holes().view(units)))) {
            CAPTURE(line);
            CHECK(characters(line) <= 100);
            CHECK_FALSE(line.ends_with(' '));
        }
        for (const auto& aimed :
             {fixture::own_field(), fixture::own_field_for_points(), fixture::own_field_for_par()}) {
            for (const std::string& line : lines(plan_text(aimed.view(units)))) {
                CAPTURE(line);
                CHECK(characters(line) <= 100);
            }
        }
        for (const std::string& line : lines(plan_text(hostile_names().view(units)))) {
            CAPTURE(line);
            CHECK(display_width(line) <= 100);
        }
    }
}

TEST_CASE("names cannot reach the terminal's controls", "[plan_text]") {
    PlanFixture fixture = hostile_names();
    fixture.course.holes[0].tee = "red\x1b[2J";
    fixture.plan.warnings.push_back("one\nline\x07");
    for (const char c : plan_text(fixture.view())) {
        const auto byte = static_cast<unsigned char>(c);
        CHECK((byte >= 0x20 || c == '\n'));
        CHECK(byte != 0x7f);
    }
}

}  // namespace
}  // namespace landwidth
