// Rows of cells from text in comma-separated form (RFC 4180, and what spreadsheets make of it). Knows nothing
// of golf.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace landwidth {

struct CsvRow {
    std::size_t row;                 // as a spreadsheet counts: from 1, blank rows too
    std::vector<std::string> cells;  // without blanks around them, unless in quotes
};

// Comma, semicolon or tab: the one that stands most often in the first row outside of quotes; the comma when
// there is none. A first line "sep=;", as spreadsheets leave it, says it outright.
char separator_of(std::string_view text);

// All rows but the blank ones (no cell with anything in it) and a line "sep=;". Lines end with LF, CR LF or
// CR. A quotation mark inside an unquoted cell (44.5") is taken as it stands. Throws InputError naming the
// file and the row: quotation marks that do not pair up.
std::vector<CsvRow> csv_rows(std::string_view text, char separator, const std::string& file);

}  // namespace landwidth
