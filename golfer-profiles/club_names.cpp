#include "golfer-profiles/club_names.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <initializer_list>
#include <vector>

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

}  // namespace landwidth
