// The day as it lies over one hole: wind in its plane, heights of its ground, what stands on it.
#pragma once

#include <optional>

#include "courses/course.hpp"
#include "geometry/lie_raster.hpp"
#include "planner/engine/day/conditions.hpp"

namespace landwidth {

struct HoleDay {
    std::optional<double> wind_to;          // plane bearing to which the wind blows; absent in still air
    const HeightRaster* heights = nullptr;  // of the hole; null: flat
    const CanopyRaster* canopy = nullptr;   // of the hole; null: nothing stands
};

// Keeps pointers into the hole.
HoleDay day_over(const Hole& hole, const Conditions& conditions);

// How high trees or buildings stand over a place of this lie. Where trees end is taken from the lies, which
// are known on smaller cells than canopies.
double canopy_m(const HoleDay& day, const LieRaster& lies, Point place, Lie lie);

// The wind along the first leg of a hole: in the back of a ball, and to its right; 0 in still air.
struct WindAlong {
    double tail_mps;
    double cross_mps;
};
WindAlong wind_along(const HoleDay& day, const Conditions& conditions, const Hole& hole);

}  // namespace landwidth
