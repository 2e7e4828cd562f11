// The edge of a box of degrees as a way to walk along, counter-clockwise from its south-western corner.
#pragma once

#include <array>
#include <vector>

#include "courses/tags/map_extent.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

class BoxEdge {
  public:
    explicit BoxEdge(const MapExtent& box) : box_(box) {}

    // The place of the edge nearest to one inside, in degrees; a place on the edge is its own nearest.
    LonLat nearest(LonLat place) const;
    // How far along the edge its nearest place is: 0 to 1 on the southern side, 1 to 2 on the eastern, ...
    double turn(LonLat place) const;
    // Adds the way along the edge from the place nearest to `from` to the one nearest to `to`, the corners
    // between and both places where they are not yet there.
    void go(LonLat from, LonLat to, bool counter_clockwise, LonLatPath& path) const;
    // All of it, closed.
    LonLatPath ring() const;
    // The pieces of a path that lie within the box, cut exactly at its edge. An end of the path inside the
    // box stays where it is.
    std::vector<LonLatPath> pieces_inside(const LonLatPath& path) const;

  private:
    LonLat corner(int number) const;
    bool clip(LonLat& a, LonLat& b) const;

    MapExtent box_;
};

}  // namespace landwidth
