#include "geometry/line_of_play.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <utility>

namespace landwidth {
namespace {

// The leg that holds the station; a vertex belongs to the leg it starts.
std::size_t leg_at(const std::vector<double>& stations, double station_m) {
    const auto after = std::upper_bound(stations.begin() + 1, stations.end() - 1, station_m);
    return static_cast<std::size_t>(after - stations.begin()) - 1;
}

Point turned(Point p, double radians_left) {
    const double c = std::cos(radians_left);
    const double s = std::sin(radians_left);
    return {c * p.x - s * p.y, s * p.x + c * p.y};
}

}  // namespace

LineOfPlay::LineOfPlay(std::vector<Point> vertices) : vertices_(std::move(vertices)) {
    for (const Point p : vertices_) {
        if (!std::isfinite(p.x) || !std::isfinite(p.y)) {
            throw std::invalid_argument("a line of play with a coordinate that is not finite");
        }
    }
    vertices_.erase(std::unique(vertices_.begin(), vertices_.end()), vertices_.end());
    if (vertices_.size() < 2) {
        throw std::invalid_argument("a line of play with fewer than two distinct points");
    }
    stations_.push_back(0.0);
    for (std::size_t i = 1; i < vertices_.size(); ++i) {
        stations_.push_back(stations_.back() + distance(vertices_[i - 1], vertices_[i]));
    }
}

Point LineOfPlay::point_at(double station_m) const {
    const std::size_t leg = leg_at(stations_, station_m);
    const Point along = unit(vertices_[leg + 1] - vertices_[leg]);
    if (station_m == stations_[leg + 1]) return vertices_[leg + 1];
    return vertices_[leg] + (station_m - stations_[leg]) * along;
}

Point LineOfPlay::direction_at(double station_m, double blend_m) const {
    const std::size_t leg = leg_at(stations_, station_m);
    const auto along = [&](std::size_t i) { return unit(vertices_[i + 1] - vertices_[i]); };
    const auto leg_length = [&](std::size_t i) { return stations_[i + 1] - stations_[i]; };

    const double middle = 0.5 * (stations_[leg] + stations_[leg + 1]);
    const std::size_t vertex = station_m < middle ? leg : leg + 1;
    if (vertex == 0 || vertex + 1 == vertices_.size()) return along(leg);
    // Half of a leg at most, so that two turns never overlap; the same on both sides, so that the direction
    // at the vertex halves the angle.
    const double reach_m = std::min({blend_m, 0.5 * leg_length(vertex - 1), 0.5 * leg_length(vertex)});
    const double past_m = station_m - stations_[vertex];
    if (!(std::abs(past_m) < reach_m)) return along(leg);
    const Point before = along(vertex - 1);
    const Point after = along(vertex);
    const double turn = std::atan2(cross(before, after), dot(before, after));
    return turned(before, turn * (0.5 + 0.5 * past_m / reach_m));
}

LineOfPlay::Place LineOfPlay::place_of(Point p) const {
    std::size_t leg = 0;
    double nearest_m = std::numeric_limits<double>::infinity();
    double along_m = 0.0;
    for (std::size_t i = 0; i + 1 < vertices_.size(); ++i) {
        const Point along = unit(vertices_[i + 1] - vertices_[i]);
        const double foot_m = std::clamp(dot(along, p - vertices_[i]), 0.0, stations_[i + 1] - stations_[i]);
        const double away_m = distance(p, vertices_[i] + foot_m * along);
        if (!(away_m < nearest_m)) continue;
        nearest_m = away_m;
        leg = i;
        along_m = foot_m;
    }
    const bool at_end = along_m == stations_[leg + 1] - stations_[leg];
    const Point right = to_the_right(unit(vertices_[leg + 1] - vertices_[leg]));
    const double station_m = at_end ? stations_[leg + 1] : stations_[leg] + along_m;
    if (along_m == 0.0 || at_end) {
        // Outside a corner the leg behind and the leg ahead may disagree about the side; their bisector
        // decides.
        const std::size_t vertex = at_end ? leg + 1 : leg;
        if (const std::optional<Point> ahead = through_vertex(vertex)) {
            const Point step = p - vertices_[vertex];
            return {station_m, std::copysign(landwidth::length(step), dot(to_the_right(*ahead), step))};
        }
    }
    return {station_m, dot(right, p - vertices_[leg])};
}

std::optional<Point> LineOfPlay::through_vertex(std::size_t vertex) const {
    const std::size_t last = vertices_.size() - 1;
    const auto along = [&](std::size_t leg) { return unit(vertices_[leg + 1] - vertices_[leg]); };
    if (vertex != 0 && vertex != last) return along(vertex - 1) + along(vertex);
    if (vertices_.front() != vertices_.back()) return std::nullopt;
    return along(last - 1) + along(0);
}

LineOfPlay LineOfPlay::from_tee(Point tee) const {
    const Place place = place_of(tee);
    const double clear_m = place.station_m + std::abs(place.offset_m);
    std::vector<Point> vertices{tee};
    for (std::size_t i = 1; i + 1 < vertices_.size(); ++i) {
        if (stations_[i] > clear_m) vertices.push_back(vertices_[i]);
    }
    vertices.push_back(pin());
    return LineOfPlay(std::move(vertices));
}

}  // namespace landwidth
