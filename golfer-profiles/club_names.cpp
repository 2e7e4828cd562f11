#include "golfer-profiles/club_names.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <initializer_list>
#include <utility>
#include <vector>

#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/log_units.hpp"

namespace landwidth {
namespace {

// Lofts that a number alone tells: no club is numbered so high.
constexpr int lowest_wedge_loft = 44, highest_wedge_loft = 64;

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
bool is_letter(char c) {
    return c >= 'a' && c <= 'z';
}

// Words and numbers in small letters: "7i" is 7 and i, "3-Wood" 3 and wood.
std::vector<std::string> parts_of(std::string_view name) {
    std::vector<std::string> parts;
    char before = ' ';
    for (char c : name) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        if (is_digit(c) || is_letter(c)) {
            const bool goes_on = (is_digit(c) && is_digit(before)) || (is_letter(c) && is_letter(before));
            if (!goes_on) parts.emplace_back();
            parts.back() += c;
        }
        before = c;
    }
    return parts;
}

using Parts = std::vector<std::string>;

bool has(const Parts& parts, std::initializer_list<std::string_view> words) {
    return std::any_of(parts.begin(), parts.end(), [&](const std::string& part) {
        return std::find(words.begin(), words.end(), part) != words.end();
    });
}

// The first number; 0 when there is none or none of a club.
int number_in(const Parts& parts) {
    for (const std::string& part : parts)
        if (is_digit(part.front())) return part.size() <= 2 ? std::stoi(part) : 0;
    return 0;
}

bool is_wedge_loft(int number) {
    return number >= lowest_wedge_loft && number <= highest_wedge_loft;
}

std::optional<std::string> usual_wedge_name(const Parts& parts) {
    if (has(parts, {"pw", "pitching"})) return "pitching wedge";
    if (has(parts, {"gw", "aw", "uw", "gap", "approach"})) return "gap wedge";
    if (has(parts, {"sw", "sand"})) return "sand wedge";
    if (has(parts, {"lw", "lob"})) return "lob wedge";
    const int loft = number_in(parts);
    if (!is_wedge_loft(loft)) return std::nullopt;
    return loft < 49 ? "pitching wedge" : loft < 54 ? "gap wedge" : loft < 58 ? "sand wedge" : "lob wedge";
}

constexpr std::string_view degree_sign = "\u00b0";

std::string without(std::string text, std::string_view part) {
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at))
        text.erase(at, part.size());
    return text;
}

// Nothing but letters, digits and what golfers set between them.
bool is_plain(std::string_view name) {
    return std::all_of(name.begin(), name.end(), [](char c) {
        constexpr std::string_view between = " -_./\t";
        return is_digit(c) || is_letter(c) || (c >= 'A' && c <= 'Z') ||
               between.find(c) != std::string_view::npos;
    });
}

bool take(Parts& parts, std::initializer_list<std::string_view> words) {
    const auto found = std::find_first_of(parts.begin(), parts.end(), words.begin(), words.end());
    if (found == parts.end()) return false;
    parts.erase(found);
    return true;
}

void write_out(Parts& parts,
               std::initializer_list<std::pair<std::string_view, std::initializer_list<std::string_view>>>
                   abbreviations) {
    Parts full;
    for (const std::string& part : parts) {
        const auto* known = std::find_if(abbreviations.begin(), abbreviations.end(),
                                         [&](const auto& pair) { return pair.first == part; });
        if (known == abbreviations.end())
            full.push_back(part);
        else
            full.insert(full.end(), known->second.begin(), known->second.end());
    }
    parts = std::move(full);
}

// What a name says besides the kind of the club.
Parts rest_of(ClubKind kind, Parts parts) {
    switch (kind) {
        case ClubKind::driver:
            if (!take(parts, {"driver", "dr", "d"}) && take(parts, {"wood", "w"})) take(parts, {"1"});
            break;
        case ClubKind::mini_driver:
            take(parts, {"mini"});
            take(parts, {"driver", "dr", "d"});
            break;
        case ClubKind::fairway_wood:
            take(parts, {"fairway", "fw"});
            take(parts, {"wood", "w"});
            break;
        case ClubKind::hybrid:
            take(parts, {"hybrid", "hyb", "hy", "h"});
            break;
        case ClubKind::driving_iron:
            write_out(parts, {{"di", {"driving"}}});
            take(parts, {"iron", "i"});
            break;
        case ClubKind::iron:
            take(parts, {"iron", "i"});
            break;
        case ClubKind::wedge:
            write_out(parts, {{"pw", {"pitching"}},
                              {"gw", {"gap"}},
                              {"aw", {"approach"}},
                              {"uw", {"utility"}},
                              {"sw", {"sand"}},
                              {"lw", {"lob"}}});
            take(parts, {"wedge", "w"});
            take(parts, {"deg", "degrees"});
            break;
        case ClubKind::putter:
            take(parts, {"putter", "pt"});
            break;
    }
    return parts;
}

