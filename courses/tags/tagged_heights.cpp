// Heights of what stands on the ground, as mappers tag them.
#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// Taller than any tree on record (about 116 m, from memory), than any building and than any storeys of one:
// typing errors.
constexpr double tallest_tree_m = 120.0;
constexpr double tallest_building_m = 900.0;
constexpr double most_levels = 200.0;

std::string named(const char* key, const std::string& value) {
    return std::string(key) + "=" + value;
}

}  // namespace

TaggedHeight tagged_height(Role role, const Tags& tags, const MapAssumptions& assumptions) {
    const double tallest_m = role == Role::building ? tallest_building_m : tallest_tree_m;
    TaggedHeight height;
    const auto keep_unreadable = [&](const char* key, const std::string& value) {
        if (height.unreadable.empty()) height.unreadable = named(key, value);
    };
    for (const char* key : {"height", "building:height", "est_height"}) {
        const auto found = tags.find(key);
        if (found == tags.end()) continue;
        const std::optional<double> metres = length_in_metres(found->second);
        if (metres && *metres <= tallest_m) return {metres, {}};
        keep_unreadable(key, found->second);
    }
    const char* const levels_key = "building:levels";
    const auto found = tags.find(levels_key);
    if (role != Role::building || found == tags.end()) return height;
    const std::optional<double> levels = number_in(found->second);
    if (levels && *levels > 0.0 && *levels <= most_levels) {
        height.metres = *levels * assumptions.storey_height_m;
    } else {
        keep_unreadable(levels_key, found->second);
    }
    return height;
}

double assumed_height(Role role, const Tags& tags, const MapAssumptions& assumptions) {
    if (role == Role::building) return assumptions.building_height_m;
    const auto found = tags.find("natural");
    const bool scrub = found != tags.end() && folded(found->second) == "scrub";
    return scrub ? assumptions.scrub_height_m : assumptions.tree_height_m;
}

}  // namespace landwidth
