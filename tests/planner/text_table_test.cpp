#include "planner/reports/text_table.hpp"

#include <stdexcept>

#include "tests/catch.hpp"

namespace landwidth {
namespace {

constexpr auto left = TextTable::Align::left;
constexpr auto right = TextTable::Align::right;

std::size_t widest_line(const std::string& text) {
    std::size_t widest = 0;
    for (std::size_t start = 0; start < text.size();) {
        const std::size_t end = text.find('\n', start);
        REQUIRE(end != std::string::npos);
        widest = std::max(widest, display_width(text.substr(start, end - start)));
        start = end + 1;
    }
    return widest;
}

TEST_CASE("widths are displayed characters", "[text_table]") {
    CHECK(display_width("") == 0);
    CHECK(display_width("driver") == 6);
    CHECK(display_width("Gr\u00fcn") == 4);
    CHECK(display_width("e\u0301") == 1);       // a combining accent
    CHECK(display_width("\u6f22\u5b57") == 4);  // ideographs are wide
    CHECK(display_width("\u200e") == 0);        // left-to-right mark
    CHECK(display_width("\xff\xfe") == 2);      // no UTF-8: a replacement each
    CHECK(display_width("\xe6\xbc") == 2);      // a character cut off
    CHECK(display_width(std::string(1, '\0')) == 1);
}

TEST_CASE("text that is not to be trusted is made safe", "[text_table]") {
    CHECK(on_one_line("a\nb\tc\r") == "a b c ");
    CHECK(on_one_line("red\x1b[31m") == "red\ufffd[31m");
    CHECK(on_one_line("\xff"
                      "A") == "\ufffdA");
    CHECK(on_one_line("caf\u00e9") == "caf\u00e9");
}

TEST_CASE("too long is shortened, between characters", "[text_table]") {
    CHECK(shortened("driver", 6) == "driver");
    CHECK(shortened("driver", 5) == "driv\u2026");
    CHECK(shortened("driver", 1) == "\u2026");
    CHECK(shortened("five wood", 6) == "five\u2026");
    CHECK(shortened("Gr\u00fcnanlage", 5) == "Gr\u00fcn\u2026");
    CHECK(shortened("\u6f22\u5b57\u6f22", 4) == "\u6f22\u2026");
    CHECK(shortened("\u6f22\u5b57", 2) == "\u2026");
}

TEST_CASE("sentences are wrapped at blanks under their first word", "[text_table]") {
    CHECK(wrapped("", "- ") == "- \n");
    CHECK(wrapped("one two three", "- ", 9) == "- one two\n  three\n");
    CHECK(wrapped("one  two", "", 20) == "one two\n");
    CHECK(wrapped("unbreakable", "- ", 6) == "- unbr\n  eaka\n  ble\n");
    CHECK(wrapped("a unbreakable", "", 6) == "a\nunbrea\nkable\n");
}

TEST_CASE("columns are as wide as what they hold", "[text_table]") {
    TextTable table({{"club", left, true}, {"yd", right, false}});
    table.add_row({"driver", "230"});
    table.add_row({"7-iron", "150"});
    CHECK(table.text() ==
          "club     yd\n"
          "driver  230\n"
          "7-iron  150\n");
    CHECK(table.text(report_width, 2) ==
          "  club     yd\n"
          "  driver  230\n"
          "  7-iron  150\n");
    CHECK_THROWS_AS(table.add_row({"alone"}), std::logic_error);
}

TEST_CASE("a table that is too wide gives way in its elastic columns", "[text_table]") {
    TextTable table({{"tee", left, true}, {"club", left, true}, {"yd", right, false}});
    table.add_row({"white", std::string(60, 'c'), "230"});
    CHECK(widest_line(table.text(40)) == 40);
    CHECK(table.text(40).find("white") != std::string::npos);
    CHECK(widest_line(table.text(22)) == 22);  // gaps of one, then the elastic column
    CHECK(widest_line(table.text(20)) == 20);  // gaps of one
    CHECK(widest_line(table.text(13)) == 13);  // 4 + 4 + 3 and gaps of one: the narrowest
    CHECK(widest_line(table.text(10)) == 13);

    TextTable accents({{"tee", left, true}, {"yd", right, false}});
    std::string name;
    for (int i = 0; i < 80; ++i)
        name += "\u00e9\u0301\u6f22";
    accents.add_row({name, "230"});
    CHECK(widest_line(accents.text(50)) <= 50);
    CHECK(widest_line(accents.text(50)) >= 49);
}

}  // namespace
}  // namespace landwidth
