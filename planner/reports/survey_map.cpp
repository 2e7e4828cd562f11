// The course written back as a map.
#include <fmt/format.h>

#include <algorithm>

#include "planner/reports/geojson_writing.hpp"
#include "planner/reports/geopackage_writing.hpp"
#include "planner/reports/survey_layers.hpp"
#include "planner/reports/survey_reports.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

// A hundredth of a millimetre: what is read again gives the same figures.
constexpr int degree_decimals = 10;

std::string box_text(const MapExtent& box) {
    return fmt::format("{},{},{},{}", box.west, box.south, box.east, box.north);
}

// How far the map reaches, and the credit: before the features, where reading looks for them.
std::string head_of(const MapData& map) {
    std::string head;
    if (const auto box = map.stated_extent()) head += "\"bbox\": [" + box_text(*box) + "], ";
    std::string credit = map.attribution;
    std::ranges::replace(credit, '"', '\'');
    if (!credit.empty())
        head +=
            "\"attribution\": " + Json(credit).dump(-1, ' ', false, Json::error_handler_t::replace) + ", ";
    return head;
}

Json properties_of(const VectorFeature& feature) {
    Json properties = Json::object();
    for (const auto& [name, value] : feature.fields) {
        if (!std::holds_alternative<std::monostate>(value)) properties[name] = geojson_value(value);
    }
    return properties;
}

}  // namespace

std::string survey_geojson(const MapData& map, const Course& course) {
    GeojsonText text(head_of(map));
    for (const VectorLayer& layer : survey_layers(map, course)) {
        for (const VectorFeature& feature : layer.features)
            text.add(properties_of(feature), geojson_shape(feature.shape.get(), degree_decimals));
    }
    return std::move(text).finished();
}

void write_survey_geopackage(const MapData& map, const Course& course, const std::filesystem::path& path) {
    GeopackageExtras extras;
    if (!map.attribution.empty()) extras.metadata.emplace_back("attribution", map.attribution);
    if (const auto box = map.stated_extent()) extras.metadata.emplace_back("bbox", box_text(*box));
    write_geopackage(path, survey_layers(map, course), extras);
}

}  // namespace landwidth
