// Text from maps and profiles made safe for an XML-like page.
#pragma once

#include <string>
#include <string_view>

namespace landwidth {

// Fit for element content and for a quoted attribute. Bytes that are no UTF-8 become U+FFFD, control
// characters a space, and the invisible characters that turn the direction of writing are dropped: they would
// reach beyond the name they stand in.
std::string escaped(std::string_view text);

// The same inside <bdi>, so that a name written from right to left does not reorder the words around it.
std::string isolated(std::string_view name);

// A sentence of words.hpp for the page: escaped, and number and unit ("252 yd", "58 %") kept on one line.
std::string sentence(std::string_view words);

}  // namespace landwidth
