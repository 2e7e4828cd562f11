// Pieces of a GeoJSON file (RFC 7946).
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "planner/reports/vector_layers.hpp"

namespace landwidth {

// Coordinates are rounded to so many decimals. Of a shape of several parts that has one the single form,
// since more programs style those; null without a shape.
nlohmann::ordered_json geojson_shape(const OGRGeometry* shape, int decimals);
nlohmann::ordered_json geojson_value(const FieldValue& value);

// A collection that grows by a feature a line: readable, and half the size of indenting every coordinate.
class GeojsonText {
  public:
    // `head`: members before the features, as JSON with a comma behind each.
    explicit GeojsonText(std::string_view head = {});
    void add(nlohmann::ordered_json properties, nlohmann::ordered_json shape);
    std::string finished() &&;

  private:
    std::string text_;
    const char* separator_ = "\n";
};

}  // namespace landwidth
