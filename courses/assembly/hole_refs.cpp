#include "courses/assembly/hole_refs.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "courses/text.hpp"

namespace landwidth {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

constexpr std::array<std::string_view, 9> words_before{"hole", "number", "no.", "no", "nr.",
                                                       "nr",   "#",      "h.",  "h"};
constexpr std::array<std::string_view, 6> words_behind{"st", "nd", "rd", "th", ".", " hole"};

// "hole 7", "no. 7", "hole #7": from the number on.
std::string without_word_before(const std::string& ref) {
    for (const std::string_view word : words_before) {
        if (!ref.starts_with(word)) continue;
        const std::string rest = trimmed(std::string_view(ref).substr(word.size()));
        if (rest.empty() || !(is_digit(rest.front()) || rest.front() == '#')) continue;
        return rest.front() == '#' ? trimmed(rest.substr(1)) : rest;
    }
    return ref;
}

}  // namespace

std::string plain_ref(std::string_view text) {
    std::string original = trimmed(text);
    const std::string ref = without_word_before(folded(original));
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

std::optional<std::string> number_in_name(std::string_view name) {
    constexpr std::size_t most_digits = 2;
    std::string rest = folded(name);
    const std::string unprefixed = without_word_before(rest);
    const bool says_hole = unprefixed.size() < rest.size();
    rest = unprefixed;
    const auto digits =
        static_cast<std::size_t>(std::find_if_not(rest.begin(), rest.end(), is_digit) - rest.begin());
    if (digits == 0 || digits > most_digits) return std::nullopt;
    const int number = std::stoi(rest.substr(0, digits));
    rest = rest.substr(digits);
    for (const std::string_view word : words_behind) {
        if (word == "." || !rest.starts_with(word)) continue;
        rest.erase(0, word.size());
        if (rest.starts_with(" hole")) rest.erase(0, 5);
        break;
    }
    rest = trimmed(rest);
    // A word that follows without a sign between belongs to the number ("3 Oaks"), unless a hole is named.
    const bool sign = rest.empty() || std::ispunct(static_cast<unsigned char>(rest.front())) != 0 ||
                      rest.starts_with("\xe2\x80");
    if (number == 0 || !(sign || says_hole)) return std::nullopt;
    return std::to_string(number);
}

bool is_plain_number(std::string_view ref) {
    return !ref.empty() && ref.size() <= 4 && std::all_of(ref.begin(), ref.end(), is_digit);
}

}  // namespace landwidth
