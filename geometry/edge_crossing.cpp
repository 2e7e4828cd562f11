#include "geometry/edge_crossing.hpp"

#include "geometry/edge_bands.hpp"

namespace landwidth {

std::optional<Point> last_crossing(const Region& region, Point from, Point to) {
    if (!region.contains(to)) return std::nullopt;
    const double path_m = distance(from, to);
    if (path_m <= shortest_stretch_m) return region.contains(from) ? from : to;
    const std::vector<Stretch> inside = region.stretches(from, to);
    // A ball at rest exactly on the edge, reached from outside.
    if (inside.empty() || inside.back().to_m < path_m - shortest_stretch_m) return to;
    const double crossed_m = inside.back().from_m;
    if (crossed_m <= 0.0) return from;
    return from + crossed_m * unit(to - from);
}

}  // namespace landwidth
