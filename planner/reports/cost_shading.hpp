// The shading of a hole's map by what its places cost: bands of equal steps, light for few strokes, dark for
// many. Brightness alone tells the bands apart, so that the colour-blind and a grey print read it too.
#pragma once

#include <string>
#include <vector>

#include "planner/engine/cost_map.hpp"
#include "planner/reports/map_sheet.hpp"

namespace landwidth {

// Band i holds costs from lowest + i * step to a step more; the first band all below as well, the last all
// above.
struct CostBands {
    double lowest;  // a multiple of the step
    double step;    // 0.25, 0.5, 1 or more strokes
    int count;      // 1..10; 0 where there is no cost at all

    double from(int band) const { return lowest + band * step; }
};

// The finest bands that are at most ten, the first reached by the lowest half per cent of the costs and the
// last by the highest 5 %. NaNs are passed over.
CostBands cost_bands(std::vector<float> costs);

// "#rrggbb"; every band is darker than the one before. 0 <= band < count.
std::string band_colour(int band, int count);

struct CostShading {
    std::string layer;  // paths for the inside of the map, the dearest on top
    std::string key;    // what the bands mean, an HTML list; both empty where nothing on the sheet has a cost
};

CostShading cost_shading(const CostMap& map, const MapSheet& sheet);

}  // namespace landwidth
