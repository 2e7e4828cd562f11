// Styled Layer Descriptor 1.0.0 (OGC 02-070): one rule a category.
#include <fmt/format.h>

#include "planner/reports/layer_style.hpp"

namespace landwidth {
namespace {

std::string parameter(std::string_view name, std::string_view value) {
    return fmt::format("<CssParameter name=\"{}\">{}</CssParameter>", name, value);
}

std::string_view dashes(MapEdge edge) {
    switch (edge) {
        case MapEdge::solid:
            return "";
        case MapEdge::dashed:
            return "6 3";
        case MapEdge::dotted:
            return "1.5 2.5";
    }
    return "";
}

std::string stroke(const CategoryStyle& look) {
    if (!(look.stroke_px > 0.0)) return "";
    std::string text = "<Stroke>" + parameter("stroke", look.stroke) +
                       parameter("stroke-width", fmt::format("{:.2f}", look.stroke_px));
    if (const auto dash = dashes(look.edge); !dash.empty()) text += parameter("stroke-dasharray", dash);
    return text + "</Stroke>";
}

struct Mark {
    std::string_view name;  // well known; hatches by the widespread shape:// names
    bool filled;
    double size_px;
};

Mark mark_of(MapPattern pattern) {
    switch (pattern) {
        case MapPattern::none:
            break;
        case MapPattern::tufts:
            return {"shape://vertline", false, 14.0};
        case MapPattern::stipple:
            return {"circle", true, 3.0};
        case MapPattern::crowns:
            return {"circle", false, 9.0};
        case MapPattern::waves:
            return {"shape://plus", false, 9.0};
        case MapPattern::horizontal:
            return {"shape://horline", false, 7.0};
        case MapPattern::diagonal:
            return {"shape://backslash", false, 9.0};
    }
    return {"", false, 0.0};
}

std::string pattern_symbolizer(const CategoryStyle& look) {
    const Mark mark = mark_of(look.pattern);
    if (mark.name.empty()) return "";
    const std::string paint = mark.filled ? "<Fill>" + parameter("fill", look.ink) + "</Fill>"
                                          : "<Stroke>" + parameter("stroke", look.ink) +
                                                parameter("stroke-width", "0.6") + "</Stroke>";
    return fmt::format(
        "<PolygonSymbolizer><Fill><GraphicFill><Graphic><Mark><WellKnownName>{}</WellKnownName>{}</Mark>"
        "<Size>{:.0f}</Size></Graphic></GraphicFill></Fill></PolygonSymbolizer>\n",
        mark.name, paint, mark.size_px);
}

std::string symbolizers(const LayerStyle& style, const CategoryStyle& look) {
    if (!style.areas) return "<LineSymbolizer>" + stroke(look) + "</LineSymbolizer>\n";
    return "<PolygonSymbolizer><Fill>" + parameter("fill", look.fill) +
           parameter("fill-opacity", fmt::format("{:.2f}", look.fill_opacity)) + "</Fill>" + stroke(look) +
           "</PolygonSymbolizer>\n" + pattern_symbolizer(look);
}

std::string label_rule(const LayerStyle& style) {
    if (!style.labelled) return "";
    return "<Rule><TextSymbolizer><Label><ogc:PropertyName>label</ogc:PropertyName></Label><Font>" +
           parameter("font-size", "10") + "</Font><Halo><Radius>1</Radius><Fill>" +
           parameter("fill", "#ffffff") + "</Fill></Halo><Fill>" + parameter("fill", "#1e1e1e") +
           "</Fill></TextSymbolizer></Rule>\n";
}

}  // namespace

std::string style_as_sld(const LayerStyle& style) {
    std::string text = fmt::format(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<StyledLayerDescriptor version=\"1.0.0\" xmlns=\"http://www.opengis.net/sld\" "
        "xmlns:ogc=\"http://www.opengis.net/ogc\">\n"
        "<NamedLayer><Name>{0}</Name><UserStyle><Name>{0}</Name><IsDefault>1</IsDefault><FeatureTypeStyle>\n",
        style.layer);
    for (const CategoryStyle& look : style.categories) {
        text += fmt::format(
            "<Rule><Name>{0}</Name><Title>{1}</Title><ogc:Filter><ogc:PropertyIsEqualTo>"
            "<ogc:PropertyName>{2}</ogc:PropertyName><ogc:Literal>{0}</ogc:Literal>"
            "</ogc:PropertyIsEqualTo></ogc:Filter>\n{3}</Rule>\n",
            look.value, look.label, style.field, symbolizers(style, look));
    }
    return text + label_rule(style) +
           "</FeatureTypeStyle></UserStyle></NamedLayer>\n</StyledLayerDescriptor>\n";
}

}  // namespace landwidth
