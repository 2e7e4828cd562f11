#include "golfer-profiles/logs/log_cell.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"

namespace landwidth {
namespace {

// A cell cut into its words: `before` the number, the number, `after` it.
struct NumberParts {
    std::string_view before;
    int sign;  // as written: -1, +1, or 0 for none
    std::string_view digits;
    std::string_view after;
};

constexpr std::string_view digit_characters = "0123456789,.";
constexpr std::string_view minus_sign = "\u2212";

NumberParts parts_of(std::string_view text) {
    text = trimmed(text);
    const std::size_t start = std::min(text.find_first_of(digit_characters), text.size());
    const std::size_t end = std::min(text.find_first_not_of(digit_characters, start), text.size());
    std::string_view before = trimmed(text.substr(0, start));
    int sign = 0;
    if (before.ends_with('-') || before.ends_with('+')) {
        sign = before.back() == '-' ? -1 : 1;
        before.remove_suffix(1);
    } else if (before.ends_with(minus_sign)) {
        sign = -1;
        before.remove_suffix(minus_sign.size());
    }
    return {trimmed(before), sign, text.substr(start, end - start), trimmed(text.substr(end))};
}

double magnitude_of(const LogCell& cell, std::string_view digits, const DecimalMarks& marks) {
    const std::optional<double> value = marks.value(digits);
    if (value) return *value;
    if (marks.is_ambiguous(digits)) {
        const char mark = digits.find(',') != std::string_view::npos ? ',' : '.';
        cell.refuse(fmt::format("the {} may stand for decimals or for thousands; write the number without it",
                                mark == ',' ? "comma" : "point"));
    }
    cell.refuse("a number is expected");
}

std::optional<LogUnit> unit_of(const LogCell& cell, std::string_view word, Measure measure) {
    if (word.empty()) return std::nullopt;
    const std::optional<LogUnit> unit = unit_written(word);
    if (!unit) cell.refuse("a number is expected");
    if (unit->measure != measure) {
        cell.refuse(fmt::format("{} is no unit of {}", in_quotes(word), measure_words(measure)));
    }
    return unit;
}

// +1 for a word that means right, -1 for left, 0 for any other.
int side_word(std::string_view word) {
    const std::string small = in_small_letters(word);
    if (small == "r" || small == "right") return 1;
    if (small == "l" || small == "left") return -1;
    return 0;
}

// Takes a word for a side off the end or the beginning of `words`.
int taken_side(std::string_view& words) {
    if (const int side = side_word(words); side != 0) {
        words = {};
        return side;
    }
    const std::size_t first = words.find(' ');
    if (first == std::string_view::npos) return 0;
    if (const int side = side_word(words.substr(0, first)); side != 0) {
        words = trimmed(words.substr(first));
        return side;
    }
    const std::size_t last = words.rfind(' ');
    const int side = side_word(words.substr(last + 1));
    if (side != 0) words = trimmed(words.substr(0, last));
    return side;
}

}  // namespace

bool LogCell::is_empty() const {
    constexpr std::array<std::string_view, 9> words{"",       "-",   "--", "---", "\u2013",
                                                    "\u2014", "n/a", "na", "null"};
    return std::find(words.begin(), words.end(), in_small_letters(trimmed(text))) != words.end();
}

void LogCell::refuse(std::string_view problem) const {
    throw InputError(fmt::format("{}: row {}, column {}", file, row, in_quotes(heading)),
                     fmt::format("{}: {}", trimmed(text).empty() ? "empty" : in_quotes(text), problem));
}

std::string_view digits_in(std::string_view text) {
    return parts_of(text).digits;
}

LogNumber number_of(const LogCell& cell, Measure measure, const DecimalMarks& marks) {
    const NumberParts parts = parts_of(cell.text);
    if (!parts.before.empty()) cell.refuse("a number is expected");
    const double magnitude = magnitude_of(cell, parts.digits, marks);
    return {parts.sign < 0 ? -magnitude : magnitude, unit_of(cell, parts.after, measure)};
}

double bare_number_of(const LogCell& cell, const DecimalMarks& marks) {
    const LogNumber number = number_of(cell, Measure::angle, marks);
    return number.value;
}

LogSide side_of(const LogCell& cell, const DecimalMarks& marks) {
    NumberParts parts = parts_of(cell.text);
    const int before = side_word(parts.before);
    const int after = taken_side(parts.after);
    if (before == 0 && !parts.before.empty()) cell.refuse("a number, with R or L or a sign, is expected");
    if (before != 0 && after != 0) cell.refuse("two letters for one side; write one");
    const int letter = before + after;
    if (letter != 0 && parts.sign != 0) {
        cell.refuse("a sign and a letter; write \"12R\" or \"12\" for right, \"12L\" or \"-12\" for left");
    }
    const double magnitude = magnitude_of(cell, parts.digits, marks);
    const std::optional<LogUnit> unit = unit_of(cell, parts.after, Measure::length);
    const SideForm form = letter != 0 ? SideForm::letter : parts.sign != 0 ? SideForm::sign : SideForm::plain;
    const bool left = letter < 0 || parts.sign < 0;
    return {{left ? -magnitude : magnitude, unit}, form};
}

}  // namespace landwidth
