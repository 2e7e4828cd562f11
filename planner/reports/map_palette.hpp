// How ground is drawn, on the maps of the HTML report and in the styles of the GIS layers.
//
// Ordinary map habit: grass green, water blue, sand tan. Every lie that costs strokes also carries a pattern
// of its own (sand stippled, woods with crowns, water with waves, out of bounds hatched), so that the map is
// read without its colours: by the colour-blind, and from a black-and-white printer. The fills of mown ground
// get lighter towards the green, so that rough, fairway and green also differ as greys.
#pragma once

#include <string_view>

#include "geometry/lie.hpp"

namespace landwidth {

enum class MapPattern {
    none,
    tufts,       // sparse short strokes
    stipple,     // dots
    crowns,      // small open circles
    waves,       // wavy horizontal lines
    horizontal,  // straight horizontal lines
    diagonal,    // lines falling from left to right
};

enum class MapEdge { solid, dashed, dotted };

struct LieStyle {
    std::string_view label;  // for a legend
    std::string_view fill;   // "#rrggbb"
    std::string_view ink;    // of the pattern, "#rrggbb"
    MapPattern pattern;
    std::string_view stroke;  // of the edge, "#rrggbb"
    double stroke_px;         // at 96 px an inch
    MapEdge edge;
};

const LieStyle& lie_style(Lie lie);

// The marks drawn over the ground: the best club solid, the second dashed; each on a white casing.
inline constexpr std::string_view best_club_colour = "#8c0a4f";
inline constexpr std::string_view second_club_colour = "#12305e";
inline constexpr std::string_view line_of_play_colour = "#2b2b2b";

}  // namespace landwidth
