// The style XML of the QGIS project, as short as it is understood: a renderer with a symbol for each category
// and, for lines, labels.
#include <fmt/format.h>

#include <charconv>
#include <initializer_list>
#include <utility>

#include "planner/reports/layer_style.hpp"

namespace landwidth {
namespace {

using Properties = std::initializer_list<std::pair<std::string_view, std::string>>;

constexpr double mm_per_px = 25.4 / 96.0;

std::string millimetres(double px) {
    return fmt::format("{:.2f}", px * mm_per_px);
}

int channel(std::string_view colour, std::size_t at) {
    int value = 0;
    std::from_chars(colour.data() + at, colour.data() + at + 2, value, 16);
    return value;
}

// "#rrggbb" as "r,g,b,alpha".
std::string rgba(std::string_view colour, double opacity = 1.0) {
    return fmt::format("{},{},{},{:.0f}", channel(colour, 1), channel(colour, 3), channel(colour, 5),
                       255.0 * opacity);
}

std::string line_style(const CategoryStyle& look) {
    if (!(look.stroke_px > 0.0)) return "no";
    switch (look.edge) {
        case MapEdge::solid:
            return "solid";
        case MapEdge::dashed:
            return "dash";
        case MapEdge::dotted:
            return "dot";
    }
    return "solid";
}

// `inner` is the symbol a pattern repeats.
std::string symbol_layer(std::string_view type, Properties properties, std::string_view inner = "") {
    std::string text = fmt::format("<layer class=\"{}\" enabled=\"1\" locked=\"0\" pass=\"0\">\n", type);
    for (const auto& [key, value] : properties)
        text += fmt::format("<prop k=\"{}\" v=\"{}\"/>\n", key, value);
    return text.append(inner) + "</layer>\n";
}

std::string symbol(std::string_view name, std::string_view type, std::string_view layers) {
    return fmt::format(
        "<symbol name=\"{}\" type=\"{}\" alpha=\"1\" clip_to_extent=\"1\" force_rhr=\"0\">\n{}</symbol>\n",
        name, type, layers);
}

std::string hatching(const CategoryStyle& look, std::string_view inner_name, int angle_deg,
                     std::string_view pen) {
    const std::string line = symbol_layer("SimpleLine", {{"line_color", rgba(look.ink)},
                                                         {"line_style", std::string(pen)},
                                                         {"line_width", "0.16"},
                                                         {"line_width_unit", "MM"}});
    return symbol_layer(
        "LinePatternFill",
        {{"angle", fmt::format("{}", angle_deg)}, {"distance", "1.8"}, {"distance_unit", "MM"}},
        symbol(inner_name, "line", line));
}

std::string sprinkling(const CategoryStyle& look, std::string_view inner_name, std::string_view shape,
                       bool filled, double size_mm, double distance_mm) {
    const std::string marker = symbol_layer("SimpleMarker", {{"name", std::string(shape)},
                                                             {"color", rgba(look.ink, filled ? 1.0 : 0.0)},
                                                             {"outline_color", rgba(look.ink)},
                                                             {"outline_style", filled ? "no" : "solid"},
                                                             {"outline_width", "0.16"},
                                                             {"size", fmt::format("{:.1f}", size_mm)},
                                                             {"size_unit", "MM"}});
    const std::string distance = fmt::format("{:.1f}", distance_mm);
    const std::string half = fmt::format("{:.2f}", 0.5 * distance_mm);
    return symbol_layer("PointPatternFill",
                        {{"distance_x", distance},
                         {"distance_x_unit", "MM"},
                         {"distance_y", distance},
                         {"distance_y_unit", "MM"},
                         {"displacement_x", half},
                         {"displacement_x_unit", "MM"}},
                        symbol(inner_name, "marker", marker));
}

std::string pattern_layer(const CategoryStyle& look, std::string_view inner_name) {
    switch (look.pattern) {
        case MapPattern::none:
            return "";
        case MapPattern::tufts:
            return sprinkling(look, inner_name, "line", false, 1.2, 5.0);
        case MapPattern::stipple:
            return sprinkling(look, inner_name, "circle", true, 0.4, 1.2);
        case MapPattern::crowns:
            return sprinkling(look, inner_name, "circle", false, 1.8, 3.0);
        case MapPattern::waves:
            return hatching(look, inner_name, 0, "dash");
        case MapPattern::horizontal:
            return hatching(look, inner_name, 0, "solid");
        case MapPattern::diagonal:
            return hatching(look, inner_name, 135, "solid");
    }
    return "";
}

std::string area_symbol(const CategoryStyle& look, std::size_t index) {
    const std::string fill = symbol_layer("SimpleFill", {{"color", rgba(look.fill, look.fill_opacity)},
                                                         {"style", "solid"},
                                                         {"outline_color", rgba(look.stroke)},
                                                         {"outline_style", line_style(look)},
                                                         {"outline_width", millimetres(look.stroke_px)},
                                                         {"outline_width_unit", "MM"}});
    return symbol(fmt::format("{}", index), "fill", fill + pattern_layer(look, fmt::format("@{}@1", index)));
}

// On a white casing, so that it shows over any ground.
std::string line_symbol(const CategoryStyle& look, std::size_t index) {
    const auto pen = [](std::string_view colour, const std::string& style, double px) {
        return symbol_layer("SimpleLine", {{"line_color", rgba(colour)},
                                           {"line_style", style},
                                           {"line_width", millimetres(px)},
                                           {"line_width_unit", "MM"},
                                           {"capstyle", "flat"}});
    };
    return symbol(
        fmt::format("{}", index), "line",
        pen("#ffffff", "solid", look.stroke_px + 2.0) + pen(look.stroke, line_style(look), look.stroke_px));
}

std::string labels(const LayerStyle& style) {
    if (!style.labelled) return "";
    return fmt::format(
        "<labeling type=\"simple\">\n<settings>\n"
        "<text-style fieldName=\"label\" isExpression=\"0\" fontSize=\"8\" fontSizeUnit=\"Point\" "
        "textColor=\"{}\">\n"
        "<text-buffer bufferDraw=\"1\" bufferSize=\"0.8\" bufferSizeUnits=\"MM\" bufferColor=\"{}\"/>\n"
        "</text-style>\n<placement placement=\"2\" placementFlags=\"10\" overrunDistance=\"40\" "
        "overrunDistanceUnit=\"MM\"/>\n"
        "<rendering obstacle=\"0\"/>\n"
        "</settings>\n</labeling>\n",
        rgba("#1e1e1e"), rgba("#ffffff"));
}

}  // namespace

std::string style_as_qml(const LayerStyle& style) {
    std::string categories;
    std::string symbols;
    for (std::size_t i = 0; i < style.categories.size(); ++i) {
        const CategoryStyle& look = style.categories[i];
        categories += fmt::format("<category symbol=\"{}\" value=\"{}\" label=\"{}\" render=\"true\"/>\n", i,
                                  look.value, look.label);
        symbols += style.areas ? area_symbol(look, i) : line_symbol(look, i);
    }
    return fmt::format(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<qgis version=\"3.22.0\" styleCategories=\"Symbology{}\"{}>\n"
        "<renderer-v2 type=\"categorizedSymbol\" attr=\"{}\" symbollevels=\"0\" forceraster=\"0\">\n"
        "<categories>\n{}</categories>\n<symbols>\n{}</symbols>\n</renderer-v2>\n{}</qgis>\n",
        style.labelled ? "|Labeling" : "", style.labelled ? " labelsEnabled=\"1\"" : "", style.field,
        categories, symbols, labels(style));
}

}  // namespace landwidth
