// Dates of sessions: reading them as people write them, and what an old session weighs.
//
// Ages count from the newest session there is and never from today: the same shots give the same answer in a
// year.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

// Reads the dates of one file. 2026-05-02, 2026/05/02, 2.5.2026 (day first), 2 May 2026, May 2, 2026, each
// with a time behind it; 13/05/2026 and 05/13/2026 by what the file's other dates show, since 02/05/2026
// alone can be read in two ways.
class DateReader {
  public:
    // Takes a date of the file into account, or a text that is none.
    void note(std::string_view text);
    // Nothing for what is no date, is ambiguous, or lies outside 1950 to 2199.
    std::optional<std::chrono::year_month_day> date_of(std::string_view text) const;

  private:
    bool day_first_ = false;  // a date was seen that can only be read so
    bool month_first_ = false;
};

// "2026-05-02".
std::string iso_date(const std::chrono::year_month_day& date);
// Of a session whose label begins with an ISO date.
std::optional<std::chrono::year_month_day> date_of(const Session& session);

// What a shot of `date` says of the golfer of `newest`, of 1: halved every half_life_days. Later dates: 1.
double session_weight(const std::chrono::year_month_day& date, const std::chrono::year_month_day& newest,
                      double half_life_days);

// Sets every weight by the dates of the labels; a session without one weighs 1. Returns what there is to say
// of it: nothing, or one sentence.
std::vector<std::string> weigh_sessions(std::vector<Session>& sessions, double half_life_days);

}  // namespace landwidth
