#include "planner/engine/distance_left.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace landwidth {

namespace {

constexpr double grid_step_m = 6.0;
// Below this a bend of the mapped line is drawing noise, not a dogleg.
constexpr double negligible_detour_m = 0.05;

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

DistanceLeft::DistanceLeft(const LineOfPlay& line, const Box& ground) : pin_(line.pin()), ground_(ground) {
    if (line.length() - distance(line.tee(), line.pin()) < negligible_detour_m) return;
    columns_ = static_cast<int>(std::ceil((ground.max.x - ground.min.x) / grid_step_m)) + 2;
    rows_ = static_cast<int>(std::ceil((ground.max.y - ground.min.y) / grid_step_m)) + 2;
    detours_.reserve(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_));
    for (int row = 0; row < rows_; ++row)
        for (int column = 0; column < columns_; ++column)
            detours_.push_back(
                detour_from(ground.min + grid_step_m * Point{double(column), double(row)}, line));
}

double DistanceLeft::from(Point place) const {
    const Point step = pin_ - place;
    return std::sqrt(dot(step, step)) + (columns_ == 0 ? 0.0 : detour_at(place));
}

double DistanceLeft::detour_at(Point place) const {
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
