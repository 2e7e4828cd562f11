#include "courses/assembly/course_ground.hpp"

#include <algorithm>
#include <limits>

#include "courses/text.hpp"

namespace landwidth {

namespace {

std::size_t part_count(const MapShape& shape) {
    if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&shape)) return polygons->size();
    if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&shape)) return paths->size();
    return 1;
}

template <typename Ground>
std::optional<CourseGround::Near> nearest(const std::vector<Ground>& grounds, Point place) {
    std::optional<CourseGround::Near> best;
    double area = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < grounds.size(); ++i) {
        const double distance = grounds[i].region.distance_to(place);
        const bool smaller = best && distance == best->distance_m && grounds[i].region.area() < area;
        if (best && distance >= best->distance_m && !smaller) continue;
        best = {i, distance};
        area = grounds[i].region.area();
    }
    return best;
}

bool is_for_practice(const MapFeature& green) {
    if (!green.tag("practice").empty() && folded(green.tag("practice")) != "no") return true;
    for (const char* key : {"name", "description", "green"}) {
        const std::string words = folded(green.tag(key));
        for (const char* word : {"practice", "putting", "chipping", "pitching"})
            if (words.find(word) != std::string::npos) return true;
    }
    return false;
}

}  // namespace

Region ground_of(const FeaturePart& part, const PlaneDrawing& drawing, double around_m) {
    const MapShape& shape = part.feature->shape;
    if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&shape))
        return drawing.area(*part.feature, (*polygons)[part.part]);
    if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&shape))
        return Region::around(drawing.path((*paths)[part.part]), around_m);
    return Region::disc(drawing.frame().to_plane(std::get<LonLat>(shape)), around_m);
}

CourseGround::CourseGround(const std::vector<const IndexedFeature*>& features, LonLat origin,
                           RepairLog& repairs)
    : frame_(origin) {
    const PlaneDrawing drawing(frame_, repairs);
    std::vector<Region> ranges;
    for (const IndexedFeature* indexed : features) {
        if (indexed->feature->role() == Role::driving_range)
            ranges.push_back(drawing.area(*indexed->feature));
    }
    const Region range = Region::united(ranges);
    for (const IndexedFeature* indexed : features) {
        const MapFeature& feature = *indexed->feature;
        if (indexed->feature->role() == Role::green) add_greens(feature, drawing, range);
        if (indexed->feature->role() == Role::tee) add_tees(feature, drawing, range);
        const auto* point = std::get_if<LonLat>(&feature.shape);
        if (point != nullptr &&
            (indexed->feature->role() == Role::pin || indexed->feature->role() == Role::hole))
            pins_.push_back(
                {&feature, *point, frame_.to_plane(*point), indexed->feature->role() == Role::hole});
    }
    end_lines(features);
}

void CourseGround::end_lines(const std::vector<const IndexedFeature*>& features) {
    for (const IndexedFeature* indexed : features) {
        const auto* paths = std::get_if<std::vector<LonLatPath>>(&indexed->feature->shape);
        const bool is_line = indexed->feature->role() == Role::hole && paths != nullptr && !paths->empty() &&
                             !paths->back().empty();
        if (!is_line) continue;
        const Point end = frame_.to_plane(paths->back().back());
        for (GreenGround& green : greens_)
            if (green.region.contains(end)) green.lines.push_back(indexed->feature);
    }
}

void CourseGround::add_greens(const MapFeature& feature, const PlaneDrawing& drawing, const Region& ranges) {
    if (!std::holds_alternative<std::vector<LonLatPolygon>>(feature.shape)) return;
    for (std::size_t part = 0; part < part_count(feature.shape); ++part) {
        const FeaturePart green(feature, part);
        Region region = ground_of(green, drawing, 0.0);
        if (region.empty()) continue;
        const bool practice = is_for_practice(feature) || ranges.contains(middle_of(region));
        greens_.push_back({green, std::move(region), practice, {}});
    }
}

void CourseGround::add_tees(const MapFeature& feature, const PlaneDrawing& drawing, const Region& ranges) {
    for (std::size_t part = 0; part < part_count(feature.shape); ++part) {
        const FeaturePart tee(feature, part);
        Region region = ground_of(tee, drawing, tee_around_m);
        if (region.empty()) continue;
        const Point middle = middle_of(region);
        // The tees of a driving range are no tees of a hole.
        if (ranges.contains(middle)) continue;
        tees_.push_back({tee, std::move(region), middle});
    }
}

std::optional<CourseGround::Near> CourseGround::nearest_green(Point place) const {
    return nearest(greens_, place);
}

std::optional<CourseGround::Near> CourseGround::nearest_tee(Point place) const {
    return nearest(tees_, place);
}

}  // namespace landwidth
