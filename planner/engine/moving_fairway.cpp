#include "planner/engine/moving_fairway.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr double square_m = Yards{8.0}.metres();
// An edge this near to the ground of another hole is its edge: what rounding leaves.
constexpr double on_edge_m = 0.01;
constexpr std::size_t no_square = std::numeric_limits<std::size_t>::max();

double distance_to_segment(Point place, Point from, Point to) {
    const Point along = to - from;
    const double squared = dot(along, along);
    const double part = squared > 0.0 ? std::clamp(dot(place - from, along) / squared, 0.0, 1.0) : 0.0;
    return distance(place, from + part * along);
}

}  // namespace

MovingFairway::MovingFairway(const LiePartition& lies, const Region& others, const StrokesField& field,
                             double reach_m)
    : others_(others), field_(field), reach_m_(reach_m) {
    // Fairways that overlap or touch have no edge between them.
    const Region fairway = Region::united(lies.mapped(Lie::fairway));
    if (fairway.empty()) return;
    const Box ground = fairway.bounds().grown(reach_m);
    corner_ = ground.min;
    columns_ = static_cast<std::size_t>((ground.max.x - ground.min.x) / square_m) + 1;
    rows_ = static_cast<std::size_t>((ground.max.y - ground.min.y) / square_m) + 1;
    squares_.resize(columns_ * rows_);
    const double far_from_centre = reach_m + square_m / std::sqrt(2.0);
    const auto add_edge = [&](Point from, Point to) {
        if (others.distance_to(0.5 * (from + to)) <= on_edge_m) return;
        const auto index = [](double from_corner, std::size_t count) {
            return static_cast<std::size_t>(
                std::clamp(from_corner / square_m, 0.0, static_cast<double>(count - 1)));
        };
        const Box near = Box{{std::min(from.x, to.x), std::min(from.y, to.y)},
                             {std::max(from.x, to.x), std::max(from.y, to.y)}}
                             .grown(reach_m);
        const std::size_t last_row = index(near.max.y - corner_.y, rows_);
        const std::size_t last_column = index(near.max.x - corner_.x, columns_);
        for (std::size_t row = index(near.min.y - corner_.y, rows_); row <= last_row; ++row)
            for (std::size_t column = index(near.min.x - corner_.x, columns_); column <= last_column;
                 ++column) {
                const Point centre = corner_ + square_m * Point{static_cast<double>(column) + 0.5,
                                                                static_cast<double>(row) + 0.5};
                if (distance_to_segment(centre, from, to) <= far_from_centre)
                    squares_[row * columns_ + column].push_back({from, to});
            }
    };
    const auto add_ring = [&](const Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i)
            add_edge(ring[i], ring[(i + 1) % ring.size()]);
    };
    for (const PolygonRings& polygon : fairway.polygons()) {
        add_ring(polygon.outer);
        for (const Ring& inner : polygon.inners)
            add_ring(inner);
    }
}

std::size_t MovingFairway::square_of(Point place) const {
    const double column = (place.x - corner_.x) / square_m;
    const double row = (place.y - corner_.y) / square_m;
    if (!(column >= 0.0 && row >= 0.0 && column < static_cast<double>(columns_) &&
          row < static_cast<double>(rows_)))
        return no_square;
    return static_cast<std::size_t>(row) * columns_ + static_cast<std::size_t>(column);
}

double MovingFairway::distance_to_edge(Point place) const {
    const std::size_t square = square_of(place);
    double nearest = std::numeric_limits<double>::infinity();
    if (square == no_square) return nearest;
    for (const Edge& edge : squares_[square])
        nearest = std::min(nearest, distance_to_segment(place, edge.from, edge.to));
    return nearest;
}

MovingFairway::Turn MovingFairway::turn_at(Point place, Lie lie, int used) const {
    if (lie != Lie::fairway && lie != Lie::rough) return {never, 0.0F};
    const double away = distance_to_edge(place);
    if (away > reach_m_ || (lie == Lie::fairway && others_.contains(place))) return {never, 0.0F};
    const Lie other = lie == Lie::fairway ? Lie::rough : Lie::fairway;
    // Never nothing: the sign tells the lie.
    const auto at = std::max(static_cast<float>(away), std::numeric_limits<float>::min());
    return {lie == Lie::fairway ? -at : at, static_cast<float>(field_.cost(place, other, used))};
}

}  // namespace landwidth
