// Shapes of a hole's plane as OGR geometries in longitude and latitude, ready for a file.
#pragma once

#include <ogr_geometry.h>

#include <vector>

#include "geometry/plane_frame.hpp"
#include "geometry/region.hpp"

namespace landwidth {

// Always of multi type. Coordinates rounded to 1e-8 degrees; rings that vanish with the rounding are left
// out; outer rings counterclockwise; cut in two where the antimeridian passes through.
OGRGeometryUniquePtr lonlat_areas(const PlaneFrame& frame, const std::vector<PolygonRings>& polygons);
OGRGeometryUniquePtr lonlat_line(const PlaneFrame& frame, const std::vector<Point>& path);

}  // namespace landwidth
