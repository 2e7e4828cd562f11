// A plan as map layers: what GeoJSON and GeoPackage both write.
//
// Shapes are WGS 84 longitude, latitude, rounded to 1e-8 degrees (about a millimetre), rings right-handed
// (outer ones counterclockwise) and cut at the antimeridian, as RFC 7946 asks. Fields carry their unit in
// their name and are always yards, whatever the view's units; labels follow the view.
#pragma once

#include <ogr_geometry.h>

#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// monostate: not applicable here, a null in the file.
using FieldValue = std::variant<std::monostate, std::string, int, double, bool>;

struct PlanFeature {
    OGRGeometryUniquePtr shape;
    std::vector<std::pair<std::string, FieldValue>> fields;  // the same names in every feature of a layer
    std::string category;                                    // see layer_style.hpp
    std::string title;                                       // for a pop-up
};

struct PlanLayer {
    std::string name;
    std::string description;
    OGRwkbGeometryType shape_type;
    // In drawing order: what comes later lies on top.
    std::vector<PlanFeature> features;
};

// lies, landing_ellipses, landing_widths, aim_lines: in drawing order. A layer without features stays.
std::vector<PlanLayer> plan_layers(const PlanView& view);

}  // namespace landwidth
