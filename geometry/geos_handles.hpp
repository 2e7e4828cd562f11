// GEOS's reentrant C API in owning types. Private to this room.
//
// Every thread has its own context; a geometry may be read and let go by any thread. What GEOS has to say
// about a failure becomes the text of a std::runtime_error.
#pragma once

#include <geos_c.h>

#include <memory>
#include <span>
#include <vector>

#include "geometry/point.hpp"

namespace landwidth {

// This thread's context.
GEOSContextHandle_t geos();

struct GeosDeleter {
    void operator()(GEOSGeometry* geometry) const noexcept;
    void operator()(GEOSBufferParams* params) const noexcept;
    void operator()(GEOSMakeValidParams* params) const noexcept;
    void operator()(char* text) const noexcept;
};
using GeosPtr = std::unique_ptr<GEOSGeometry, GeosDeleter>;

// Throws std::runtime_error with GEOS's own words.
[[noreturn]] void throw_geos_trouble();

// Takes over what a GEOS call returned; throws when it returned nothing.
template <typename T>
std::unique_ptr<T, GeosDeleter> owned(T* from_geos) {
    if (from_geos == nullptr) throw_geos_trouble();
    return std::unique_ptr<T, GeosDeleter>(from_geos);
}

// The answer of a GEOS predicate (0, 1; 2 is trouble).
bool answer_of(char from_geos);

GeosPtr geos_copy(const GEOSGeometry* geometry);

// Rounded edges are polygons with their corners on the circle: 16 a quadrant is 0.16 % short of a disc's
// area.
inline constexpr int buffer_segments_per_quadrant = 16;

// The parts of a collection, in one owner. GEOS takes the parts over.
GeosPtr geos_collection(int type, std::vector<GeosPtr> parts);

GeosPtr geos_point(Point p);
// A path of at least two points.
GeosPtr geos_line(std::span<const Point> path);
// Rings of at least three distinct points, closed or not.
GeosPtr geos_polygon(const PolygonRings& rings);

std::vector<Point> points_of(const GEOSGeometry* line_or_ring);

// Calls visit(const GEOSGeometry* polygon) for every polygon in a geometry of any type.
template <typename Visit>
void for_each_polygon(const GEOSGeometry* geometry, const Visit& visit) {
    const int type = GEOSGeomTypeId_r(geos(), geometry);
    if (type == GEOS_POLYGON) {
        if (GEOSisEmpty_r(geos(), geometry) == 0) visit(geometry);
    } else if (type == GEOS_MULTIPOLYGON || type == GEOS_GEOMETRYCOLLECTION) {
        const int parts = GEOSGetNumGeometries_r(geos(), geometry);
        for (int i = 0; i < parts; ++i)
            for_each_polygon(GEOSGetGeometryN_r(geos(), geometry, i), visit);
    }
}

}  // namespace landwidth
