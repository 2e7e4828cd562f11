// The edges of one or more groups of ground, sorted into horizontal bands: quick look-ups of a point and the
// places where a straight path meets an edge. Private to this room.
//
// Immutable, so safe to read from several threads. A group is any number of polygons, which may overlap: what
// lies in at least one of them, edges included, is in the group. To that end every ring runs with its ground
// on the left, and a point is inside where a ray from it crosses more edges that rise than fall (the winding
// rule).
//
// Cost: a look-up reads the edges of one band, with as many bands as keep that to a handful.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "geometry/point.hpp"

namespace landwidth {

class EdgeBands {
  public:
    static constexpr std::size_t most_groups = 16;

    struct Edge {
        Point low;
        Point high;          // low.y <= high.y
        std::uint8_t group;  // below most_groups
        std::int8_t rise;    // +1: the ring runs from low to high, -1: from high to low
    };

    EdgeBands() = default;
    explicit EdgeBands(std::vector<Edge> edges);

    // The groups p is in: bit n for group n. NaN is nowhere.
    std::uint32_t at(Point p) const;
    // Distances from `from` at which the path meets an edge, ascending, within it; first 0, last its length.
    // An edge the path runs along counts with its ends.
    std::vector<double> cuts(Point from, Point to) const;
    std::span<const Edge> edges() const { return edges_; }

  private:
    int band_of(double y) const;
    std::span<const Edge> band(int index) const;

    std::vector<Edge> edges_;
    double low_y_ = 0.0;
    double bands_per_m_ = 0.0;
    int bands_ = 0;
    std::vector<std::size_t> band_starts_;
    std::vector<Edge> banded_;
};

// Adds the edges of valid polygons, whichever way their rings run.
void append_edges(const std::vector<PolygonRings>& polygons, std::uint8_t group,
                  std::vector<EdgeBands::Edge>& edges);

// Shorter stretches of a path than this are rounding, not ground.
inline constexpr double shortest_stretch_m = 1e-9;

// Calls visit(from_m, to_m) for every stretch between neighbouring cuts, in order and without gaps; cuts
// within shortest_stretch_m of each other are taken as one.
template <typename Visit>
void for_each_stretch(const std::vector<double>& cuts, const Visit& visit) {
    double start = cuts.front();
    for (const double cut : cuts) {
        const bool too_short = cut - start <= shortest_stretch_m;
        const bool rest_too_short = cuts.back() - cut <= shortest_stretch_m && cut != cuts.back();
        if (too_short || rest_too_short) continue;
        visit(start, cut);
        start = cut;
    }
}

}  // namespace landwidth
