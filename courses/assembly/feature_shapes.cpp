#include "courses/assembly/feature_shapes.hpp"

#include <algorithm>
#include <stdexcept>

#include "courses/assembly/outline_near.hpp"
#include "courses/tags/feature_findings.hpp"

namespace landwidth {

namespace {

// Less ground than this is a trace of rounding, square metres.
constexpr double least_area_m2 = 0.01;

// Twice the signed area of a ring and the moments for its centroid.
void add_ring(const Ring& ring, double sign, double& area, Point& moment) {
    double ring_area = 0.0;
    Point ring_moment;
    const Point start = ring.front();
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i] - start;
        const Point b = ring[(i + 1) % ring.size()] - start;
        const double part = cross(a, b);
        ring_area += part;
        ring_moment = ring_moment + part * (a + b);
    }
    const double turn = ring_area < 0.0 ? -sign : sign;
    area += turn * ring_area;
    moment = moment + turn * (ring_moment + (3.0 * ring_area) * start);
}

Point centroid(const Region& region) {
    double area = 0.0;
    Point moment;
    for (const PolygonRings& polygon : region.polygons()) {
        add_ring(polygon.outer, 1.0, area, moment);
        for (const Ring& inner : polygon.inners)
            add_ring(inner, -1.0, area, moment);
    }
    return (1.0 / (3.0 * area)) * moment;
}

}  // namespace

void RepairLog::add(const MapFeature& feature, const std::string& repair, LonLat place) {
    if (!is_new(feature)) return;
    findings_.push_back(finding_on<"ring-repaired">(feature, place, repair));
}

void RepairLog::add_lost(const MapFeature& feature, LonLat place) {
    if (!is_new(feature)) return;
    findings_.push_back(finding_on<"ring-thin/no-ground">(feature, place));
}

std::vector<Point> PlaneDrawing::path(const LonLatPath& path) const {
    std::vector<Point> points;
    points.reserve(path.size());
    for (const LonLat& place : path)
        points.push_back(frame_.to_plane(place));
    return points;
}

Region::Repaired PlaneDrawing::drawn(const LonLatPolygon& polygon) const {
    PolygonRings rings{path(polygon.outer), {}};
    for (const LonLatPath& inner : polygon.inners)
        rings.inners.push_back(path(inner));
    try {
        return Region::repaired(rings);
    } catch (const std::invalid_argument&) {
        // Points that differ in degrees only (180 and -180) may leave fewer than three places.
        return {};
    }
}

Region PlaneDrawing::area(const MapFeature& feature, const LonLatPolygon& polygon) const {
    Region::Repaired repaired = drawn(polygon);
    if (repaired.region.empty() || repaired.region.area() < least_area_m2) {
        repairs_.add_lost(feature, polygon.outer.front());
        return {};
    }
    if (repaired.repair) {
        repairs_.add(feature, *repaired.repair,
                     repaired.place ? frame_.to_lonlat(*repaired.place) : polygon.outer.front());
    }
    return std::move(repaired.region);
}

AreaNear PlaneDrawing::area_near(const MapFeature& feature, const LonLatPolygon& polygon,
                                 const DegreeBox& here) const {
    if (const std::optional<LonLatPolygon> outline = outline_near(polygon, here)) {
        Region::Repaired near = drawn(*outline);
        // What is not valid by its short cuts, or by itself, is looked at whole.
        if (!near.repair && !near.region.empty()) return {std::move(near.region), rough_area(polygon)};
    }
    Region whole = area(feature, polygon);
    const double whole_m2 = whole.area();
    return {std::move(whole), whole_m2};
}

Region PlaneDrawing::area(const MapFeature& feature) const {
    const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
    if (polygons == nullptr) return {};
    if (polygons->size() == 1) return area(feature, polygons->front());
    std::vector<Region> parts;
    parts.reserve(polygons->size());
    for (const LonLatPolygon& polygon : *polygons)
        parts.push_back(area(feature, polygon));
    return Region::united(parts);
}

std::vector<std::vector<Point>> PlaneDrawing::paths(const MapFeature& feature) const {
    std::vector<std::vector<Point>> result;
    if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&feature.shape)) {
        for (const LonLatPath& one : *paths)
            result.push_back(path(one));
    } else if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape)) {
        for (const LonLatPolygon& polygon : *polygons) {
            std::vector<Point>& ring = result.emplace_back(path(polygon.outer));
            if (ring.front() != ring.back()) ring.push_back(ring.front());
        }
    }
    return result;
}

std::vector<std::vector<Point>> stretches_near(const std::vector<Point>& path, const Box& box) {
    std::vector<std::vector<Point>> stretches;
    bool open = false;
    for (std::size_t i = 1; i < path.size(); ++i) {
        const Point a = path[i - 1];
        const Point b = path[i];
        if (a == b) continue;
        const bool near = std::max(a.x, b.x) >= box.min.x && std::min(a.x, b.x) <= box.max.x &&
                          std::max(a.y, b.y) >= box.min.y && std::min(a.y, b.y) <= box.max.y;
        if (near && !open) stretches.push_back({a});
        if (near) stretches.back().push_back(b);
        open = near;
    }
    return stretches;
}

Point middle_of(const Region& region) {
    const Point centre = centroid(region);
    if (region.contains(centre)) return centre;
    const Box bounds = region.bounds();
    Point best = region.polygons().front().outer.front();
    double widest = 0.0;
    // Across the centroid and, should it lie beside everything, across other heights.
    for (const double share : {0.0, 0.5, 0.25, 0.75, 0.125, 0.875}) {
        const double y = share == 0.0 ? centre.y : bounds.min.y + share * (bounds.max.y - bounds.min.y);
        for (const Stretch& cut : region.stretches({bounds.min.x, y}, {bounds.max.x, y})) {
            if (cut.to_m - cut.from_m <= widest) continue;
            widest = cut.to_m - cut.from_m;
            best = {bounds.min.x + 0.5 * (cut.from_m + cut.to_m), y};
        }
        if (widest > 0.0) return best;
    }
    return best;
}

}  // namespace landwidth
