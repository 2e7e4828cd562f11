#include "courses/tags/roles.hpp"

#include <algorithm>

namespace landwidth {

namespace {

constexpr TagMeaning tags[]{
    // The course. With golf=driving_range the area is a range.
    {"leisure", "golf_course", Role::boundary},
    // Drawn for golf.
    {"golf", "hole", Role::hole},
    {"golf", "tee", Role::tee},
    {"golf", "fairway", Role::fairway},
    {"golf", "green", Role::green},
    {"golf", "pin", Role::pin},
    {"golf", "bunker", Role::bunker},
    {"golf", "rough", Role::rough},
    {"golf", "water_hazard", Role::yellow_penalty_area},
    {"golf", "lateral_water_hazard", Role::red_penalty_area},
    {"golf", "penalty_area", Role::red_penalty_area},  // yellow, where a second tag says so
    {"golf", "out_of_bounds", Role::out_of_bounds},
    {"golf", "driving_range", Role::driving_range},
    {"golf", "cartpath", Role::path},
    {"golf", "path", Role::path},
    {"golf", "clubhouse", Role::building},
    {"golf", any_value, Role::other_golf},
    // What lies on the ground, whoever plays there.
    {"natural", "water", Role::water},
    {"natural", "wood", Role::trees},
    {"natural", "scrub", Role::trees},
    {"natural", "heath", Role::heath},
    {"natural", "wetland", Role::heath},
    {"natural", "sand", Role::sand},
    {"natural", "beach", Role::beach},
    {"natural", "tree", Role::tree},
    {"natural", "tree_row", Role::tree_row},
    {"natural", "coastline", Role::coastline},
    {"waterway", "stream", Role::watercourse},
    {"waterway", "river", Role::watercourse},
    {"waterway", "ditch", Role::watercourse},
    {"waterway", "drain", Role::watercourse},
    {"waterway", "canal", Role::watercourse},
    {"waterway", "brook", Role::watercourse},
    {"waterway", "tidal_channel", Role::watercourse},
    {"waterway", "riverbank", Role::water},
    {"landuse", "forest", Role::trees},
    {"landuse", "reservoir", Role::water},
    {"landuse", "basin", Role::water},
    {"landcover", "trees", Role::trees},
    // What runs or stands there.
    {"highway", "path", Role::path},
    {"highway", "footway", Role::path},
    {"highway", "cycleway", Role::path},
    {"highway", "bridleway", Role::path},
    {"highway", "steps", Role::path},
    {"highway", "track", Role::path},
    {"highway", "pedestrian", Role::path},
    {"highway", "proposed", Role::none},
    {"highway", "construction", Role::none},
    {"highway", "razed", Role::none},
    {"highway", "abandoned", Role::none},
    {"highway", "platform", Role::none},
    {"highway", "crossing", Role::none},
    {"highway", "stop", Role::none},
    {"highway", "give_way", Role::none},
    {"highway", "street_lamp", Role::none},
    {"highway", "bus_stop", Role::none},
    {"highway", "turning_circle", Role::none},
    {"highway", "traffic_signals", Role::none},
    {"highway", any_value, Role::road},
    {"building", any_value, Role::building},
    {"barrier", "fence", Role::barrier},
    {"barrier", "wall", Role::barrier},
    {"barrier", "hedge", Role::barrier},
    {"barrier", "retaining_wall", Role::barrier},
    {"barrier", "city_wall", Role::barrier},
};

constexpr std::optional<Lie> no_lie;
constexpr Evidence golf = Evidence::golf_area, cover = Evidence::land_cover, object = Evidence::object;
constexpr Severity warn = Severity::warning, note = Severity::note;

// clang-format off
constexpr RoleMeaning roles[]{
    // role                     name                   form                lie                  evidence golf  loss
    {Role::none,                "nothing",             Form::area,         no_lie,              cover,  false, warn},
    {Role::hole,                "hole",                Form::line,         no_lie,              golf,   true,  warn},
    {Role::tee,                 "teeing area",         Form::any,          Lie::teeing_area,    golf,   true,  warn},
    {Role::fairway,             "fairway",             Form::area,         Lie::fairway,        golf,   true,  warn},
    {Role::green,               "green",               Form::area,         Lie::green,          golf,   true,  warn},
    {Role::pin,                 "pin",                 Form::point,        no_lie,              golf,   true,  warn},
    {Role::bunker,              "bunker",              Form::area,         Lie::bunker,         golf,   true,  warn},
    {Role::rough,               "rough",               Form::area,         Lie::rough,          golf,   true,  warn},
    {Role::yellow_penalty_area, "yellow penalty area", Form::any,          Lie::penalty_yellow, golf,   true,  warn},
    {Role::red_penalty_area,    "red penalty area",    Form::any,          Lie::penalty_red,    golf,   true,  warn},
    {Role::out_of_bounds,       "out of bounds",       Form::any,          Lie::out_of_bounds,  golf,   true,  warn},
    {Role::driving_range,       "driving range",       Form::area,         no_lie,              golf,   true,  warn},
    {Role::other_golf,          "other golf",          Form::any,          no_lie,              golf,   true,  warn},
    {Role::other_sport,         "another sport",       Form::any,          no_lie,              cover,  false, warn},
    {Role::boundary,            "course boundary",     Form::area,         no_lie,              golf,   true,  warn},
    {Role::water,               "water",               Form::area,         Lie::penalty_red,    cover,  false, warn},
    {Role::watercourse,         "watercourse",         Form::line_or_area, Lie::penalty_red,    cover,  false, warn},
    // The sea lies to its right.
    {Role::coastline,           "coastline",           Form::line,         no_lie,              cover,  false, warn},
    {Role::sand,                "sand",                Form::area,         Lie::bunker,         cover,  false, warn},
    {Role::beach,               "beach",               Form::area,         no_lie,              cover,  false, warn},
    {Role::trees,               "trees",               Form::area,         Lie::trees,          cover,  false, warn},
    {Role::tree,                "tree",                Form::point,        Lie::trees,          object, false, warn},
    {Role::tree_row,            "row of trees",        Form::line,         Lie::trees,          object, false, warn},
    // Rough, as ground that nothing covers.
    {Role::heath,               "heath",               Form::area,         no_lie,              cover,  false, warn},
    // These only stand beside a hole.
    {Role::road,                "road",                Form::line_or_area, no_lie,              object, false, note},
    {Role::path,                "path",                Form::line_or_area, no_lie,              object, false, note},
    {Role::building,            "building",            Form::area,         no_lie,              object, false, note},
    {Role::barrier,             "barrier",             Form::any,          no_lie,              object, false, warn},
};
// clang-format on

constexpr bool in_order() {
    for (std::size_t i = 0; i < std::size(roles); ++i) {
        if (static_cast<std::size_t>(roles[i].role) != i) return false;
    }
    return std::size(roles) == static_cast<std::size_t>(Role::barrier) + 1;
}
static_assert(in_order(), "the table has a row for every role, in the order of the enumeration");

constexpr bool keys_are_known() {
    return std::ranges::all_of(
        tags, [](const TagMeaning& tag) { return std::ranges::find(role_keys, tag.key) != role_keys.end(); });
}
static_assert(keys_are_known(), "role_keys has every key of the table");

}  // namespace

const RoleMeaning& meaning_of(Role role) {
    return roles[static_cast<std::size_t>(role)];
}

std::span<const RoleMeaning> role_meanings() {
    return roles;
}

std::span<const TagMeaning> tag_meanings() {
    return tags;
}

Role role_of_tag(std::string_view key, std::string_view value) {
    if (value.empty()) return Role::none;
    for (const TagMeaning& tag : tags) {
        if (tag.key == key && (tag.value == value || tag.value == any_value)) return tag.role;
    }
    return Role::none;
}

}  // namespace landwidth
