// Shapes out of OGR geometries: flat, linear, in WGS 84 degrees, in the form their tags ask for.
#pragma once

#include <ogr_geometry.h>
#include <ogr_spatialref.h>

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "courses/finding.hpp"
#include "courses/tags/map_feature.hpp"
#include "courses/tags/vocabulary.hpp"

namespace landwidth {

// The parts of one geometry, sorted by kind. Z is dropped, curves are made linear.
struct ShapeParts {
    std::vector<LonLat> points;
    std::vector<LonLatPath> paths;
    std::vector<LonLatPolygon> polygons;
    bool empty_point = false;  // a point without coordinates, or with some that are no numbers
};
ShapeParts parts_of(const OGRGeometry& geometry);
// Any place of them, to point at; absent when they have none.
std::optional<LonLat> any_place(const ShapeParts& parts);
// Whether a point of an area lies more than a fifth of a degree from its first one, which is 22 km from south
// to north: a misplaced point, often at (0, 0). Holes of such a length are reported when they are put
// together.
bool reaches_too_far(const ShapeParts& parts);
// The findings for such a feature, for one without any point, and for a relation that is no multipolygon; all
// are left out.
Finding shape_huge(const MapFeature& feature, const ShapeParts& parts);
Finding shape_missing(const MapFeature& feature);
Finding relation_unused(const MapFeature& feature, std::optional<LonLat> place);

// Brings the coordinates of a layer to WGS 84 longitude, latitude.
class ToWgs84 {
  public:
    // Throws InputError (naming `place`) for a CRS that cannot be transformed.
    ToWgs84(const OGRSpatialReference* crs, const std::string& place);

    // Absent CRS: the coordinates are taken for degrees.
    bool crs_missing() const { return crs_missing_; }
    // Throws InputError, naming `place`, when a coordinate is not finite or not on the earth.
    void apply(ShapeParts& parts, const std::string& place) const;

  private:
    void apply(LonLatPath& path, const std::string& place) const;
    [[noreturn]] void refuse(LonLat raw, const std::string& place) const;

    struct Destroy {
        void operator()(OGRCoordinateTransformation* transformation) const {
            OGRCoordinateTransformation::DestroyCT(transformation);
        }
    };
    std::unique_ptr<OGRCoordinateTransformation, Destroy> transformation_;
    bool crs_missing_ = false;
};

// The shapes of a feature: closed lines become areas where the form asks for one; what does not fit the form
// (an open line for a green) is dropped. Every change is a finding.
//
// Rules: a line counts as closed when its ends are the same point; a gap of at most 10 m and a tenth of the
// line is closed with a warning. A ring of fewer than three different points is dropped with a warning.
std::vector<MapShape> shapes_in_form(ShapeParts&& parts, Form form, const MapFeature& feature,
                                     std::vector<Finding>& findings);

}  // namespace landwidth