// "44.0" as "44", "44,5" as "44.5"; other texts as they are.
std::string plain_number(std::string text) {
    std::replace(text.begin(), text.end(), ',', '.');
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() ? fmt::format("{:g}", value) : text;
}

// A build cut into numbers, words and single signs, inches written in one way.
Parts build_parts(std::string_view build) {
    Parts parts;
    char before = ' ';
    const std::string text = in_small_letters(build);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool point =
            (c == '.' || c == ',') && is_digit(before) && i + 1 < text.size() && is_digit(text[i + 1]);
        const char kind = is_digit(c) || point ? '0' : c == ' ' || c == '\t' || c == ',' ? ' ' : 'a';
        const char kind_before = is_digit(before) ? '0' : before == ' ' ? ' ' : 'a';
        if (kind != ' ') {
            if (kind != kind_before || c == '"') parts.emplace_back();
            parts.back() += c;
        }
        before = kind == ' ' ? ' ' : point ? '0' : c == '"' ? ' ' : c;
    }
    for (std::string& part : parts) {
        if (part == "\"" || part == "inch" || part == "inches" || part == "''" || part == "\u2033")
            part = "in";
        if (is_digit(part.front())) part = plain_number(part);
    }
    return parts;
}

}  // namespace

std::optional<ClubKind> kind_by_name(std::string_view name) {
    const Parts parts = parts_of(name);
    const int number = number_in(parts);
    if (has(parts, {"putter", "pt"})) return ClubKind::putter;
    if (has(parts, {"mini"})) return ClubKind::mini_driver;
    if (has(parts, {"driver", "dr"}) || parts == Parts{"d"}) return ClubKind::driver;
    const bool iron = has(parts, {"iron", "i"});
    if ((iron && has(parts, {"driving", "utility"})) || parts == Parts{"di"}) return ClubKind::driving_iron;
    if (has(parts, {"hybrid", "hyb", "hy", "h"})) return ClubKind::hybrid;
    if (has(parts, {"wedge", "pw", "gw", "aw", "uw", "sw", "lw"})) return ClubKind::wedge;
    const bool only_degrees = std::all_of(parts.begin(), parts.end(), [](const std::string& part) {
        return is_digit(part.front()) || part == "deg" || part == "degrees" || part == "w";
    });
    if (is_wedge_loft(number) && only_degrees) return ClubKind::wedge;
    if (has(parts, {"wood", "w", "fw", "fairway"})) {
        return number == 1 ? ClubKind::driver : ClubKind::fairway_wood;
    }
    if (iron) return ClubKind::iron;
    return std::nullopt;
}

std::optional<std::string> usual_name(ClubKind kind, std::string_view name) {
    const Parts parts = parts_of(name);
    const int number = number_in(parts);
    const bool numbered = number >= 1 && number <= 15;
    const auto with_number = [&](std::string_view word) {
        return numbered ? std::optional(fmt::format("{}-{}", number, word)) : std::nullopt;
    };
    switch (kind) {
        case ClubKind::driver:
            return "driver";
        case ClubKind::mini_driver:
            return "mini-driver";
        case ClubKind::driving_iron:
            return "driving iron";
        case ClubKind::fairway_wood:
            return with_number("wood");
        case ClubKind::hybrid:
            return with_number("hybrid");
        case ClubKind::iron:
            return with_number("iron");
        case ClubKind::wedge:
            return usual_wedge_name(parts);
        case ClubKind::putter:
            break;
    }
    return "putter";
}

std::string club_key(std::optional<ClubKind> kind, std::string_view name) {
    const std::string known = without(std::string(trimmed(name)), degree_sign);
    if (!kind || !is_plain(known)) return "=" + in_small_letters(trimmed(name));
    return fmt::format("{} {}", club_kind_name(*kind), fmt::join(rest_of(*kind, parts_of(known)), " "));
}

std::string build_key(std::string_view club, std::string_view build) {
    Parts parts = build_parts(build);
    const auto kind = kind_by_name(club);
    const auto usual = kind ? usual_name(*kind, club) : std::nullopt;
    for (const Parts& name : {build_parts(club), build_parts(usual.value_or(std::string(club)))}) {
        if (parts.size() < name.size() || !std::equal(name.begin(), name.end(), parts.begin())) continue;
        parts.erase(parts.begin(), parts.begin() + static_cast<std::ptrdiff_t>(name.size()));
        break;
    }
    return fmt::format("{}", fmt::join(parts, " "));
}

}  // namespace landwidth
