// Small work on the texts of a map: names and tag values as mappers type them.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace landwidth {

std::string trimmed(std::string_view text);
// Trimmed, line breaks, tabs and other control characters turned into blanks: what a file or a library says,
// for a message of one line.
std::string in_one_line(std::string_view text);

// For comparing names without regard to case: ASCII, Latin-1, Greek and Cyrillic letters of UTF-8 are folded
// and runs of blanks become one. Bytes that are no UTF-8 pass unchanged.
std::string folded(std::string_view text);

// The parts of a list as OpenStreetMap writes it ("white;blue"), trimmed, empty parts left out.
std::vector<std::string> list_items(std::string_view text, std::string_view separators = ";");

// The whole text as a finite number; absent when anything else stands in it.
std::optional<double> number_in(std::string_view text);
std::optional<int> whole_number_in(std::string_view text);

// "a", "a and b", "a, b and c"; from `most` on: "a, b, c and 7 more".
std::string enumeration(const std::vector<std::string>& items, std::size_t most = 12);

}  // namespace landwidth
