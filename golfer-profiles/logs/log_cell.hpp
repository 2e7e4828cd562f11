// One cell of a shot log and how it is read: numbers with units, sides with letters.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "golfer-profiles/logs/decimal_marks.hpp"
#include "golfer-profiles/logs/log_units.hpp"

namespace landwidth {

struct LogCell {
    std::string_view text;
    std::size_t row;           // as a spreadsheet counts
    std::string_view heading;  // of its column, as in the file
    std::string_view file;

    // Nothing in it, or one of the words for it: "-", "--", "n/a", "na", "null".
    bool is_empty() const;
    // Throws InputError: file, row, heading and the cell itself, then `problem`, the end of the sentence.
    [[noreturn]] void refuse(std::string_view problem) const;
};

// The digits of a number in a cell with their marks ("1,234.5"), for DecimalMarks; empty when there are none.
std::string_view digits_in(std::string_view text);

struct LogNumber {
    double value;                    // in the unit written, or in the column's
    std::optional<LogUnit> written;  // the unit in the cell
    double si(const LogUnit& of_column) const { return (written ? *written : of_column).in_si(value); }
};

// "231.5", "-3", "212 m", "98 mph". Throws InputError: empty, text, an ambiguous comma, a unit that is none
// or of another kind of quantity.
LogNumber number_of(const LogCell& cell, Measure measure, const DecimalMarks& marks);
// Without a unit: degrees on earth.
double bare_number_of(const LogCell& cell, const DecimalMarks& marks);

// How a side is told from the other.
enum class SideForm { letter, sign, plain };  // plain: a positive number or 0 without either

struct LogSide {
    LogNumber number;  // positive to the right
    SideForm form;
};

// Also "12R", "R 12", "12 yd left", "l 3.5". Throws InputError as number_of does, and for a sign with a
// letter and for two letters.
LogSide side_of(const LogCell& cell, const DecimalMarks& marks);

}  // namespace landwidth
