// What tags make a feature to a golf hole, and what that means for everything after: two tables in roles.cpp,
// from a tag to a role and from a role to all that follows from it.
//
// How tags are read (lists, letter case, which key goes first, exceptions that take two tags) is in
// vocabulary.hpp.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "courses/finding.hpp"
#include "geometry/lie.hpp"

namespace landwidth {

enum class Role {
    none,
    hole,
    tee,
    fairway,
    green,
    pin,
    bunker,
    rough,
    yellow_penalty_area,
    red_penalty_area,
    out_of_bounds,
    driving_range,
    other_golf,   // a golf=* value that says nothing about the lie
    other_sport,  // disc golf and the like, or a course out of use
    boundary,
    water,        // an area of water without a golf tag
    watercourse,  // a line of water without a golf tag
    coastline,
    sand,
    beach,
    trees,
    tree,
    tree_row,
    heath,  // heath and wetland: rough ground that may be worse than rough
    road,
    path,
    building,
    barrier,  // a fence, a wall, a hedge
};

// The form a role is drawn in.
enum class Form {
    point,
    line,
    area,
    any,           // an area where closed, else a line or a point
    line_or_area,  // a line, with area=yes an area
};

// What is known of ground that was drawn.
enum class Evidence {
    golf_area,   // an area with a golf tag
    land_cover,  // an area without one: a wood, sand, a lake
    object,      // a point or line that was given a breadth
};

struct RoleMeaning {
    Role role;
    std::string_view name;  // for people: "fairway", "row of trees"
    Form form;
    // Where a ball lies on it; absent where it says nothing about that. A green is one on its own hole only.
    std::optional<Lie> lie;
    // Of the areas drawn for it; lines and points that are given a breadth are objects whatever stands here.
    Evidence evidence;
    bool golf;      // golf=* or leisure=golf_course of the game this program is about
    Severity loss;  // what it means when a feature of this role is lost
};

const RoleMeaning& meaning_of(Role role);
std::span<const RoleMeaning> role_meanings();  // of every role, in the order of the enumeration

// A tag that decides a role. The value `any_value` stands for every one that has no row of its own.
struct TagMeaning {
    std::string_view key, value;
    Role role;
};
inline constexpr std::string_view any_value = "*";

std::span<const TagMeaning> tag_meanings();
// The role that one tag gives, both in lower case; none for a tag that is not in the table, or no value.
Role role_of_tag(std::string_view key, std::string_view value);

// Keys (lower case) that decide a role, in the order in which they name a feature: one without any of them
// has none.
inline constexpr std::array<std::string_view, 9> role_keys{
    "golf", "leisure", "natural", "waterway", "landuse", "landcover", "highway", "building", "barrier"};

inline bool is_golf(Role role) {
    return meaning_of(role).golf;
}
inline Severity severity_of_loss(Role role) {
    return meaning_of(role).loss;
}

}  // namespace landwidth
