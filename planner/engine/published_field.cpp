#include "planner/engine/published_field.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

#include "geometry/units.hpp"
#include "planner/engine/tour_table.hpp"

namespace landwidth {

namespace {

constexpr double table_step_m = 0.5;
constexpr double table_reach_m = 1200.0;
constexpr double grid_step_m = 6.0;
// Below this a bend of the mapped line is drawing noise, not a dogleg.
constexpr double negligible_detour_m = 0.05;

TourLie table_column(Lie lie) {
    switch (lie) {
        case Lie::rough:
            return TourLie::rough;
        case Lie::bunker:
            return TourLie::sand;
        case Lie::trees:
            return TourLie::recovery;
        default:
            return TourLie::fairway;
    }
}

double value_at(Lie lie, double distance_m, const HandicapAdjustment& adjustment) {
    if (lie == Lie::green) return tour_putts(adjustment.worth_putt_m(distance_m) / metres_per_foot);
    return tour_strokes(table_column(lie), Yards::of(distance_m)) + adjustment.extra_strokes(distance_m);
}

// How much longer the way along the line is than the straight one; see the header.
double detour_from(Point place, const LineOfPlay& line) {
    const std::vector<Point>& v = line.vertices();
    double nearest = std::numeric_limits<double>::infinity();
    double least = nearest;
    for (std::size_t leg = 0; leg + 1 < v.size(); ++leg) {
        const Point step = v[leg + 1] - v[leg];
        const double along = std::clamp(dot(place - v[leg], step) / dot(step, step), 0.0, 1.0);
        const Point foot = v[leg] + along * step;
        const double aside = length(place - foot);
        const double remaining = line.length() - line.stations()[leg] - along * length(step);
        least = std::min(least, remaining - distance(foot, line.pin()) + aside);
        nearest = std::min(nearest, aside);
    }
    return std::max(0.0, least - nearest);
}

}  // namespace

StrokesByDistance::StrokesByDistance(const Golfer& golfer, const EngineAssumptions& assumptions) {
    const HandicapAdjustment adjustment(golfer, assumptions);
    const auto nodes = static_cast<std::size_t>(table_reach_m / table_step_m) + 2;
    for (Lie lie : all_lies) {
        if (is_penalty_area(lie) || lie == Lie::out_of_bounds) continue;
        std::vector<double>& column = columns_[index_of(lie)];
        column.reserve(nodes);
        for (std::size_t i = 0; i < nodes; ++i)
            column.push_back(value_at(lie, static_cast<double>(i) * table_step_m, adjustment));
    }
}

double StrokesByDistance::strokes(Lie lie, double distance_m) const {
    const std::vector<double>& column = columns_[index_of(lie)];
    if (column.empty()) throw std::logic_error("a ball out of play has no strokes of its own");
    const double position = std::min(distance_m, table_reach_m) / table_step_m;
    const auto node = static_cast<std::size_t>(position);
    const double share = position - static_cast<double>(node);
    return column[node] + share * (column[node + 1] - column[node]);
}

PublishedField::PublishedField(const StrokesByDistance& table, const LineOfPlay& line, const Box& ground)
    : table_(table), pin_(line.pin()), ground_(ground) {
    if (line.length() - distance(line.tee(), line.pin()) < negligible_detour_m) return;
    columns_ = static_cast<int>(std::ceil((ground.max.x - ground.min.x) / grid_step_m)) + 2;
    rows_ = static_cast<int>(std::ceil((ground.max.y - ground.min.y) / grid_step_m)) + 2;
    detours_.reserve(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_));
    for (int row = 0; row < rows_; ++row)
        for (int column = 0; column < columns_; ++column)
            detours_.push_back(
                detour_from(ground.min + grid_step_m * Point{double(column), double(row)}, line));
}

StrokesField::Worth PublishedField::worth(Point place, Lie lie) const {
    const Point step = pin_ - place;
    const double left = std::sqrt(dot(step, step)) + (columns_ == 0 ? 0.0 : detour_at(place));
    return {table_.strokes(lie, left), left};
}

double PublishedField::detour_at(Point place) const {
    const double x = std::clamp((place.x - ground_.min.x) / grid_step_m, 0.0, double(columns_) - 1.001);
    const double y = std::clamp((place.y - ground_.min.y) / grid_step_m, 0.0, double(rows_) - 1.001);
    const auto column = static_cast<std::size_t>(x);
    const auto row = static_cast<std::size_t>(y);
    const double* corner = &detours_[row * static_cast<std::size_t>(columns_) + column];
    const double* above = corner + columns_;
    const double fx = x - static_cast<double>(column);
    const double fy = y - static_cast<double>(row);
    return (1.0 - fy) * ((1.0 - fx) * corner[0] + fx * corner[1]) +
           fy * ((1.0 - fx) * above[0] + fx * above[1]);
}

}  // namespace landwidth
