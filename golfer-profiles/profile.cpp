#include "golfer-profiles/profile.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "golfer-profiles/json_text.hpp"

namespace landwidth {
namespace {

constexpr std::array<std::pair<ClubKind, std::string_view>, 8> kind_names{{
    {ClubKind::driver, "driver"},
    {ClubKind::mini_driver, "mini-driver"},
    {ClubKind::fairway_wood, "fairway-wood"},
    {ClubKind::hybrid, "hybrid"},
    {ClubKind::driving_iron, "driving-iron"},
    {ClubKind::iron, "iron"},
    {ClubKind::wedge, "wedge"},
    {ClubKind::putter, "putter"},
}};

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

}  // namespace

std::string_view club_kind_name(ClubKind kind) {
    const auto* found =
        std::find_if(kind_names.begin(), kind_names.end(), [&](const auto& k) { return k.first == kind; });
    return found == kind_names.end() ? std::string_view{} : found->second;
}

std::optional<ClubKind> club_kind_named(std::string_view name) {
    const auto* found =
        std::find_if(kind_names.begin(), kind_names.end(), [&](const auto& k) { return k.second == name; });
    return found == kind_names.end() ? std::nullopt : std::optional(found->first);
}

const Club* Golfer::club(std::string_view wanted) const {
    const auto found =
        std::find_if(clubs.begin(), clubs.end(), [&](const Club& c) { return same_name(c.name, wanted); });
    return found == clubs.end() ? nullptr : &*found;
}

double handicap_of(const Level& level, double own_index, double tour_index) {
    if (const double* index = std::get_if<double>(&level)) return *index;
    switch (std::get<NamedLevel>(level)) {
        case NamedLevel::tour:
            return tour_index;
        case NamedLevel::scratch:
            return 0.0;
        case NamedLevel::handicap:
            break;
    }
    return own_index;
}

bool is_playable(const Club& club) {
    return club.in_bag && club.pattern && club.kind != ClubKind::putter;
}

std::string_view family_of(const Club& club) {
    if (!club.build_of.empty()) return club.build_of;
    const std::string_view name = club.name;
    return name.substr(0, name.find(", "));
}

bool same_name(std::string_view a, std::string_view b) {
    a = trimmed(a);
    b = trimmed(b);
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](char x, char y) { return lower(x) == lower(y); });
}

std::string name_problem(std::string_view name) {
    constexpr std::size_t longest = 100;
    const auto is_control = [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; };
    if (trimmed(name).empty()) return "is empty";
    if (name.size() > longest) return "is longer than 100 bytes";
    if (std::any_of(name.begin(), name.end(), is_control)) return "contains a control character";
    if (!is_utf8(name)) return "is not UTF-8 text";
    return {};
}

}  // namespace landwidth
