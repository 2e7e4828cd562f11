// Rows of a log that are no shots: units under the headings, averages and deviations that a screen or a
// spreadsheet added, the headings again.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "golfer-profiles/logs/csv_rows.hpp"
#include "golfer-profiles/logs/log_columns.hpp"

namespace landwidth {

// Takes the row under the headings out of `rows` when it says units: no digit in it and at least half of what
// stands there is a unit, in brackets or not. Returns its cells, without brackets; empty when there is none.
std::vector<std::string> take_units(std::vector<CsvRow>& rows);

// Takes out rows like the header, and rows of averages: the club's cell has a word for one in it ("Average",
// "7i avg", "Std dev"), or another cell that is no quantity is such a word ("average", "session mean"; in a
// note only for averages and deviations, and not where every other row has such a note). Returns one sentence
// each kind with the rows; nothing when there are none.
std::vector<std::string> take_other_rows(std::vector<CsvRow>& rows, const LogColumns& columns);

// "row 7", "rows 7 and 12", "rows 7 to 9, 12 and 20", at most `most` parts of it. `rows` rises.
std::string row_words(const std::vector<std::size_t>& rows, std::size_t most = 10);

}  // namespace landwidth
