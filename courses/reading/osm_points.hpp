// The points of a way as far as the file has them.
#pragma once

#include <optional>
#include <vector>

#include "courses/reading/osm_elements.hpp"

namespace landwidth {

struct WayPoints {
    // Stretches of points that follow each other, split where one is missing.
    std::vector<LonLatPath> runs;
    std::size_t count = 0;    // in the file
    std::size_t missing = 0;  // not in the file

    // All in one, over the gaps.
    LonLatPath all() const;
    std::optional<LonLat> any() const;
    // Of a closed way: the last stretch goes on into the first where the point they meet in is there.
    std::vector<LonLatPath> runs_of_ring() const;
};

// Whether it ends at the node it starts at.
bool is_ring(const OsmWay& way);

WayPoints points_of(const OsmWay& way, const OsmElements& elements);

}  // namespace landwidth
