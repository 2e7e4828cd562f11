// Numbers of holes as mappers type them.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace landwidth {

// "1", "01", "Hole 1", "No. 1", "#1", "H1", "1st" -> "1"; "7A" -> "7a"; anything else as it is, trimmed.
std::string plain_ref(std::string_view text);
// The refs of a list ("1;10": a hole that is played twice in a round, also with comma or slash); one item
// where the parts are not all numbers; none of an empty text.
std::vector<std::string> refs_in(std::string_view text);
// "7" -> 7, "7b" -> 7; absent for anything that does not start with a number.
std::optional<int> number_of_ref(std::string_view ref);
// Whether the ref is a number and nothing else.
bool is_plain_number(std::string_view ref);

// The number a hole's name begins with: "Hole 3 - The Pond", "3. The Pond", "No 3", "3rd hole", "#3: Pond".
// Absent for "3 Oaks", "The 3 Oaks" and "19th Hole Bar"; 1 to 99.
std::optional<std::string> number_in_name(std::string_view name);

}  // namespace landwidth
