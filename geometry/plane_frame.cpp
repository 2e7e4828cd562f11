#include "geometry/plane_frame.hpp"

#include <GeographicLib/AzimuthalEquidistant.hpp>
#include <GeographicLib/Geodesic.hpp>
#include <cmath>
#include <stdexcept>

namespace landwidth {
namespace {

const GeographicLib::AzimuthalEquidistant& projection() {
    static const GeographicLib::AzimuthalEquidistant instance(GeographicLib::Geodesic::WGS84());
    return instance;
}

void require_on_earth(LonLat place) {
    // Written so that NaN fails too.
    if (!(std::abs(place.lat_deg) <= 90.0) || !std::isfinite(place.lon_deg)) {
        throw std::invalid_argument("a place whose longitude or latitude is not on earth");
    }
}

}  // namespace

PlaneFrame::PlaneFrame(LonLat origin) : origin_(origin) {
    require_on_earth(origin);
}

Point PlaneFrame::to_plane(LonLat place) const {
    require_on_earth(place);
    Point p;
    projection().Forward(origin_.lat_deg, origin_.lon_deg, place.lat_deg, place.lon_deg, p.x, p.y);
    return p;
}

LonLat PlaneFrame::to_lonlat(Point point) const {
    LonLat place;
    projection().Reverse(origin_.lat_deg, origin_.lon_deg, point.x, point.y, place.lat_deg, place.lon_deg);
    return place;
}

Bearing PlaneFrame::true_bearing(Point from, Point to) const {
    if (from == to) return {};
    const LonLat a = to_lonlat(from);
    const LonLat b = to_lonlat(to);
    double azimuth_deg = 0.0;
    double azimuth_there_deg = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(a.lat_deg, a.lon_deg, b.lat_deg, b.lon_deg, azimuth_deg,
                                             azimuth_there_deg);
    return Bearing::from_degrees(azimuth_deg);
}

double geodesic_distance(LonLat a, LonLat b) {
    require_on_earth(a);
    require_on_earth(b);
    double metres = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(a.lat_deg, a.lon_deg, b.lat_deg, b.lon_deg, metres);
    return metres;
}

}  // namespace landwidth
