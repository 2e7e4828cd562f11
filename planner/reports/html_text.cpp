#include "planner/reports/html_text.hpp"

#include <cstdint>
#include <initializer_list>

namespace landwidth {
namespace {

constexpr char32_t replacement = U'\uFFFD';

struct Decoded {
    char32_t character;
    std::size_t bytes;
};

// One character of UTF-8 as RFC 3629 has it: no overlong forms, no surrogates, nothing above U+10FFFF.
Decoded decode(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i]));
    };
    const std::uint32_t lead = byte(0);
    if (lead < 0x80U) return {static_cast<char32_t>(lead), 1};
    const std::size_t length = lead >= 0xF0U ? 4 : lead >= 0xE0U ? 3 : 2;
    if (lead < 0xC2U || lead > 0xF4U || text.size() < length) return {replacement, 1};
    std::uint32_t value = lead & (0x7FU >> length);
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U) return {replacement, 1};
        value = value << 6U | (byte(i) & 0x3FU);
    }
    const std::uint32_t least = length == 2 ? 0x80U : length == 3 ? 0x800U : 0x10000U;
    if (value < least || (value >= 0xD800U && value <= 0xDFFFU) || value > 0x10FFFFU) return {replacement, 1};
    return {static_cast<char32_t>(value), length};
}

bool turns_direction(char32_t c) {
    return (c >= U'\u202A' && c <= U'\u202E') || (c >= U'\u2066' && c <= U'\u2069');
}

bool is_control(char32_t c) {
    return c < 0x20 || (c >= 0x7F && c < 0xA0);
}

bool is_no_character(char32_t c) {
    return (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
}

void append_escaped(std::string& out, std::string_view bytes, char32_t c) {
    switch (c) {
        case U'&':
            out += "&amp;";
            return;
        case U'<':
            out += "&lt;";
            return;
        case U'>':
            out += "&gt;";
            return;
        case U'"':
            out += "&quot;";
            return;
        case U'\'':
            out += "&#39;";
            return;
        default:
            break;
    }
    if (turns_direction(c)) return;
    if (is_control(c)) {
        out += ' ';
    } else if (c == replacement || is_no_character(c)) {
        out += "\uFFFD";
    } else {
        out += bytes;
    }
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// Whether a unit of measure starts here and ends with its own last letter.
bool starts_with_unit(std::string_view text) {
    for (const std::string_view unit : {"%", "yd", "m", "mph", "km/h", "hPa", "°C"}) {
        if (!text.starts_with(unit)) continue;
        if (text.size() == unit.size()) return true;
        const char next = text[unit.size()];
        if (next == ' ' || next == ',' || next == '.' || next == ';' || next == ':' || next == ')')
            return true;
    }
    return false;
}

}  // namespace

std::string escaped(std::string_view text) {
    std::string out;
    out.reserve(text.size() + text.size() / 8);
    while (!text.empty()) {
        const Decoded next = decode(text);
        append_escaped(out, text.substr(0, next.bytes), next.character);
        text.remove_prefix(next.bytes);
    }
    return out;
}

std::string isolated(std::string_view name) {
    return "<bdi>" + escaped(name) + "</bdi>";
}

std::string sentence(std::string_view words) {
    const std::string text = escaped(words);
    std::string out;
    out.reserve(text.size() + 16);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool joins = text[i] == ' ' && i > 0 && is_digit(text[i - 1]) &&
                           starts_with_unit(std::string_view(text).substr(i + 1));
        if (joins) {
            out += "\u00A0";
        } else {
            out += text[i];
        }
    }
    return out;
}

}  // namespace landwidth
