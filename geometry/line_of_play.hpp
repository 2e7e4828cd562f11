// The line of play of a hole: the path from the tee to the pin that the mapper drew, straight or with
// doglegs.
//
// `station` is the distance from the tee along the line, `offset` the distance across it, positive to the
// right of someone who walks to the pin.
//
// Example: tee (0,0), corner (0,200), pin (100,200): length 300; station 250 is the point (50,200); the point
// (10,100) has station 100 and offset +10.
#pragma once

#include <optional>
#include <vector>

#include "geometry/point.hpp"

namespace landwidth {

class LineOfPlay {
  public:
    // Consecutive equal vertices are dropped. Throws std::invalid_argument with fewer than two distinct or
    // with non-finite vertices.
    explicit LineOfPlay(std::vector<Point> vertices);

    const std::vector<Point>& vertices() const { return vertices_; }
    Point tee() const { return vertices_.front(); }
    Point pin() const { return vertices_.back(); }
    double length() const { return stations_.back(); }
    // Station of each vertex; front 0, back length().
    const std::vector<double>& stations() const { return stations_; }

    // Before the tee and beyond the pin the first and last leg are continued straight.
    Point point_at(double station_m) const;
    // Unit step along the line; at a vertex, and within `blend_m` of it along the line, the direction turns
    // evenly from one leg to the next, so that transects across a dogleg fan out and do not jump.
    Point direction_at(double station_m, double blend_m = 15.0) const;

    struct Place {
        double station_m;  // in [0, length()]
        double offset_m;   // signed, right positive
    };
    // The nearest point of the line; of several equally near, the one nearest to the tee. Beside a leg the
    // offset is square to it, around the outside of a corner it is the distance to the corner, and before the
    // tee or beyond the pin it is square to the first or last leg continued.
    Place place_of(Point p) const;

    // The line shortened or redirected to another tee: `tee` followed by the vertices that lie ahead of it,
    // which means further along the line than the tee is off it (so that the first leg does not leave
    // sideways), and always the pin. Throws std::invalid_argument when the tee is the pin.
    LineOfPlay from_tee(Point tee) const;

  private:
    // The direction in which the line passes a vertex; none at its ends, unless they meet.
    std::optional<Point> through_vertex(std::size_t vertex) const;

    std::vector<Point> vertices_;
    std::vector<double> stations_;
};

}  // namespace landwidth
