// A piece of ground in a hole's plane: any number of polygons with holes. Built on GEOS.
//
// A value: copied freely (copies share the immutable geometry), safe to read from several threads. Closed:
// the edge belongs to the region, and regions that share an edge meet. The empty region covers nothing.
// Lengths in metres, areas in square metres. Coordinates and lengths that are not finite, coordinates beyond
// 1e9 m and lengths below 0 are refused with std::invalid_argument (contains() says no instead). GEOS trouble
// that is not the caller's fault is thrown as std::runtime_error. Rounded edges are polygons with their
// corners on the circle, 64 to a full turn.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "geometry/point.hpp"

namespace landwidth {

// A stretch [from_m, to_m] of a straight path, in metres from its start; from_m <= to_m.
struct Stretch {
    double from_m;
    double to_m;
};

enum class Side { left, right };

class Region {
  public:
    Region() = default;

    struct Repaired;
    // The region of a polygon as drawn, made valid where it is not (self-crossing rings, inner rings outside,
    // spikes): area enclosed by an odd number of rings stays. Throws std::invalid_argument when a coordinate
    // is not finite or the outer ring has fewer than three distinct points; an inner ring with fewer is left
    // out and reported. What encloses nothing comes out empty, and reported; so does an outer ring that
    // crosses itself 200 times or more.
    static Repaired repaired(const PolygonRings& rings);
    static Region box(const Box& box);
    static Region disc(Point centre, double radius_m);
    // Everything within half_width_m of a path of at least one point (round caps).
    static Region around(const std::vector<Point>& path, double half_width_m);
    // The ground to one side of a path of at least two points, out to width_m (no caps). Where the path
    // comes back to within twice width_m of itself, a piece of ground enclosed by two legs goes whole to one
    // side. A path that ends where it starts has an inside.
    static Region beside(const std::vector<Point>& path, double width_m, Side side);
    // The pieces into which paths of at least two points each cut a box; ends that reach no other path and no
    // edge cut nothing.
    static std::vector<Region> pieces(const Box& box, const std::vector<std::vector<Point>>& paths);
    static Region united(std::span<const Region> regions);

    bool empty() const;
    double area() const;
    Box bounds() const;  // of an empty region: std::logic_error
    bool contains(Point p) const;
    // 0 inside; infinity for the empty region.
    double distance_to(Point p) const;
    bool meets(const Region& other) const;

    Region grown(double by_m) const;  // negative: shrunk
    Region common_with(const Region& other) const;
    Region without(const Region& other) const;
    Region joined_with(const Region& other) const;
    // Same ground with vertices no further than tolerance_m from it dropped, for drawing.
    Region simplified(double tolerance_m) const;

    std::vector<PolygonRings> polygons() const;
    // The stretches of the straight path from `from` to `to` that lie inside, in order, touching points left
    // out. A path along an edge is inside where rounding does not tell otherwise.
    std::vector<Stretch> stretches(Point from, Point to) const;

  private:
    struct Shape;
    explicit Region(std::shared_ptr<const Shape> shape);
    friend struct GeosAccess;
    std::shared_ptr<const Shape> shape_;  // null: empty
};

struct Region::Repaired {
    Region region;
    // What was wrong, for a finding ("self-crossing ring near ..."); absent when nothing was.
    std::optional<std::string> repair;
    // Where, when there is one place to point at.
    std::optional<Point> place;
};

}  // namespace landwidth
