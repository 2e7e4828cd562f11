#include "golfer-profiles/sessions/session_dates.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/log_units.hpp"

namespace landwidth {
namespace {

using std::chrono::year_month_day;

constexpr int first_year = 1950, last_year = 2199;

// "02/05/2026 14:33" as its words and numbers and the first mark between them.
struct DateParts {
    std::vector<std::string> parts;  // at most three: day, month and year in some order
    char mark = ' ';
};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool is_letter(char c) {
    return c >= 'a' && c <= 'z';
}

// Nothing when there are fewer than three parts.
std::optional<DateParts> parts_of(std::string_view text) {
    const std::string small = in_small_letters(trimmed(text));
    DateParts date;
    std::size_t i = 0;
    while (i < small.size() && date.parts.size() < 3) {
        const bool digit = is_digit(small[i]);
        if (!digit && !is_letter(small[i])) return std::nullopt;
        const std::size_t start = i;
        while (i < small.size() && (digit ? is_digit(small[i]) : is_letter(small[i])))
            ++i;
        date.parts.push_back(small.substr(start, i - start));
        if (date.parts.size() == 3) break;
        if (date.parts.size() == 1 && i < small.size()) date.mark = small[i];
        while (i < small.size() &&
               (small[i] == ' ' || small[i] == ',' || small[i] == '.' || small[i] == '-' || small[i] == '/'))
            ++i;
    }
    // A time may stand behind a date, and nothing else: "2026-05-02T14:33".
    const bool time_behind = i == small.size() || small[i] == ' ' || small[i] == 't' || small[i] == ',';
    return date.parts.size() == 3 && time_behind ? std::optional(date) : std::nullopt;
}

std::optional<int> number_in(const std::string& text) {
    int value = 0;
    const auto [stopped, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && stopped == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

// 1 to 12 for "may", "sept", "december".
std::optional<int> month_named(const std::string& word) {
    constexpr std::array<std::string_view, 12> months{"january",   "february", "march",    "april",
                                                      "may",       "june",     "july",     "august",
                                                      "september", "october",  "november", "december"};
    constexpr std::size_t shortest = 3;
    if (word.size() < shortest) return std::nullopt;
    for (std::size_t m = 0; m < months.size(); ++m)
        if (months[m].starts_with(word)) return static_cast<int>(m) + 1;
    return std::nullopt;
}

std::optional<year_month_day> checked(std::optional<int> year, std::optional<int> month,
                                      std::optional<int> day) {
    if (!year || !month || !day || *year < first_year || *year > last_year || *month < 1 || *day < 1)
        return std::nullopt;
    const year_month_day date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                              std::chrono::day{static_cast<unsigned>(*day)}};
    return date.ok() ? std::optional(date) : std::nullopt;
}

// A date of three numbers whose year stands last and whose mark does not say which of the others is the day.
bool has_open_order(const DateParts& date) {
    constexpr std::size_t digits_of_year = 4;
    return date.mark != '.' && date.parts[2].size() == digits_of_year && number_in(date.parts[0]) &&
           number_in(date.parts[1]);
}

}  // namespace

void DateReader::note(std::string_view text) {
    const auto date = parts_of(text);
    if (!date || !has_open_order(*date)) return;
    const auto year = number_in(date->parts[2]);
    const auto first = number_in(date->parts[0]);
    const auto second = number_in(date->parts[1]);
    const bool as_day_first = checked(year, second, first).has_value();
    const bool as_month_first = checked(year, first, second).has_value();
    if (as_day_first && !as_month_first) day_first_ = true;
    if (as_month_first && !as_day_first) month_first_ = true;
}

std::optional<year_month_day> DateReader::date_of(std::string_view text) const {
    const auto date = parts_of(text);
    if (!date) return std::nullopt;
    const std::string& a = date->parts[0];
    const std::string& b = date->parts[1];
    const std::string& c = date->parts[2];
    const auto first = number_in(a);
    const auto second = number_in(b);
    constexpr std::size_t digits_of_year = 4;
    if (a.size() == digits_of_year && first) return checked(first, second, number_in(c));
    if (c.size() != digits_of_year) return std::nullopt;
    const auto year = number_in(c);
    if (const auto month = month_named(b); month && first) return checked(year, month, first);
    if (const auto month = month_named(a); month && second) return checked(year, month, second);
    const auto day_first = checked(year, second, first);
    const auto month_first = checked(year, first, second);
    if (!has_open_order(*date) || !month_first || day_first == month_first) return day_first;
    if (!day_first) return month_first;
    if (day_first_ == month_first_) return std::nullopt;
    return day_first_ ? day_first : month_first;
}

std::string iso_date(const year_month_day& date) {
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

std::optional<year_month_day> date_of(const Session& session) {
    constexpr std::size_t length = std::string_view("2026-05-02").size();
    const std::string_view label = session.label;
    if (label.size() < length || (label.size() > length && is_digit(label[length]))) return std::nullopt;
    const auto date = DateReader().date_of(label.substr(0, length));
    return date && iso_date(*date) == label.substr(0, length) ? date : std::nullopt;
}

double session_weight(const year_month_day& date, const year_month_day& newest, double half_life_days) {
    const auto age = std::chrono::sys_days(newest) - std::chrono::sys_days(date);
    return std::exp2(-std::max(0.0, static_cast<double>(age.count())) / half_life_days);
}

std::vector<std::string> weigh_sessions(std::vector<Session>& sessions, double half_life_days) {
    std::optional<year_month_day> newest;
    for (const Session& session : sessions)
        if (const auto date = date_of(session); date && (!newest || *date > *newest)) newest = date;
    constexpr double worth_telling = 0.9;
    const Session* lightest = nullptr;
    std::size_t light = 0;
    for (Session& session : sessions) {
        const auto date = date_of(session);
        session.weight = date ? session_weight(*date, *newest, half_life_days) : 1.0;
        if (session.weight >= worth_telling) continue;
        ++light;
        if (lightest == nullptr || session.weight < lightest->weight) lightest = &session;
    }
    if (lightest == nullptr) return {};
    return {fmt::format(
        "shots count less the older they are: {} session{} before the newest of {}, those of {} for "
        "{:.0f} % each (assumption session_half_life_days={:g})",
        light, light == 1 ? "" : "s", iso_date(*newest), iso_date(*date_of(*lightest)),
        100.0 * lightest->weight, half_life_days)};
}

}  // namespace landwidth
