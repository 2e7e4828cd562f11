#include "planner/reports/geojson_writing.hpp"

#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

Json json_position(const OGRPoint& point, int decimals) {
    return {rounded(point.getX(), decimals), rounded(point.getY(), decimals)};
}

Json json_positions(const OGRSimpleCurve& curve, int decimals) {
    Json positions = Json::array();
    for (const OGRPoint& point : curve)
        positions.push_back(json_position(point, decimals));
    return positions;
}

Json json_rings(const OGRPolygon& polygon, int decimals) {
    Json rings = Json::array();
    for (const OGRLinearRing* ring : polygon)
        rings.push_back(json_positions(*ring, decimals));
    return rings;
}

}  // namespace

Json geojson_shape(const OGRGeometry* shape, int decimals) {
    if (shape == nullptr) return nullptr;
    Json parts = Json::array();
    std::string type;
    switch (wkbFlatten(shape->getGeometryType())) {
        case wkbPoint:
            return {{"type", "Point"}, {"coordinates", json_position(*shape->toPoint(), decimals)}};
        case wkbMultiPolygon:
            type = "Polygon";
            for (const OGRPolygon* polygon : *shape->toMultiPolygon())
                parts.push_back(json_rings(*polygon, decimals));
            break;
        default:
            type = "LineString";
            for (const OGRLineString* line : *shape->toMultiLineString())
                parts.push_back(json_positions(*line, decimals));
    }
    if (parts.size() == 1) return {{"type", type}, {"coordinates", parts.front()}};
    return {{"type", "Multi" + type}, {"coordinates", std::move(parts)}};
}

Json geojson_value(const FieldValue& value) {
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

GeojsonText::GeojsonText(std::string_view head)
    : text_("{\"type\": \"FeatureCollection\", " + std::string(head) + "\"features\": [") {}

void GeojsonText::add(Json properties, Json shape) {
    const Json feature{
        {"type", "Feature"}, {"properties", std::move(properties)}, {"geometry", std::move(shape)}};
    text_ += separator_ + feature.dump(-1, ' ', false, Json::error_handler_t::replace);
    separator_ = ",\n";
}

std::string GeojsonText::finished() && {
    return std::move(text_) + "\n]}\n";
}

}  // namespace landwidth
