#include "courses/assembly/hole_refs.hpp"

#include <algorithm>
#include <array>

#include "courses/text.hpp"

namespace landwidth {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

constexpr std::array<std::string_view, 9> words_before{"hole", "number", "no.", "no", "nr.",
                                                       "nr",   "#",      "h.",  "h"};
constexpr std::array<std::string_view, 6> words_behind{"st", "nd", "rd", "th", ".", " hole"};

}  // namespace

std::string plain_ref(std::string_view text) {
    std::string original = trimmed(text);
    std::string ref = folded(original);
    for (const std::string_view word : words_before) {
        if (!ref.starts_with(word)) continue;
        const std::string rest = trimmed(std::string_view(ref).substr(word.size()));
        if (rest.empty() || !(is_digit(rest.front()) || rest.front() == '#')) continue;
        ref = rest.front() == '#' ? trimmed(rest.substr(1)) : rest;
        break;
    }
    const auto digits_end =
        static_cast<std::size_t>(std::find_if_not(ref.begin(), ref.end(), is_digit) - ref.begin());
    if (digits_end == 0 || digits_end > 4) return original;
    std::string rest = ref.substr(digits_end);
    for (const std::string_view word : words_behind) {
        if (rest == word) rest.clear();
    }
    const bool letter = rest.size() == 1 && rest.front() >= 'a' && rest.front() <= 'z';
    if (!rest.empty() && !letter) return original;
    return std::to_string(std::stoi(ref.substr(0, digits_end))) + rest;
}

std::vector<std::string> refs_in(std::string_view text) {
    std::vector<std::string> refs;
    for (const std::string& item : list_items(text, ";,/"))
        refs.push_back(plain_ref(item));
    if (refs.size() > 1) {
        const bool numbers = std::all_of(
            refs.begin(), refs.end(), [](const std::string& ref) { return number_of_ref(ref).has_value(); });
        if (!numbers) return {plain_ref(text)};
        std::vector<std::string> once;
        for (const std::string& ref : refs) {
            if (std::find(once.begin(), once.end(), ref) == once.end()) once.push_back(ref);
        }
        return once;
    }
    return refs;
}

std::optional<int> number_of_ref(std::string_view ref) {
    const auto digits_end =
        static_cast<std::size_t>(std::find_if_not(ref.begin(), ref.end(), is_digit) - ref.begin());
    if (digits_end == 0 || digits_end > 4) return std::nullopt;
    return std::stoi(std::string(ref.substr(0, digits_end)));
}

bool is_plain_number(std::string_view ref) {
    return !ref.empty() && ref.size() <= 4 && std::all_of(ref.begin(), ref.end(), is_digit);
}

}  // namespace landwidth
