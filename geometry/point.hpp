// Points and boxes of a hole's plane: metres, x to the east, y to the north.
#pragma once

#include <cmath>
#include <vector>

namespace landwidth {

// A point, or the step from one point to another.
struct Point {
    double x = 0.0;
    double y = 0.0;

    friend constexpr bool operator==(const Point&, const Point&) = default;
    friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Point operator*(double s, Point p) { return {s * p.x, s * p.y}; }
};

constexpr double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}
// Positive when b lies to the left of a.
constexpr double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}
// Whether the inner parts of the segments a-b and c-d cross; ends that touch do not.
constexpr bool segments_cross(Point a, Point b, Point c, Point d) {
    return cross(b - a, c - a) * cross(b - a, d - a) < 0.0 && cross(d - c, a - c) * cross(d - c, b - c) < 0.0;
}
// The plain root and not std::hypot, whose care for overflow costs five times as much: lengths here are below
// 1e7 m.
inline double length(Point p) {
    return std::sqrt(p.x * p.x + p.y * p.y);
}
inline double distance(Point a, Point b) {
    return length(b - a);
}
// A quarter turn clockwise: the step to the right of someone who looks along p.
constexpr Point to_the_right(Point p) {
    return {p.y, -p.x};
}
// The unit step along p; {0, 0} stays {0, 0}.
inline Point unit(Point p) {
    const double l = length(p);
    return l > 0.0 ? Point{p.x / l, p.y / l} : p;
}
// The unit step in a plane bearing: radians clockwise from the y axis.
inline Point along_bearing(double radians) {
    return {std::sin(radians), std::cos(radians)};
}
// The plane bearing of a step, radians clockwise from the y axis, in (-pi, pi].
inline double plane_bearing(Point step) {
    return std::atan2(step.x, step.y);
}

// A closed axis-parallel box; min <= max on both axes.
struct Box {
    Point min;
    Point max;

    bool contains(Point p) const { return p.x >= min.x && p.x <= max.x && p.y >= min.y && p.y <= max.y; }
    Box grown(double by_m) const { return {{min.x - by_m, min.y - by_m}, {max.x + by_m, max.y + by_m}}; }
};

// A closed ring. The last point is joined to the first; it may repeat it.
using Ring = std::vector<Point>;

// One polygon: an outer ring and the rings cut out of it. Orientation does not matter.
struct PolygonRings {
    Ring outer;
    std::vector<Ring> inners;
};

}  // namespace landwidth
