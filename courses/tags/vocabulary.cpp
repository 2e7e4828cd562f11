#include "courses/tags/vocabulary.hpp"

#include <algorithm>
#include <string_view>

#include "courses/text.hpp"

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

Role golf_role(const Tags& tags) {
    const std::string golf = value_of(tags, "golf");
    const bool yellow = value_of(tags, "penalty_area") == "yellow" || value_of(tags, "colour") == "yellow";
    return golf == "penalty_area" && yellow ? Role::yellow_penalty_area : role_of_tag("golf", golf);
}

// What lies on the ground, whoever plays there.
Role ground_role(const Tags& tags) {
    for (const char* key : {"natural", "waterway", "landuse", "landcover"}) {
        if (const Role role = role_of_tag(key, value_of(tags, key)); role != Role::none) return role;
    }
    return Role::none;
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
    const Role course = role_of_tag("leisure", value_of(tags, "leisure"));
    if (course != Role::none) {
        const bool range =
            value_of(tags, "golf") == "driving_range" || value_of(tags, "golf:course") == "driving_range";
        return range ? Role::driving_range : course;
    }
    const Role golf = golf_role(tags);
    const Role ground = ground_role(tags);
    // Rough with trees on it is a wood to the ball.
    if (golf == Role::rough && ground == Role::trees) return ground;
    if (golf != Role::none && golf != Role::other_golf) return golf;
    if (ground != Role::none) return ground;
    if (golf == Role::other_golf) return golf;
    if (const std::string highway = value_of(tags, "highway"); !highway.empty()) {
        if (value_of(tags, "golf_cart") == "designated") return Role::path;
        return role_of_tag("highway", highway);
    }
    const Role building = role_of_tag("building", value_of(tags, "building"));
    return building != Role::none ? building : role_of_tag("barrier", value_of(tags, "barrier"));
}

}  // namespace

Role role_of(const Tags& tags) {
    const Role role = role_in_use(tags);
    return is_golf(role) && (of_another_sport(tags) || out_of_use(tags)) ? Role::other_sport : role;
}

Form form_of(Role role, const Tags& tags) {
    const Form form = meaning_of(role).form;
    if (form != Form::line_or_area) return form;
    return value_of(tags, "area") == "yes" ? Form::area : Form::line;
}

std::string tag_words(const Tags& tags) {
    for (const std::string_view key : role_keys) {
        const auto found = tags.find(std::string(key));
        if (found == tags.end()) continue;
        if (key == "leisure" && value_of(tags, "leisure") != "golf_course") continue;
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
