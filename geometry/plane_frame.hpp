// The local plane of a hole: metres east and north of an origin on the WGS 84 ellipsoid.
//
// An azimuthal equidistant projection (GeographicLib): distances and directions from the origin are those of
// the geodesic; between two other points within 1 km of the origin a distance is true to better than 1e-7,
// anywhere on earth, the poles and the antimeridian included. Not for anything larger than a course.
#pragma once

#include "geometry/point.hpp"
#include "geometry/units.hpp"

namespace landwidth {

// Degrees, WGS 84; longitude any turn, latitude in [-90, 90].
struct LonLat {
    double lon_deg = 0.0;
    double lat_deg = 0.0;
    friend constexpr bool operator==(const LonLat&, const LonLat&) = default;
};

class PlaneFrame {
  public:
    // Throws std::invalid_argument when the origin is not finite or the latitude out of range.
    explicit PlaneFrame(LonLat origin);

    LonLat origin() const { return origin_; }
    // Throws std::invalid_argument for a place that is not on earth.
    Point to_plane(LonLat place) const;
    // Longitude in [-180, 180].
    LonLat to_lonlat(Point point) const;
    // The true bearing at `from` of the geodesic to `to` (the plane's own north is true only at the origin);
    // 0 when the two are one.
    Bearing true_bearing(Point from, Point to) const;

  private:
    LonLat origin_;
};

// The geodesic distance on the ellipsoid in metres. Throws std::invalid_argument for a place not on earth.
double geodesic_distance(LonLat a, LonLat b);

}  // namespace landwidth
