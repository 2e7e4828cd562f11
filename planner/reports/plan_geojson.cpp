#include "planner/reports/geojson_writing.hpp"
#include "planner/reports/layer_style.hpp"
#include "planner/reports/plan_layers.hpp"
#include "planner/reports/plan_reports.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

constexpr int degree_decimals = 8;

// The open simplestyle convention: what a map viewer without styles of its own goes by.
void add_simplestyle(Json& properties, const LayerStyle& style, const VectorFeature& feature) {
    const CategoryStyle& look = category_of(style, feature.category);
    properties["title"] = feature.title;
    properties["stroke"] = look.stroke;
    properties["stroke-width"] = look.stroke_px;
    properties["stroke-opacity"] = look.stroke_px > 0.0 ? 1.0 : 0.0;
    if (!style.areas) return;
    properties["fill"] = look.fill;
    properties["fill-opacity"] = look.fill_opacity;
}

Json properties_of(const VectorLayer& layer, const VectorFeature& feature) {
    Json properties{{"layer", layer.name}};
    for (const auto& [name, value] : feature.fields)
        properties[name] = geojson_value(value);
    add_simplestyle(properties, layer_style(layer.name), feature);
    return properties;
}

}  // namespace

std::string plan_geojson(const PlanView& view) {
    GeojsonText text;
    for (const VectorLayer& layer : plan_layers(view)) {
        for (const VectorFeature& feature : layer.features)
            text.add(properties_of(layer, feature), geojson_shape(feature.shape.get(), degree_decimals));
    }
    return std::move(text).finished();
}

}  // namespace landwidth
