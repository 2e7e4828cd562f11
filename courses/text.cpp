#include "courses/text.hpp"

#include <charconv>
#include <cmath>
#include <cstdint>

namespace landwidth {

namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f' || c == '\v';
}

// Lower case of the two-byte UTF-8 letters whose cases lie a fixed step apart.
std::uint32_t lower_case(std::uint32_t letter) {
    if (letter >= 0xC0 && letter <= 0xDE && letter != 0xD7) return letter + 0x20;  // Latin-1
    if (letter >= 0x100 && letter <= 0x137) return letter | 1U;                    // Latin Extended-A
    if (letter >= 0x14A && letter <= 0x177) return letter | 1U;                    // ditto
    if (letter >= 0x391 && letter <= 0x3A9) return letter + 0x20;                  // Greek
    if (letter >= 0x410 && letter <= 0x42F) return letter + 0x20;                  // Cyrillic
    if (letter >= 0x400 && letter <= 0x40F) return letter + 0x50;                  // ditto
    if ((letter >= 0x139 && letter <= 0x148) ||
        (letter >= 0x179 && letter <= 0x17E))  // odd ones are capitals
        return (letter & 1U) != 0 ? letter + 1 : letter;
    return letter;
}

}  // namespace

std::string trimmed(std::string_view text) {
    while (!text.empty() && is_blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && is_blank(text.back()))
        text.remove_suffix(1);
    return std::string(text);
}

std::string in_one_line(std::string_view text) {
    std::string line = trimmed(text);
    for (char& c : line) {
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) c = ' ';
    }
    return line;
}

std::string folded(std::string_view text) {
    std::string result;
    const std::string whole = trimmed(text);
    for (std::size_t i = 0; i < whole.size(); ++i) {
        const auto byte = static_cast<unsigned char>(whole[i]);
        if (is_blank(whole[i])) {
            if (result.back() != ' ') result += ' ';
        } else if (byte < 0x80) {
            result += byte >= 'A' && byte <= 'Z' ? static_cast<char>(byte + 0x20) : whole[i];
        } else if ((byte & 0xE0U) == 0xC0 && i + 1 < whole.size() &&
                   (static_cast<unsigned char>(whole[i + 1]) & 0xC0U) == 0x80) {
            const auto next = static_cast<unsigned char>(whole[++i]);
            const std::uint32_t letter = lower_case(((byte & 0x1FU) << 6) | (next & 0x3FU));
            result += static_cast<char>(0xC0U | (letter >> 6));
            result += static_cast<char>(0x80U | (letter & 0x3FU));
        } else {
            result += whole[i];
        }
    }
    return result;
}

std::vector<std::string> list_items(std::string_view text, std::string_view separators) {
    std::vector<std::string> items;
    while (!text.empty()) {
        const std::size_t end = text.find_first_of(separators);
        std::string item = trimmed(text.substr(0, end));
        if (!item.empty()) items.push_back(std::move(item));
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return items;
}

std::optional<double> number_in(std::string_view text) {
    const std::string whole = trimmed(text);
    const char* begin = whole.data();
    const char* end = begin + whole.size();
    if (begin != end && *begin == '+') ++begin;
    double value = 0.0;
    const auto [rest, failure] = std::from_chars(begin, end, value);
    if (failure != std::errc() || rest != end || !std::isfinite(value)) return std::nullopt;
    return value;
}

std::optional<int> whole_number_in(std::string_view text) {
    const std::optional<double> value = number_in(text);
    if (!value || *value != std::floor(*value) || std::abs(*value) > 1e6) return std::nullopt;
    return static_cast<int>(*value);
}

std::string enumeration(const std::vector<std::string>& items, std::size_t most) {
    std::string text;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i == most && i + 1 < items.size())
            return text + " and " + std::to_string(items.size() - most) + " more";
        if (i > 0) text += i + 1 == items.size() ? " and " : ", ";
        text += items[i];
    }
    return text;
}

}  // namespace landwidth
