#include <nlohmann/json.hpp>

#include "planner/reports/layer_style.hpp"
#include "planner/reports/plan_layers.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

Json json_positions(const OGRSimpleCurve& curve) {
    Json positions = Json::array();
    for (const OGRPoint& point : curve) {
        positions.push_back({rounded(point.getX(), 8), rounded(point.getY(), 8)});
    }
    return positions;
}

Json json_rings(const OGRPolygon& polygon) {
    Json rings = Json::array();
    for (const OGRLinearRing* ring : polygon)
        rings.push_back(json_positions(*ring));
    return rings;
}

// Single shapes where there is one part, since more programs style those.
Json json_shape(const OGRGeometry& shape) {
    Json parts = Json::array();
    std::string type;
    if (wkbFlatten(shape.getGeometryType()) == wkbMultiPolygon) {
        type = "Polygon";
        for (const OGRPolygon* polygon : *shape.toMultiPolygon())
            parts.push_back(json_rings(*polygon));
    } else {
        type = "LineString";
        for (const OGRLineString* line : *shape.toMultiLineString())
            parts.push_back(json_positions(*line));
    }
    if (parts.size() == 1) return {{"type", type}, {"coordinates", parts.front()}};
    return {{"type", "Multi" + type}, {"coordinates", std::move(parts)}};
}

Json json_value(const FieldValue& value) {
    return std::visit(
        [](const auto& held) -> Json {
            if constexpr (std::is_same_v<std::decay_t<decltype(held)>, std::monostate>) {
                return nullptr;
            } else {
                return held;
            }
        },
        value);
}

// The open simplestyle convention: what a map viewer without styles of its own goes by.
void add_simplestyle(Json& properties, const LayerStyle& style, const PlanFeature& feature) {
    const CategoryStyle& look = category_of(style, feature.category);
    properties["title"] = feature.title;
    properties["stroke"] = look.stroke;
    properties["stroke-width"] = look.stroke_px;
    properties["stroke-opacity"] = look.stroke_px > 0.0 ? 1.0 : 0.0;
    if (!style.areas) return;
    properties["fill"] = look.fill;
    properties["fill-opacity"] = look.fill_opacity;
}

Json json_feature(const PlanLayer& layer, const PlanFeature& feature) {
    Json properties{{"layer", layer.name}};
    for (const auto& [name, value] : feature.fields)
        properties[name] = json_value(value);
    add_simplestyle(properties, layer_style(layer.name), feature);
    return {
        {"type", "Feature"}, {"properties", std::move(properties)}, {"geometry", json_shape(*feature.shape)}};
}

}  // namespace

std::string plan_geojson(const PlanView& view) {
    // A feature a line: readable, and half the size of indenting every coordinate.
    std::string text = "{\"type\": \"FeatureCollection\", \"features\": [";
    const char* separator = "\n";
    for (const PlanLayer& layer : plan_layers(view)) {
        for (const PlanFeature& feature : layer.features) {
            text += separator;
            text += json_feature(layer, feature).dump(-1, ' ', false, Json::error_handler_t::replace);
            separator = ",\n";
        }
    }
    return text + "\n]}\n";
}

}  // namespace landwidth
