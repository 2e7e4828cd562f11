#include "geometry/region.hpp"

#include <algorithm>
#include <limits>
#include <stdexcept>

#include "geometry/region_shape.hpp"

namespace landwidth {
namespace {

bool apart(const Box& a, const Box& b) {
    return a.max.x < b.min.x || b.max.x < a.min.x || a.max.y < b.min.y || b.max.y < a.min.y;
}

Box bounds_of(const GEOSGeometry* geometry) {
    Box box;
    const bool known = GEOSGeom_getXMin_r(geos(), geometry, &box.min.x) == 1 &&
                       GEOSGeom_getYMin_r(geos(), geometry, &box.min.y) == 1 &&
                       GEOSGeom_getXMax_r(geos(), geometry, &box.max.x) == 1 &&
                       GEOSGeom_getYMax_r(geos(), geometry, &box.max.y) == 1;
    if (!known) throw_geos_trouble();
    return box;
}

template <typename Visit>
void for_each_ring(const GEOSGeometry* polygon, const Visit& visit) {
    visit(GEOSGetExteriorRing_r(geos(), polygon));
    const int inners = GEOSGetNumInteriorRings_r(geos(), polygon);
    for (int i = 0; i < inners; ++i)
        visit(GEOSGetInteriorRingN_r(geos(), polygon, i));
}

PolygonRings rings_of(const GEOSGeometry* polygon) {
    PolygonRings rings;
    for_each_ring(polygon, [&](const GEOSGeometry* ring) {
        Ring points = points_of(ring);
        if (rings.outer.empty()) {
            rings.outer = std::move(points);
        } else {
            rings.inners.push_back(std::move(points));
        }
    });
    return rings;
}

}  // namespace

Region::Shape::Shape(GeosPtr polygonal) : geometry(std::move(polygonal)), bounds(bounds_of(geometry.get())) {
    for_each_polygon(geometry.get(), [](const GEOSGeometry* polygon) {
        bounds_of(polygon);
        for_each_ring(polygon, [](const GEOSGeometry* ring) { bounds_of(ring); });
    });
}

const EdgeBands& Region::Shape::edges() const {
    std::call_once(edges_made_, [&] {
        std::vector<EdgeBands::Edge> edges;
        for_each_polygon(geometry.get(),
                         [&](const GEOSGeometry* polygon) { append_edges({rings_of(polygon)}, 0, edges); });
        edges_.emplace(std::move(edges));
    });
    return *edges_;
}

Region GeosAccess::region(GeosPtr geometry) {
    const int type = GEOSGeomTypeId_r(geos(), geometry.get());
    if (type != GEOS_POLYGON && type != GEOS_MULTIPOLYGON) {
        std::vector<GeosPtr> polygons;
        for_each_polygon(geometry.get(),
                         [&](const GEOSGeometry* polygon) { polygons.push_back(geos_copy(polygon)); });
        geometry = polygons.size() == 1 ? std::move(polygons.front())
                                        : geos_collection(GEOS_MULTIPOLYGON, std::move(polygons));
    }
    if (answer_of(GEOSisEmpty_r(geos(), geometry.get()))) return {};
    return Region(std::make_shared<const Region::Shape>(std::move(geometry)));
}

Region::Region(std::shared_ptr<const Shape> shape) : shape_(std::move(shape)) {}

bool Region::empty() const {
    return shape_ == nullptr;
}

double Region::area() const {
    if (empty()) return 0.0;
    double area = 0.0;
    if (GEOSArea_r(geos(), shape_->geometry.get(), &area) != 1) throw_geos_trouble();
    return area;
}

Box Region::bounds() const {
    if (empty()) throw std::logic_error("the empty region has no bounds");
    return shape_->bounds;
}

bool Region::contains(Point p) const {
    return !empty() && shape_->bounds.contains(p) && shape_->edges().at(p) != 0;
}

double Region::distance_to(Point p) const {
    if (empty()) return std::numeric_limits<double>::infinity();
    require_on_earth({&p, 1}, "the point to measure from");
    if (contains(p)) return 0.0;
    double nearest = std::numeric_limits<double>::infinity();
    for (const EdgeBands::Edge& edge : shape_->edges().edges()) {
        const Point step = edge.high - edge.low;
        const double along = std::clamp(dot(p - edge.low, step) / dot(step, step), 0.0, 1.0);
        nearest = std::min(nearest, distance(p, edge.low + along * step));
    }
    return nearest;
}

bool Region::meets(const Region& other) const {
    if (empty() || other.empty() || apart(bounds(), other.bounds())) return false;
    return answer_of(GEOSIntersects_r(geos(), shape_->geometry.get(), other.shape_->geometry.get()));
}

Region Region::grown(double by_m) const {
    if (!std::isfinite(by_m))
        throw std::invalid_argument("a region cannot grow by a length that is not finite");
    if (empty() || by_m == 0.0) return *this;
    return GeosAccess::region(
        owned(GEOSBuffer_r(geos(), shape_->geometry.get(), by_m, buffer_segments_per_quadrant)));
}

Region Region::common_with(const Region& other) const {
    if (empty() || other.empty() || apart(bounds(), other.bounds())) return {};
    return GeosAccess::region(
        owned(GEOSIntersection_r(geos(), shape_->geometry.get(), other.shape_->geometry.get())));
}

Region Region::without(const Region& other) const {
    if (empty() || other.empty() || apart(bounds(), other.bounds())) return *this;
    return GeosAccess::region(
        owned(GEOSDifference_r(geos(), shape_->geometry.get(), other.shape_->geometry.get())));
}

Region Region::joined_with(const Region& other) const {
    if (other.empty()) return *this;
    if (empty()) return other;
    return GeosAccess::region(
        owned(GEOSUnion_r(geos(), shape_->geometry.get(), other.shape_->geometry.get())));
}

Region Region::united(std::span<const Region> regions) {
    std::vector<GeosPtr> parts;
    const Region* last = nullptr;
    int covering = 0;
    for (const Region& region : regions) {
        if (region.empty()) continue;
        last = &region;
        ++covering;
        for_each_polygon(GeosAccess::geometry(region),
                         [&](const GEOSGeometry* polygon) { parts.push_back(geos_copy(polygon)); });
    }
    if (covering == 0) return {};
    if (covering == 1) return *last;
    const GeosPtr all = geos_collection(GEOS_MULTIPOLYGON, std::move(parts));
    return GeosAccess::region(owned(GEOSUnaryUnion_r(geos(), all.get())));
}

Region Region::simplified(double tolerance_m) const {
    if (!(tolerance_m >= 0.0)) throw std::invalid_argument("the tolerance of a simplified region is below 0");
    if (empty()) return {};
    return GeosAccess::region(
        owned(GEOSTopologyPreserveSimplify_r(geos(), shape_->geometry.get(), tolerance_m)));
}

std::vector<PolygonRings> Region::polygons() const {
    std::vector<PolygonRings> polygons;
    if (empty()) return polygons;
    for_each_polygon(shape_->geometry.get(),
                     [&](const GEOSGeometry* polygon) { polygons.push_back(rings_of(polygon)); });
    return polygons;
}

std::vector<Stretch> Region::stretches(Point from, Point to) const {
    const Point ends[] = {from, to};
    require_on_earth(ends, "the ends of a path");
    std::vector<Stretch> inside;
    if (empty() || distance(from, to) <= shortest_stretch_m) return inside;
    const Point along = unit(to - from);
    for_each_stretch(shape_->edges().cuts(from, to), [&](double from_m, double to_m) {
        if (!contains(from + 0.5 * (from_m + to_m) * along)) return;
        if (!inside.empty() && inside.back().to_m == from_m) {
            inside.back().to_m = to_m;
        } else {
            inside.push_back({from_m, to_m});
        }
    });
    return inside;
}

}  // namespace landwidth
