// Which column of a log is which, kept in a file: one "ours = theirs" a line.
//
//     # the bay on Thursdays
//     carry_m = Carry
//     side_m  = "Off target"
//
// A line that begins with # is a remark. Quotation marks around a heading are taken off.
#pragma once

#include <filesystem>
#include <vector>

#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

// Throws InputError with file and line: no "=", a side of it empty, a column that is none of ours, one of
// ours or of theirs twice; and for a file that says nothing or cannot be read.
std::vector<ColumnName> read_column_file(const std::filesystem::path& path);

// `first` and those of `second` that map neither the same column of ours (in any unit) nor of theirs.
std::vector<ColumnName> combined(std::vector<ColumnName> first, const std::vector<ColumnName>& second);

}  // namespace landwidth
