#include "courses/reading/ogr_shapes.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "courses/text.hpp"
#include "geometry/error.hpp"
#include "geometry/units.hpp"

namespace landwidth {

namespace {

LonLatPath path_of(const OGRSimpleCurve& curve) {
    LonLatPath path;
    path.reserve(static_cast<std::size_t>(curve.getNumPoints()));
    for (int i = 0; i < curve.getNumPoints(); ++i)
        path.push_back({curve.getX(i), curve.getY(i)});
    return path;
}

void collect(const OGRGeometry& geometry, ShapeParts& parts) {
    switch (wkbFlatten(geometry.getGeometryType())) {
        case wkbPoint: {
            const OGRPoint& point = *geometry.toPoint();
            if (point.IsEmpty()) {
                parts.empty_point = true;
            } else {
                parts.points.push_back({point.getX(), point.getY()});
            }
            break;
        }
        case wkbLineString:
            parts.paths.push_back(path_of(*geometry.toLineString()));
            break;
        case wkbPolygon:
        case wkbTriangle: {
            const OGRPolygon& polygon = *geometry.toPolygon();
            if (polygon.getExteriorRing() == nullptr) break;
            LonLatPolygon& result = parts.polygons.emplace_back();
            result.outer = path_of(*polygon.getExteriorRing());
            for (int i = 0; i < polygon.getNumInteriorRings(); ++i)
                result.inners.push_back(path_of(*polygon.getInteriorRing(i)));
            break;
        }
        case wkbMultiPoint:
        case wkbMultiLineString:
        case wkbMultiPolygon:
        case wkbGeometryCollection: {
            for (const OGRGeometry* part : *geometry.toGeometryCollection())
                collect(*part, parts);
            break;
        }
        case wkbPolyhedralSurface:
        case wkbTIN: {
            for (const OGRPolygon* part : *geometry.toPolyhedralSurface())
                collect(*part, parts);
            break;
        }
        default:
            break;
    }
}

bool is_wgs84_degrees(const OGRSpatialReference& crs) {
    if (crs.GetAxisMappingStrategy() != OAMS_TRADITIONAL_GIS_ORDER || !crs.IsGeographic()) return false;
    const char* authority = crs.GetAuthorityName(nullptr);
    const char* code = crs.GetAuthorityCode(nullptr);
    if (authority == nullptr || code == nullptr) return false;
    return (EQUAL(authority, "EPSG") && EQUAL(code, "4326")) ||
           (EQUAL(authority, "OGC") && EQUAL(code, "CRS84"));
}

// GeoPackage's two reference systems for "unknown".
bool is_undefined(const OGRSpatialReference& crs) {
    const char* name = crs.GetName();
    return name == nullptr || std::string_view(name).starts_with("Undefined ");
}

std::string coordinate_text(double value) {
    char text[40];
    std::snprintf(text, sizeof text, "%.10g", value);
    return text;
}

}  // namespace

ShapeParts parts_of(const OGRGeometry& geometry) {
    ShapeParts parts;
    if (geometry.hasCurveGeometry(FALSE)) {
        const std::unique_ptr<OGRGeometry> linear(geometry.getLinearGeometry());
        if (linear) collect(*linear, parts);
    } else {
        collect(geometry, parts);
    }
    return parts;
}

std::optional<LonLat> any_place(const ShapeParts& parts) {
    if (!parts.points.empty()) return parts.points.front();
    for (const LonLatPath& path : parts.paths) {
        if (!path.empty()) return path.front();
    }
    for (const LonLatPolygon& polygon : parts.polygons) {
        if (!polygon.outer.empty()) return polygon.outer.front();
    }
    return std::nullopt;
}

bool reaches_too_far(const ShapeParts& parts) {
    constexpr double furthest_deg = 0.2;
    const auto far = [](const LonLatPath& path) {
        return std::any_of(path.begin(), path.end(), [&path](const LonLat& place) {
            const double east = std::remainder(place.lon_deg - path.front().lon_deg, 360.0) *
                                std::cos(place.lat_deg * radians_per_degree);
            return std::abs(east) > furthest_deg ||
                   std::abs(place.lat_deg - path.front().lat_deg) > furthest_deg;
        });
    };
    return std::any_of(parts.polygons.begin(), parts.polygons.end(),
                       [&far](const LonLatPolygon& polygon) { return far(polygon.outer); });
}

Finding shape_huge(const MapFeature& feature, const ShapeParts& parts) {
    return {Severity::warning,
            "shape-huge",
            feature.label(),
            "",
            any_place(parts),
            tag_words(feature.tags) +
                " reaches further than any course, so that a point of it must be misplaced; it is left out",
            "correct the misplaced point"};
}

Finding shape_missing(const MapFeature& feature) {
    return {severity_of_loss(role_of(feature.tags)),
            "shape-missing",
            feature.label(),
            "",
            std::nullopt,
            tag_words(feature.tags) + " has no shape and is left out",
            "draw it or remove the feature"};
}

Finding relation_unused(const MapFeature& feature, std::optional<LonLat> place) {
    return {Severity::note,
            "relation-unused",
            feature.label(),
            "",
            place,
            tag_words(feature.tags) + " is a relation that is no multipolygon; it is not used",
            "tag the members themselves, or make it a multipolygon"};
}

ToWgs84::ToWgs84(const OGRSpatialReference* crs, const std::string& place) {
    if (crs == nullptr || is_undefined(*crs)) {
        crs_missing_ = true;
        return;
    }
    if (is_wgs84_degrees(*crs)) return;
    OGRSpatialReference wgs84;
    wgs84.SetWellKnownGeogCS("WGS84");
    wgs84.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    transformation_.reset(OGRCreateCoordinateTransformation(crs, &wgs84));
    if (!transformation_) {
        const char* name = crs->GetName();
        throw InputError(place, std::string("its coordinate reference system") +
                                    (name != nullptr ? " (" + std::string(name) + ")" : "") +
                                    " cannot be turned into longitude and latitude; save the map in WGS 84");
    }
}

void ToWgs84::refuse(LonLat raw, const std::string& place) const {
    const std::string pair =
        "the coordinate (" + coordinate_text(raw.lon_deg) + ", " + coordinate_text(raw.lat_deg) + ") ";
    if (!std::isfinite(raw.lon_deg) || !std::isfinite(raw.lat_deg))
        throw InputError(place, pair + "is not a finite number; correct or remove the feature");
    if (crs_missing_)
        throw InputError(place,
                         pair +
                             "is not in degrees and the layer has no coordinate reference system; save "
                             "it with one (a Shapefile needs its .prj)");
    if (transformation_)
        throw InputError(place, pair +
                                    "has no place on the earth in the layer's coordinate reference system; "
                                    "correct it or the coordinate reference system");
    throw InputError(place, pair +
                                "is not a longitude and latitude; if the map is in metres, save it with the "
                                "coordinate reference system it is in");
}

void ToWgs84::apply(LonLatPath& path, const std::string& place) const {
    const LonLatPath raw = path;
    for (const LonLat& point : raw) {
        if (!std::isfinite(point.lon_deg) || !std::isfinite(point.lat_deg)) refuse(point, place);
    }
    if (transformation_) {
        for (LonLat& point : path) {
            const LonLat before = point;
            int success = FALSE;
            transformation_->Transform(1, &point.lon_deg, &point.lat_deg, nullptr, &success);
            if (success == FALSE) refuse(before, place);
        }
    }
    for (std::size_t i = 0; i < path.size(); ++i) {
        const bool on_earth = std::abs(path[i].lon_deg) <= 360.0 && std::abs(path[i].lat_deg) <= 90.0;
        if (!on_earth) refuse(raw[i], place);
    }
}

void ToWgs84::apply(ShapeParts& parts, const std::string& place) const {
    apply(parts.points, place);
    for (LonLatPath& path : parts.paths)
        apply(path, place);
    for (LonLatPolygon& polygon : parts.polygons) {
        apply(polygon.outer, place);
        for (LonLatPath& inner : polygon.inners)
            apply(inner, place);
    }
}

}  // namespace landwidth
