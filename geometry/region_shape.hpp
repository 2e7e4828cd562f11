// What a Region shares between its copies, and the way between Region and GEOS. Private to this room.
#pragma once

#include <mutex>
#include <optional>

#include "geometry/edge_bands.hpp"
#include "geometry/geos_handles.hpp"
#include "geometry/region.hpp"

namespace landwidth {

struct Region::Shape {
    // Valid, polygonal, not empty. GEOS works bounds out when first asked and keeps them: asked here, so that
    // no later read writes.
    explicit Shape(GeosPtr polygonal);

    // Made when first needed: most regions are only a step on the way to another.
    const EdgeBands& edges() const;

    GeosPtr geometry;
    Box bounds;

  private:
    mutable std::once_flag edges_made_;
    mutable std::optional<EdgeBands> edges_;
};

struct GeosAccess {
    // Keeps the polygons and leaves out lines and points.
    static Region region(GeosPtr geometry);
    // Of a region that is not empty.
    static const GEOSGeometry* geometry(const Region& region) { return region.shape_->geometry.get(); }
};

// Throws std::invalid_argument naming `what` when a coordinate is not finite or further away than any place
// on earth.
void require_on_earth(std::span<const Point> points, const char* what);

}  // namespace landwidth
