#include "golfer-profiles/logs/decimal_marks.hpp"

#include <algorithm>
#include <charconv>
#include <string>

namespace landwidth {
namespace {

enum class Form { plain, decimal_comma, decimal_point, comma_or_thousands, point_or_thousands, none };

// "1", "12" or "123", then groups of three behind the mark.
bool is_grouped(std::string_view digits, char mark) {
    const std::size_t first = digits.find(mark);
    if (first == 0 || first > 3 || digits.front() == '0') return false;
    for (std::size_t at = first; at < digits.size(); at += 4) {
        if (digits[at] != mark || at + 4 > digits.size()) return false;
        if (digits.substr(at + 1, 3).find(mark) != std::string_view::npos) return false;
    }
    return true;
}

Form form_of_one_mark(std::string_view digits, char mark) {
    const bool comma = mark == ',';
    if (std::count(digits.begin(), digits.end(), mark) > 1) {
        if (!is_grouped(digits, mark)) return Form::none;
        return comma ? Form::decimal_point : Form::decimal_comma;
    }
    if (digits.back() == mark) return Form::none;
    if (is_grouped(digits, mark)) return comma ? Form::comma_or_thousands : Form::point_or_thousands;
    return comma ? Form::decimal_comma : Form::decimal_point;
}

Form form_of(std::string_view digits) {
    const std::size_t comma = digits.rfind(',');
    const std::size_t point = digits.rfind('.');
    constexpr std::size_t none = std::string_view::npos;
    if (digits.empty()) return Form::none;
    if (comma == none && point == none) return Form::plain;
    if (comma == none || point == none) return form_of_one_mark(digits, comma == none ? '.' : ',');
    const std::size_t last = std::max(comma, point);
    const char thousands = last == comma ? '.' : ',';
    const bool good = is_grouped(digits.substr(0, last), thousands) && last + 1 < digits.size() &&
                      std::count(digits.begin(), digits.end(), digits[last]) == 1;
    if (!good) return Form::none;
    return last == comma ? Form::decimal_comma : Form::decimal_point;
}

std::optional<double> parsed(std::string_view digits, char decimal_mark) {
    std::string plain;
    for (const char c : digits) {
        if (c == decimal_mark)
            plain += '.';
        else if (c != ',' && c != '.')
            plain += c;
    }
    double value = 0.0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (error != std::errc() || end != plain.data() + plain.size()) return std::nullopt;
    return value;
}

}  // namespace

void DecimalMarks::note(std::string_view digits) {
    const Form form = form_of(digits);
    commas_ = commas_ || form == Form::decimal_comma;
    points_ = points_ || form == Form::decimal_point;
}

bool DecimalMarks::is_ambiguous(std::string_view digits) const {
    const Form form = form_of(digits);
    if (form == Form::comma_or_thousands) return commas_ == points_;
    return form == Form::point_or_thousands && commas_ && points_;
}

std::optional<double> DecimalMarks::value(std::string_view digits) const {
    const Form form = form_of(digits);
    if (form == Form::none || is_ambiguous(digits)) return std::nullopt;
    const bool undecided = form == Form::comma_or_thousands || form == Form::point_or_thousands;
    const bool comma_is_decimal = undecided ? commas_ : form == Form::decimal_comma;
    return parsed(digits, comma_is_decimal ? ',' : '.');
}

}  // namespace landwidth
