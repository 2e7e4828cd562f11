#include "courses/reading/stray_points.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "courses/reading/ogr_shapes.hpp"
#include "courses/tags/feature_findings.hpp"
#include "geometry/plane_frame.hpp"

namespace landwidth {

namespace {

struct Limits {
    double times_rest, least_m;
};
constexpr Limits outline_limits{5.0, 200.0}, line_limits{2.0, 1000.0};
// Cheaper than the geodesic, and exact enough for "far": metres for a degree of latitude.
constexpr double metres_per_degree = 111'000.0;

double roughly(const LonLat& a, const LonLat& b) {
    constexpr double radians = 0.017453292519943295;
    const double east =
        std::remainder(b.lon_deg - a.lon_deg, 360.0) * std::cos(0.5 * (a.lat_deg + b.lat_deg) * radians);
    return metres_per_degree * std::hypot(east, b.lat_deg - a.lat_deg);
}

// Of an outline however long: legs to the stray point and back that are many times as long as every other,
// its neighbours side by side.
struct Spike {
    double least_detour_m, times_other_legs, times_gap;
};
constexpr Spike spike{2000.0, 5.0, 20.0};

// `legs`[i] leads to point i of a closed ring.
bool is_spike(const std::vector<double>& legs, std::size_t point, double detour_m) {
    const std::size_t next = (point + 1) % legs.size();
    const double shorter_m = std::min(legs[point], legs[next]);
    const double gap_m = legs[point] + legs[next] - detour_m;
    if (detour_m < spike.least_detour_m || shorter_m < spike.times_gap * gap_m) return false;
    for (std::size_t i = 0; i < legs.size(); ++i) {
        if (i != point && i != next && shorter_m < spike.times_other_legs * legs[i]) return false;
    }
    return true;
}

// The point to leave out, by the detour it makes; `closed`: the last point is the first.
std::optional<std::size_t> stray_point(const LonLatPath& path, bool closed, const Limits& limits) {
    const std::size_t count =
        closed && path.size() > 1 && path.front() == path.back() ? path.size() - 1 : path.size();
    // What is left must still be an outline, or a line.
    if (count < (closed ? 4U : 3U)) return std::nullopt;
    // legs[i] leads to point i.
    std::vector<double> legs(count, 0.0);
    double all_m = 0.0;
    for (std::size_t i = closed ? 0 : 1; i < count; ++i)
        all_m += legs[i] = roughly(path[(i + count - 1) % count], path[i]);
    std::size_t worst = 0;
    double longest_m = limits.least_m;
    for (std::size_t i = closed ? 0 : 1; i < (closed ? count : count - 1); ++i) {
        const double both_m = legs[i] + legs[(i + 1) % count];
        if (both_m <= longest_m) continue;
        const double detour_m = both_m - roughly(path[(i + count - 1) % count], path[(i + 1) % count]);
        if (detour_m <= longest_m) continue;
        longest_m = detour_m;
        worst = i;
    }
    if (longest_m <= limits.least_m) return std::nullopt;
    const bool is_stray =
        longest_m > limits.times_rest * (all_m - longest_m) || (closed && is_spike(legs, worst, longest_m));
    return is_stray ? std::optional(worst) : std::nullopt;
}

// The nearer of the two points beside it, of two as near the western one: whichever way round it is drawn.
LonLat nearest_neighbour(const LonLatPath& path, std::size_t point, bool closed) {
    const bool seam = closed && path.front() == path.back();
    const std::size_t count = seam ? path.size() - 1 : path.size();
    const LonLat& before = path[(point + count - 1) % count];
    const LonLat& behind = path[(point + 1) % count];
    const auto key = [&](const LonLat& place) {
        return std::tuple(std::round(roughly(place, path[point])), place.lon_deg, place.lat_deg);
    };
    return key(before) <= key(behind) ? before : behind;
}

class StrayPoints {
  public:
    explicit StrayPoints(std::vector<Finding>& findings) : findings_(findings) {}

    void look_at(MapFeature& feature) {
        if (auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape)) {
            for (LonLatPolygon& polygon : *polygons) {
                look_at(polygon.outer, true, feature);
                for (LonLatPath& inner : polygon.inners)
                    look_at(inner, true, feature);
            }
        } else if (auto* paths = std::get_if<std::vector<LonLatPath>>(&feature.shape)) {
            for (LonLatPath& path : *paths)
                look_at(path, false, feature);
        }
    }

  private:
    void look_at(LonLatPath& path, bool closed, const MapFeature& feature) {
        const std::optional<std::size_t> stray =
            stray_point(path, closed, closed ? outline_limits : line_limits);
        if (!stray) return;
        const LonLat place = path[*stray];
        const LonLat beside = nearest_neighbour(path, *stray, closed);
        const bool is_seam = closed && *stray == 0 && path.front() == path.back();
        findings_.push_back(finding_on<"point-stray">(feature, beside, roughly(beside, place) / 1000.0));
        path.erase(path.begin() + static_cast<std::ptrdiff_t>(*stray));
        if (is_seam) path.back() = path.front();
    }

    std::vector<Finding>& findings_;
};

}  // namespace

void leave_out_stray_points(std::vector<MapFeature>& features, std::vector<Finding>& findings) {
    StrayPoints points(findings);
    for (MapFeature& feature : features)
        points.look_at(feature);
}

void leave_out_huge_areas(std::vector<MapFeature>& features, std::vector<Finding>& findings) {
    std::erase_if(features, [&](const MapFeature& feature) {
        const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
        const Role role = feature.role();
        const bool bounded = (is_golf(role) && role != Role::out_of_bounds) || role == Role::building;
        if (polygons == nullptr || !bounded) return false;
        ShapeParts parts;
        parts.polygons = *polygons;
        if (!reaches_too_far(parts)) return false;
        findings.push_back(finding_on<"shape-huge">(feature, any_place(parts)));
        return true;
    });
}

}  // namespace landwidth
