// The drawn map of a hole: lies, tee, flag, line of play, the best club's aim and landing ellipses, those of
// the next club, the shots that follow, landing width, arcs of equal distance from the tee, scale and north;
// and, for a reader who switches it on, what a place costs in place of the lies' fills.
//
// SVG for the inside of an HTML page that carries map_style() in its style sheet and map_patterns() once in
// its body. It draws what the plan says and computes no number of the game.
#pragma once

#include <string>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct HoleMap {
    std::string svg;
    // What the signs mean, a list of those that are on this map.
    std::string legend;
    // What the bands of the shading mean; empty where the plan has no cost map. The map then holds the
    // bands as a group of class "shade", below its ground of class "ground".
    std::string cost_key;
};

// `id` makes the identifiers of this map unique in the page: letters, digits and hyphens.
HoleMap hole_map(const PlanView& view, std::size_t hole, const std::string& id);

// The hatchings that maps and legends refer to, as an <svg> that takes no room.
std::string map_patterns();

// Style rules of maps and legends.
std::string map_style();

// The shares of the lies where a ball finishes, as one bar with the fills of the map.
std::string lie_bar(const TeeChoice& choice);

}  // namespace landwidth
