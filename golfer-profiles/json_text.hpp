// JSON as people type it: errors with line and column in plain words, keys that stand twice, and texts made
// safe to quote in a message of one line. Knows nothing of golf.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace landwidth {

// Without the spaces, tabs and line ends around it.
std::string_view trimmed(std::string_view text);

bool is_utf8(std::string_view text);

// In double quotes, control characters escaped, cut to about 60 bytes: fit for a message of one line.
std::string in_quotes(std::string_view text);

// Parses UTF-8 JSON, with or without a byte-order mark. `repeated` gets the path of every key that stands
// twice in one object ("clubs[2].pattern.carry_yd"); the last of them is the one in the result. Throws
// InputError(place, ...) for text that is not JSON, says at which line and column (both from 1, columns in
// bytes) and what is unusual there: a comment, a comma too many, single quotes, NaN, a number too large, the
// end of the text.
nlohmann::json parse_json(std::string_view text, const std::string& place,
                          std::vector<std::string>& repeated);

}  // namespace landwidth
