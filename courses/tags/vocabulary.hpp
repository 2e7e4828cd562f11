// How the tags of OpenStreetMap's open scheme are read; what they mean is the table of roles.hpp.
//
// The golf key decides where there is one: golf=lateral_water_hazard on natural=water is a red penalty area,
// golf=bunker on natural=sand a bunker. Features of other games (disc golf, footgolf, miniature golf) and of
// courses out of use are none of ours. Values are compared without regard to case.
#pragma once

#include <optional>
#include <string>

#include "courses/map_assumptions.hpp"
#include "courses/tags/map_feature.hpp"
#include "courses/tags/roles.hpp"

namespace landwidth {

// Of tags that are no feature yet; a MapFeature knows its role.
Role role_of(const Tags& tags);
// The form it is drawn in; never Form::line_or_area, which the tags settle.
Form form_of(Role role, const Tags& tags);
// Words for a person: "golf=fairway", "natural=water", the tag the role came from.
std::string tag_words(const Tags& tags);

// Water under ground or under a cover: culverts, tunnels.
bool is_under_ground(const Tags& tags);
bool is_intermittent(const Tags& tags);

// `width`, `est_width`, ... in metres: "3", "3 m", "3,5 m", "10'", "6 ft", "10'6\"". Absent without such a
// tag or where it cannot be read; `unreadable` then holds what it says.
struct TaggedWidth {
    std::optional<double> metres;
    std::string unreadable;
};
TaggedWidth tagged_width(const Tags& tags);
std::optional<double> length_in_metres(const std::string& text);

// The assumed width of a watercourse by its kind; kinds the assumptions do not name go with the nearest:
// drain with ditch, canal with river, anything else with stream.
double assumed_width(const Tags& tags, const MapAssumptions& assumptions);

// How high a wood, scrub, tree, row of trees or building stands over the ground, metres: `height`,
// `building:height` or `est_height` ("12", "12 m", "40 ft", "40'"), else the storeys of a building
// (`building:levels`). Absent where the map does not say; `unreadable` then holds the tag, if any, that says
// nothing of use.
struct TaggedHeight {
    std::optional<double> metres;
    std::string unreadable;
};
TaggedHeight tagged_height(Role role, const Tags& tags, const MapAssumptions& assumptions);
// The height where the map does not say: of a building, of scrub, else of trees.
double assumed_height(Role role, const Tags& tags, const MapAssumptions& assumptions);

}  // namespace landwidth
