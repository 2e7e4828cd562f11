#include "planner/reports/layer_shapes.hpp"

#include <cmath>
#include <memory>
#include <stdexcept>

#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

constexpr int degree_decimals = 8;

// Longitudes that run on across the antimeridian (180.001, not -179.999), so that a shape stays in one piece
// until it is cut.
void add_point(OGRSimpleCurve& curve, const PlaneFrame& frame, Point point) {
    const LonLat place = frame.to_lonlat(point);
    const double origin = frame.origin().lon_deg;
    const double longitude = origin + std::remainder(place.lon_deg - origin, 360.0);
    curve.addPoint(rounded(longitude, degree_decimals), rounded(place.lat_deg, degree_decimals));
}

// Null for a ring that encloses nothing.
std::unique_ptr<OGRLinearRing> lonlat_ring(const PlaneFrame& frame, const Ring& ring) {
    auto made = std::make_unique<OGRLinearRing>();
    for (const Point point : ring)
        add_point(*made, frame, point);
    made->closeRings();
    if (made->getNumPoints() < 4 || !(made->get_Area() > 0.0)) return nullptr;
    return made;
}

void shift_longitudes(OGRGeometry& geometry, double by_deg) {
    class Shift : public OGRDefaultGeometryVisitor {
      public:
        explicit Shift(double by) : by_(by) {}
        using OGRDefaultGeometryVisitor::visit;
        void visit(OGRPoint* point) override { point->setX(rounded(point->getX() + by_, degree_decimals)); }

      private:
        double by_;
    };
    Shift shift(by_deg);
    geometry.accept(&shift);
}

// After this every longitude is in [-180, 180].
OGRGeometryUniquePtr cut_at_antimeridian(OGRGeometryUniquePtr geometry) {
    OGREnvelope extent;
    geometry->getEnvelope(&extent);
    if (extent.MinX < -180.0) {
        shift_longitudes(*geometry, 360.0);
        geometry->getEnvelope(&extent);
    }
    if (extent.MaxX <= 180.0) return geometry;
    if (extent.MinX >= 180.0) {
        shift_longitudes(*geometry, -360.0);
        return geometry;
    }
    char wrap[] = "WRAPDATELINE=YES";
    char* options[] = {wrap, nullptr};
    OGRGeometryUniquePtr cut(OGRGeometryFactory::transformWithOptions(geometry.get(), nullptr, options));
    if (!cut) throw std::runtime_error("GDAL could not cut a shape at the antimeridian");
    return cut;
}

OGRGeometryUniquePtr as_multi(OGRGeometryUniquePtr geometry, OGRwkbGeometryType type) {
    return OGRGeometryUniquePtr(OGRGeometryFactory::forceTo(geometry.release(), type));
}

}  // namespace

OGRGeometryUniquePtr lonlat_areas(const PlaneFrame& frame, const std::vector<PolygonRings>& polygons) {
    auto areas = std::make_unique<OGRMultiPolygon>();
    for (const PolygonRings& rings : polygons) {
        auto outer = lonlat_ring(frame, rings.outer);
        if (!outer) continue;
        OGRPolygon polygon;
        polygon.addRingDirectly(outer.release());
        for (const Ring& inner : rings.inners) {
            if (auto ring = lonlat_ring(frame, inner)) polygon.addRingDirectly(ring.release());
        }
        areas->addGeometry(&polygon);
    }
    if (areas->IsEmpty()) return OGRGeometryUniquePtr(areas.release());
    OGRGeometryUniquePtr cut =
        as_multi(cut_at_antimeridian(OGRGeometryUniquePtr(areas.release())), wkbMultiPolygon);
    for (OGRPolygon* polygon : *cut->toMultiPolygon()) {
        bool outer = true;
        for (OGRLinearRing* ring : *polygon) {
            if ((ring->isClockwise() != 0) == outer) ring->reversePoints();
            outer = false;
        }
    }
    return cut;
}

OGRGeometryUniquePtr lonlat_line(const PlaneFrame& frame, const std::vector<Point>& path) {
    auto line = std::make_unique<OGRLineString>();
    for (const Point point : path)
        add_point(*line, frame, point);
    return as_multi(cut_at_antimeridian(OGRGeometryUniquePtr(line.release())), wkbMultiLineString);
}

}  // namespace landwidth
