// Dates of sessions as people write them, and what age makes of a session's weight.
#include "golfer-profiles/sessions/session_dates.hpp"

#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

std::string read(std::string_view text, const std::vector<std::string_view>& others = {}) {
    DateReader reader;
    reader.note(text);
    for (const std::string_view other : others)
        reader.note(other);
    const auto date = reader.date_of(text);
    return date ? iso_date(*date) : "unread";
}

}  // namespace

TEST_CASE("dates that can be read in one way are read") {
    for (const char* text : {"2026-05-02", " 2026-05-02 ", "2026/5/2", "2026-05-02T14:33:10Z",
                             "2026-05-02 14:33", "2.5.2026", "02.05.2026 14:33", "2 May 2026", "02-May-2026",
                             "May 2, 2026", "may 2 2026, 3:12 pm", "2. may 2026"}) {
        CAPTURE(text);
        REQUIRE(read(text) == "2026-05-02");
    }
    REQUIRE(read("29 Feb 2024") == "2024-02-29");
    REQUIRE(read("13/05/2026") == "2026-05-13");
    REQUIRE(read("05/13/2026") == "2026-05-13");
    REQUIRE(read("5-5-2026") == "2026-05-05");
}

TEST_CASE("a day and a month that could be swapped are read by the file's other dates, or not at all") {
    REQUIRE(read("02/05/2026") == "unread");
    REQUIRE(read("02/05/2026", {"13/05/2026"}) == "2026-05-02");
    REQUIRE(read("02/05/2026", {"05/13/2026"}) == "2026-02-05");
    REQUIRE(read("02/05/2026", {"05/13/2026", "13/05/2026"}) == "unread");
    REQUIRE(read("02/05/2026", {"2026-05-13", "13.5.2026", "yesterday"}) == "unread");
}

TEST_CASE("what is no date is not read") {
    for (const char* text :
         {"", "yesterday", "2026", "2026-05", "20260502", "2026-02-30", "2026-13-01", "31.4.2026", "2.5.26",
          "1826-05-02", "2026-05-02x", "bay 3 2026", "0.0.0", "--", "ma 2 2026"}) {
        CAPTURE(text);
        REQUIRE(read(text) == "unread");
    }
}

TEST_CASE("a session weighs half after a half-life, counted from the newest") {
    std::vector<Session> sessions{
        {.label = "2024-05-02, bay 3"}, {.label = "2026-05-02"}, {.label = "club night"}};
    const auto said = weigh_sessions(sessions, 730.0);
    REQUIRE_THAT(sessions[0].weight, WithinAbs(0.5, 1e-12));
    REQUIRE(sessions[1].weight == 1.0);
    REQUIRE(sessions[2].weight == 1.0);
    REQUIRE(said.size() == 1);
    REQUIRE_THAT(said.front(), Contains("those of 2024-05-02 for 50 % each"));

    std::vector<Session> alone{{.label = "1999-05-02"}};
    REQUIRE(weigh_sessions(alone, 730.0).empty());
    REQUIRE(alone.front().weight == 1.0);

    const auto day = [](int year) {
        return std::chrono::year_month_day{std::chrono::year{year}, std::chrono::May, std::chrono::day{2}};
    };
    REQUIRE_THAT(session_weight(day(2023), day(2026), 365.0), WithinAbs(0.125, 0.001));
    REQUIRE(session_weight(day(2027), day(2026), 365.0) == 1.0);
    REQUIRE(session_weight(day(1950), day(2026), 365.0) > 0.0);
    REQUIRE(!date_of({.label = "2026-05-021"}));
    REQUIRE(!date_of({.label = "May 2, 2026"}));
}
