// The ground of a hole, cut so that every point has exactly one lie.
//
// Where mapped regions overlap the first of these wins: out of bounds, green, teeing area, bunker, red or
// yellow penalty area (yellow before red), fairway, trees, rough. Ground that nothing covers is rough.
// Outside `in_bounds`, where it is known, everything is out of bounds.
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "geometry/lie.hpp"
#include "geometry/region.hpp"

namespace landwidth {

struct LieLayer {
    Lie lie;
    Region region;
};

// A stretch of a straight path with one lie.
struct LieStretch {
    double from_m;
    double to_m;
    Lie lie;
};

// The order in which overlaps are settled, first wins.
inline constexpr std::array<Lie, lie_count> lie_priority{
    Lie::out_of_bounds, Lie::green,   Lie::teeing_area, Lie::bunker, Lie::penalty_yellow,
    Lie::penalty_red,   Lie::fairway, Lie::trees,       Lie::rough,
};

// A value; copies share what is immutable; safe to read from several threads.
class LiePartition {
  public:
    // `extent` is the ground this hole is planned on; layers reaching out of it are cut. Several layers may
    // share a lie. `in_bounds`: the course boundary, absent when the map does not have one.
    // Throws std::invalid_argument when the extent is not finite or has no area.
    LiePartition(const Box& extent, std::span<const LieLayer> layers, const std::optional<Region>& in_bounds);

    const Box& extent() const { return extent_; }
    // Disjoint up to edges; together they cover the extent. Cut out when first asked for (some milliseconds;
    // look-ups, rasters and stretches do without); GEOS failing at it is a std::runtime_error naming the lie.
    const Region& region(Lie lie) const;
    // What was mapped with a lie, as given: overlapping, reaching out of the extent. Of rough and out of
    // bounds also what the extent and the boundary make of the rest.
    std::span<const Region> mapped(Lie lie) const;
    // On a shared edge the lie that comes first in lie_priority. Outside the extent, and for NaN: beyond().
    // Cheap enough for millions: reads the edges of a narrow band.
    Lie lie_at(Point p) const;
    // What ground outside the extent counts as: out of bounds where the boundary is known, else rough.
    Lie beyond() const { return beyond_; }
    // The whole path from `from` to `to` in order, neighbouring stretches of one lie joined; the first starts
    // at 0, the last ends at the path's length. A path without length is one stretch.
    std::vector<LieStretch> stretches(Point from, Point to) const;

  private:
    class Ground;
    friend class LieRaster;

    Box extent_;
    Lie beyond_;
    std::shared_ptr<const Ground> ground_;
};

}  // namespace landwidth
