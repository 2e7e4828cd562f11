#include "courses/assembly/map_index.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

// A degree of latitude is never shorter, metres.
constexpr double least_degree_m = 110'500.0;

}  // namespace

DegreeBox DegreeBox::of(const MapShape& shape) {
    if (const auto* point = std::get_if<LonLat>(&shape)) return around(*point);
    if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&shape)) {
        DegreeBox box(paths->empty() || paths->front().empty() ? LonLat{} : paths->front().front());
        for (const LonLatPath& path : *paths)
            box.add(path);
        return box;
    }
    const auto& polygons = std::get<std::vector<LonLatPolygon>>(shape);
    DegreeBox box(polygons.front().outer.front());
    for (const LonLatPolygon& polygon : polygons)
        box.add(polygon.outer);
    return box;
}

DegreeBox DegreeBox::of(const MapShape& shape, std::size_t part) {
    if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&shape))
        return of(MapShape(std::vector<LonLatPath>{(*paths)[part]}));
    if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&shape))
        return of(MapShape(std::vector<LonLatPolygon>{(*polygons)[part]}));
    return of(shape);
}

void DegreeBox::add(LonLat place) {
    const double step = std::remainder(place.lon_deg - anchor_.lon_deg, 360.0);
    west_ = std::min(west_, step);
    east_ = std::max(east_, step);
    south_ = std::min(south_, place.lat_deg);
    north_ = std::max(north_, place.lat_deg);
}

DegreeBox DegreeBox::grown(double margin_m) const {
    DegreeBox box = *this;
    const double margin = margin_m / least_degree_m;
    box.south_ -= margin;
    box.north_ += margin;
    const double highest = std::max(std::abs(box.south_), std::abs(box.north_));
    const double shrink = highest < 89.9 ? std::cos(highest * radians_per_degree) : 0.0;
    const double lon_margin = shrink > 0.0 ? std::min(360.0, margin / shrink) : 360.0;
    box.west_ -= lon_margin;
    box.east_ += lon_margin;
    return box;
}

bool DegreeBox::meets(const DegreeBox& other) const {
    if (south_ > other.north_ || north_ < other.south_) return false;
    const double step = std::remainder(other.anchor_.lon_deg - anchor_.lon_deg, 360.0);
    for (const double turn : {0.0, 360.0, -360.0}) {
        if (west_ <= step + turn + other.east_ && east_ >= step + turn + other.west_) return true;
    }
    return false;
}

unsigned DegreeBox::sides_beyond(LonLat place) const {
    const double middle = 0.5 * (west_ + east_);
    const double step = middle + std::remainder(place.lon_deg - anchor_.lon_deg - middle, 360.0);
    return (step < west_ ? 1U : 0U) | (step > east_ ? 2U : 0U) | (place.lat_deg < south_ ? 4U : 0U) |
           (place.lat_deg > north_ ? 8U : 0U);
}

MapIndex::MapIndex(const MapData& map) {
    features_.reserve(map.features.size());
    for (const MapFeature& feature : map.features)
        features_.push_back({&feature, DegreeBox::of(feature.shape)});
}

std::vector<const IndexedFeature*> MapIndex::near(const DegreeBox& box) const {
    std::vector<const IndexedFeature*> found;
    for (const IndexedFeature& indexed : features_) {
        if (indexed.box.meets(box)) found.push_back(&indexed);
    }
    return found;
}

std::vector<const IndexedFeature*> MapIndex::with_role(Role role) const {
    std::vector<const IndexedFeature*> found;
    for (const IndexedFeature& indexed : features_) {
        if (indexed.feature->role() == role) found.push_back(&indexed);
    }
    return found;
}

}  // namespace landwidth
