// Text in columns for a terminal. Widths are displayed characters: a combining accent takes none, an East
// Asian ideograph two.
//
// Text of maps and profiles is not to be trusted with a terminal: bytes that are no UTF-8 and control
// characters (a newline, an escape sequence in a course's name) are shown as replacement characters, white
// space as a blank.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace landwidth {

// No line of a report is wider.
inline constexpr std::size_t report_width = 100;

std::size_t display_width(std::string_view utf8);

// The text made safe to show, on one line.
std::string on_one_line(std::string_view utf8);

// The text, on one line and at most `width` wide (>= 1), the end replaced by an ellipsis where it is too
// long.
std::string shortened(std::string_view utf8, std::size_t width);

// The text broken at blanks into lines at most `width` wide, words that are too long broken inside. The first
// line starts with `first`, the others with as many blanks. Ends with a newline; empty text gives `first`
// alone.
std::string wrapped(std::string_view utf8, std::string_view first = "", std::size_t width = report_width);

// Rows under headings, columns two blanks apart and as wide as what they hold. Where that is more than
// `width`, the gaps become one blank; then the elastic columns are shortened, the widest first, to four.
//
// Example: columns {"club", left, elastic}, {"yd", right}; rows {"driver", "230"}, {"7-iron", "150"}:
//   club     yd
//   driver  230
//   7-iron  150
class TextTable {
  public:
    enum class Align { left, right };
    struct Column {
        std::string heading;
        Align align = Align::right;
        bool elastic = false;
    };

    explicit TextTable(std::vector<Column> columns);
    // As many cells as columns, else std::logic_error.
    void add_row(std::vector<std::string> cells);
    // No blanks at the ends of lines; every line starts with `indent` blanks.
    std::string text(std::size_t width = report_width, std::size_t indent = 0) const;

  private:
    std::vector<std::size_t> widths_within(std::size_t width, std::size_t& gap) const;

    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;
};

}  // namespace landwidth
