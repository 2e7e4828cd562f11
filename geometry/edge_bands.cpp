#include "geometry/edge_bands.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/geos_handles.hpp"

namespace landwidth {
namespace {

constexpr int edges_per_band = 4;
constexpr int most_bands = 1024;

// 1: p lies left of a -> b, -1: right, 0: on it. GEOS decides in higher precision where doubles cannot.
int side_of(Point a, Point b, Point p) {
    const double l = (b.x - a.x) * (p.y - a.y);
    const double r = (b.y - a.y) * (p.x - a.x);
    // Shewchuk (1997), "Adaptive precision floating-point arithmetic", bound A of orient2d: (3 + 16 eps) eps.
    const double doubt = 3.3306690738754716e-16 * (std::abs(l) + std::abs(r));
    if (l - r > doubt) return 1;
    if (l - r < -doubt) return -1;
    return GEOSOrientationIndex_r(geos(), a.x, a.y, b.x, b.y, p.x, p.y);
}

// Positive when the ring runs with its inside on the left. Around its first point, to spare digits.
double doubled_area(const Ring& ring) {
    double sum = 0.0;
    for (std::size_t i = 1; i + 1 < ring.size(); ++i)
        sum += cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
    return sum;
}

}  // namespace

EdgeBands::EdgeBands(std::vector<Edge> edges) : edges_(std::move(edges)) {
    if (edges_.empty()) return;
    double high_y = edges_.front().high.y;
    low_y_ = edges_.front().low.y;
    for (const Edge& edge : edges_) {
        low_y_ = std::min(low_y_, edge.low.y);
        high_y = std::max(high_y, edge.high.y);
    }
    bands_ = static_cast<int>(std::clamp<std::size_t>(edges_.size() / edges_per_band, 1, most_bands));
    bands_per_m_ = high_y > low_y_ ? bands_ / (high_y - low_y_) : 0.0;

    band_starts_.assign(static_cast<std::size_t>(bands_) + 1, 0);
    const auto for_each_band = [&](const Edge& edge, const auto& visit) {
        for (int b = band_of(edge.low.y); b <= band_of(edge.high.y); ++b)
            visit(static_cast<std::size_t>(b));
    };
    for (const Edge& edge : edges_) {
        for_each_band(edge, [&](std::size_t b) { ++band_starts_[b + 1]; });
    }
    for (std::size_t b = 1; b < band_starts_.size(); ++b)
        band_starts_[b] += band_starts_[b - 1];
    banded_.resize(band_starts_.back());
    std::vector<std::size_t> next(band_starts_.begin(), band_starts_.end() - 1);
    for (const Edge& edge : edges_) {
        for_each_band(edge, [&](std::size_t b) { banded_[next[b]++] = edge; });
    }
}

// Never falls as y rises, so an edge that reaches the height of a point is in the point's band.
int EdgeBands::band_of(double y) const {
    return static_cast<int>(std::clamp((y - low_y_) * bands_per_m_, 0.0, bands_ - 1.0));
}

std::span<const EdgeBands::Edge> EdgeBands::band(int index) const {
    const auto b = static_cast<std::size_t>(index);
    return std::span(banded_).subspan(band_starts_[b], band_starts_[b + 1] - band_starts_[b]);
}

std::uint32_t EdgeBands::at(Point p) const {
    if (bands_ == 0 || !std::isfinite(p.x) || !std::isfinite(p.y)) return 0;
    std::array<int, most_groups> windings{};
    std::uint32_t found = 0;
    for (const Edge& edge : band(band_of(p.y))) {
        if (p.y < edge.low.y || p.y > edge.high.y) continue;
        if (p.x > std::max(edge.low.x, edge.high.x)) continue;
        // Half-open in height, so that a ray through a vertex counts it once.
        const bool straddles = edge.low.y <= p.y && p.y < edge.high.y;
        const int side = p.x < std::min(edge.low.x, edge.high.x) ? 1 : side_of(edge.low, edge.high, p);
        if (side == 0) found |= 1U << edge.group;
        if (side > 0 && straddles) windings[edge.group] += edge.rise;
    }
    for (std::size_t group = 0; group < most_groups; ++group) {
        if (windings[group] > 0) found |= 1U << group;
    }
    return found;
}

std::vector<double> EdgeBands::cuts(Point from, Point to) const {
    const double path_length = distance(from, to);
    std::vector<double> cuts{0.0, path_length};
    if (bands_ == 0 || !(path_length > 0.0)) return cuts;
    const Point along = unit(to - from);
    const int first = band_of(std::min(from.y, to.y));
    const int last = band_of(std::max(from.y, to.y));
    for (int b = first; b <= last; ++b) {
        for (const Edge& edge : band(b)) {
            if (b > first && b != band_of(edge.low.y)) continue;  // met in an earlier band
            const double low_side = cross(along, edge.low - from);
            const double high_side = cross(along, edge.high - from);
            if ((low_side > 0.0 && high_side > 0.0) || (low_side < 0.0 && high_side < 0.0)) continue;
            // The ends of an edge the path runs along are also ends of edges it does not run along.
            if (low_side == high_side) continue;
            const double low_at = dot(along, edge.low - from);
            const double high_at = dot(along, edge.high - from);
            const double at_m = low_at + low_side / (low_side - high_side) * (high_at - low_at);
            if (at_m > 0.0 && at_m < path_length) cuts.push_back(at_m);
        }
    }
    std::sort(cuts.begin(), cuts.end());
    return cuts;
}

void append_edges(const std::vector<PolygonRings>& polygons, std::uint8_t group,
                  std::vector<EdgeBands::Edge>& edges) {
    const auto append = [&](const Ring& ring, bool ground_inside) {
        const bool ground_on_left = (doubled_area(ring) > 0.0) == ground_inside;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Point a = ring[i];
            const Point b = ring[(i + 1) % ring.size()];
            if (a == b) continue;
            const bool rising = a.y <= b.y;
            const auto rise = static_cast<std::int8_t>(rising == ground_on_left ? 1 : -1);
            edges.push_back({rising ? a : b, rising ? b : a, group, rise});
        }
    };
    for (const PolygonRings& polygon : polygons) {
        append(polygon.outer, true);
        for (const Ring& inner : polygon.inners)
            append(inner, false);
    }
}

}  // namespace landwidth
