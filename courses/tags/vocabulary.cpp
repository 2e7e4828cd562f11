#include "courses/tags/vocabulary.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

#include "courses/text.hpp"
#include "geometry/units.hpp"

namespace landwidth {

namespace {

// The value of a tag, lower case; of a list the first item. "no" counts as absent.
std::string value_of(const Tags& tags, const std::string& key) {
    const auto found = tags.find(key);
    if (found == tags.end()) return {};
    const std::vector<std::string> items = list_items(folded(found->second));
    return items.empty() || items.front() == "no" ? std::string() : items.front();
}

bool lists(const Tags& tags, const std::string& key, std::string_view item) {
    const auto found = tags.find(key);
    if (found == tags.end()) return false;
    const std::vector<std::string> items = list_items(folded(found->second));
    return std::find(items.begin(), items.end(), item) != items.end();
}

using RoleTable = std::initializer_list<std::pair<std::string_view, Role>>;

Role look_up(const std::string& value, RoleTable table, Role otherwise) {
    for (const auto& [name, role] : table) {
        if (name == value) return role;
    }
    return otherwise;
}

Role golf_role(const std::string& golf, const Tags& tags) {
    if (golf == "penalty_area") {
        const bool yellow =
            value_of(tags, "penalty_area") == "yellow" || value_of(tags, "colour") == "yellow";
        return yellow ? Role::yellow_penalty_area : Role::red_penalty_area;
    }
    return look_up(golf,
                   {{"hole", Role::hole},
                    {"tee", Role::tee},
                    {"fairway", Role::fairway},
                    {"green", Role::green},
                    {"pin", Role::pin},
                    {"bunker", Role::bunker},
                    {"rough", Role::rough},
                    {"water_hazard", Role::yellow_penalty_area},
                    {"lateral_water_hazard", Role::red_penalty_area},
                    {"out_of_bounds", Role::out_of_bounds},
                    {"driving_range", Role::driving_range},
                    {"cartpath", Role::path},
                    {"path", Role::path},
                    {"clubhouse", Role::building}},
                   Role::other_golf);
}

Role highway_role(const std::string& highway) {
    return look_up(highway,
                   {{"path", Role::path},
                    {"footway", Role::path},
                    {"cycleway", Role::path},
                    {"bridleway", Role::path},
                    {"steps", Role::path},
                    {"track", Role::path},
                    {"pedestrian", Role::path},
                    {"proposed", Role::none},
                    {"construction", Role::none},
                    {"razed", Role::none},
                    {"abandoned", Role::none},
                    {"platform", Role::none},
                    {"crossing", Role::none},
                    {"stop", Role::none},
                    {"give_way", Role::none},
                    {"street_lamp", Role::none},
                    {"bus_stop", Role::none},
                    {"turning_circle", Role::none},
                    {"traffic_signals", Role::none}},
                   Role::road);
}

// What lies on the ground, whoever plays there.
Role ground_role(const Tags& tags) {
    Role role = look_up(value_of(tags, "natural"),
                        {{"water", Role::water},
                         {"wood", Role::trees},
                         {"scrub", Role::trees},
                         {"heath", Role::heath},
                         {"wetland", Role::heath},
                         {"sand", Role::sand},
                         {"beach", Role::beach},
                         {"tree", Role::tree},
                         {"tree_row", Role::tree_row},
                         {"coastline", Role::coastline}},
                        Role::none);
    if (role != Role::none) return role;
    role = look_up(value_of(tags, "waterway"),
                   {{"stream", Role::watercourse},
                    {"river", Role::watercourse},
                    {"ditch", Role::watercourse},
                    {"drain", Role::watercourse},
                    {"canal", Role::watercourse},
                    {"brook", Role::watercourse},
                    {"tidal_channel", Role::watercourse},
                    {"riverbank", Role::water}},
                   Role::none);
    if (role != Role::none) return role;
    role = look_up(value_of(tags, "landuse"),
                   {{"forest", Role::trees}, {"reservoir", Role::water}, {"basin", Role::water}}, Role::none);
    if (role != Role::none) return role;
    return value_of(tags, "landcover") == "trees" ? Role::trees : Role::none;
}

bool of_another_sport(const Tags& tags) {
    if (lists(tags, "sport", "golf")) return false;
    return lists(tags, "sport", "disc_golf") || lists(tags, "sport", "footgolf") ||
           lists(tags, "sport", "miniature_golf") || tags.contains("disc_golf") ||
           tags.contains("disc_golf:hole");
}

bool out_of_use(const Tags& tags) {
    for (const char* key : {"disused", "abandoned", "demolished", "removed", "razed", "proposed"}) {
        if (value_of(tags, key) == "yes") return true;
    }
    return false;
}

Role role_in_use(const Tags& tags) {
    const bool course = value_of(tags, "leisure") == "golf_course";
    const std::string golf = value_of(tags, "golf");
    if (course) {
        const bool range = golf == "driving_range" || value_of(tags, "golf:course") == "driving_range";
        return range ? Role::driving_range : Role::boundary;
    }
    const Role role = golf.empty() ? Role::none : golf_role(golf, tags);
    const Role ground = ground_role(tags);
    // Rough with trees on it is a wood to the ball.
    if (role == Role::rough && ground == Role::trees) return ground;
    if (role != Role::none && role != Role::other_golf) return role;
    if (ground != Role::none) return ground;
    if (role == Role::other_golf) return role;
    if (const std::string highway = value_of(tags, "highway"); !highway.empty()) {
        if (value_of(tags, "golf_cart") == "designated") return Role::path;
        return highway_role(highway);
    }
    if (!value_of(tags, "building").empty()) return Role::building;
    return look_up(value_of(tags, "barrier"),
                   {{"fence", Role::barrier},
                    {"wall", Role::barrier},
                    {"hedge", Role::barrier},
                    {"retaining_wall", Role::barrier},
                    {"city_wall", Role::barrier}},
                   Role::none);
}

}  // namespace

Severity severity_of_loss(Role role) {
    return role == Role::building || role == Role::road || role == Role::path ? Severity::note
                                                                              : Severity::warning;
}

Role role_of(const Tags& tags) {
    const Role role = role_in_use(tags);
    return is_golf(role) && (of_another_sport(tags) || out_of_use(tags)) ? Role::other_sport : role;
}

bool is_golf(Role role) {
    switch (role) {
        case Role::hole:
        case Role::tee:
        case Role::fairway:
        case Role::green:
        case Role::pin:
        case Role::bunker:
        case Role::rough:
        case Role::yellow_penalty_area:
        case Role::red_penalty_area:
        case Role::out_of_bounds:
        case Role::driving_range:
        case Role::other_golf:
        case Role::boundary:
            return true;
        default:
            return false;
    }
}

Form form_of(Role role, const Tags& tags) {
    switch (role) {
        case Role::pin:
        case Role::tree:
            return Form::point;
        case Role::hole:
        case Role::tree_row:
        case Role::coastline:
            return Form::line;
        case Role::watercourse:
        case Role::road:
        case Role::path:
            return value_of(tags, "area") == "yes" ? Form::area : Form::line;
        case Role::tee:
        case Role::yellow_penalty_area:
        case Role::red_penalty_area:
        case Role::out_of_bounds:
        case Role::other_golf:
        case Role::other_sport:
        case Role::barrier:
            return Form::any;
        default:
            return Form::area;
    }
}

std::string tag_words(const Tags& tags) {
    for (const char* key : {"golf", "leisure", "natural", "waterway", "landuse", "landcover", "highway",
                            "building", "barrier"}) {
        const auto found = tags.find(key);
        if (found == tags.end()) continue;
        if (std::string_view(key) == "leisure" && value_of(tags, key) != "golf_course") continue;
        return std::string(key) + "=" + found->second;
    }
    return "untagged";
}

bool is_under_ground(const Tags& tags) {
    return !value_of(tags, "tunnel").empty() || !value_of(tags, "covered").empty() ||
           value_of(tags, "location") == "underground" || value_of(tags, "culvert") == "yes";
}

bool is_intermittent(const Tags& tags) {
    return !value_of(tags, "intermittent").empty() || !value_of(tags, "seasonal").empty();
}

}  // namespace landwidth
