// How a GIS draws the layers of a plan: one description a layer, written out in three open forms (SLD 1.0 of
// the OGC, the style XML of the QGIS project, and, from the same categories, simplestyle properties in
// GeoJSON).
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/reports/map_palette.hpp"

namespace landwidth {

// Features of one value of the layer's styling field. Sizes in px at 96 px an inch.
struct CategoryStyle {
    std::string value;
    std::string label;        // for a legend
    std::string_view stroke;  // "#rrggbb"
    double stroke_px;         // 0: no line
    MapEdge edge;
    std::string_view fill;  // "#rrggbb"; unused by lines
    double fill_opacity;    // [0, 1]; 0: no fill
    MapPattern pattern;     // over the fill
    std::string_view ink;   // of the pattern
};

struct LayerStyle {
    std::string layer;
    std::string field;  // whose values the categories are
    bool areas;         // else lines
    bool labelled;      // with the field "label"
    std::vector<CategoryStyle> categories;
};

inline constexpr std::string_view lies_layer = "lies";
inline constexpr std::string_view aim_lines_layer = "aim_lines";
inline constexpr std::string_view landing_ellipses_layer = "landing_ellipses";
inline constexpr std::string_view landing_widths_layer = "landing_widths";

// What a choice is to the hole: its rank among the clubs, 0 the best.
std::string_view choice_word(std::size_t rank);

// std::logic_error for a layer that does not exist.
const LayerStyle& layer_style(std::string_view layer);
// std::logic_error for a value without a category.
const CategoryStyle& category_of(const LayerStyle& style, std::string_view value);

std::string style_as_sld(const LayerStyle& style);
std::string style_as_qml(const LayerStyle& style);

}  // namespace landwidth
