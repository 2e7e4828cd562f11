// The known word a mistyped one was probably meant to be.
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace landwidth {

// The candidate with the fewest letters to insert, delete, replace or swap with a neighbour; case, '-', '_'
// and spaces count as equal. The first of equals. Nothing when even the nearest is too far to be meant: more
// than a third of the longer word, and more than one letter.
std::optional<std::string_view> nearest_word(std::string_view word,
                                             std::span<const std::string_view> candidates);

}  // namespace landwidth
