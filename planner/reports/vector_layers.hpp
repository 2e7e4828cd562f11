// Layers of a map on their way into a file: what GeoJSON and GeoPackage both write.
//
// Shapes are WGS 84 longitude, latitude. Fields carry their unit in their name.
#pragma once

#include <ogr_geometry.h>

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace landwidth {

// monostate: not applicable here, a null in the file.
using FieldValue = std::variant<std::monostate, std::string, int, double, bool>;

struct VectorFeature {
    OGRGeometryUniquePtr shape;                              // null: a feature without a shape
    std::vector<std::pair<std::string, FieldValue>> fields;  // the same names in every feature of a layer
    std::string category;                                    // see layer_style.hpp; empty without a style
    std::string title;                                       // for a pop-up
};

struct VectorLayer {
    std::string name;
    std::string description;
    OGRwkbGeometryType shape_type;
    // In drawing order: what comes later lies on top.
    std::vector<VectorFeature> features;
};

}  // namespace landwidth
