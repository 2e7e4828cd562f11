// A course and its holes, ready to be planned: everything in the plane of the hole.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "courses/finding.hpp"
#include "geometry/canopy_raster.hpp"
#include "geometry/height_raster.hpp"
#include "geometry/lie_partition.hpp"
#include "geometry/line_of_play.hpp"
#include "geometry/plane_frame.hpp"

namespace landwidth {

// Something in or beside a hole that is no lie but that a careful golfer keeps in mind.
struct Surrounding {
    enum class Kind { building, road, path, other_hole };
    Kind kind;
    Region region;      // roads with a nominal width; for other_hole that hole's green and tees
    std::string label;  // name or ref where the map has one; may be empty
};

struct Hole {
    std::string ref;                  // as played: "1".."18"; made unique within the course
    std::string name;                 // may be empty
    std::string feature;              // id of the hole's way in its source
    int par;                          // 3..6
    bool par_inferred;                // from the length
    std::optional<int> stroke_index;  // `handicap` tag, 1..18 (more on longer courses)
    std::string
        tee;  // name of the tee played from (`tee=*`, or `name`/`ref` of the teeing area); may be empty

    PlaneFrame frame;  // origin: the tee
    LineOfPlay line;   // from the tee played to the pin
    LiePartition lies;
    std::vector<Surrounding> surroundings;
    // How high trees and buildings stand.
    CanopyRaster canopy = {};
    // Heights of the ground over the extent of the lies, metres above any one level; null where no raster of
    // them was given: the hole counts as flat.
    std::shared_ptr<const HeightRaster> heights = {};
    // Fairway and greens of other holes: fairway to a ball, but no part of this hole's landing width.
    Region other_fairways = {};
    // The ref as it stands on the map ("1;10", "Hole 7"), which may differ from the one the hole is called
    // by; may be empty.
    std::string mapped_ref = {};
};

struct Course {
    std::string name;  // may be empty
    std::string source;
    std::string attribution;
    std::vector<Hole> holes;  // in the order of play: numeric refs ascending, then the rest as mapped
    std::vector<Finding>
        findings;  // sorted, of the map and of the assembly; holes left out are here as errors
};

}  // namespace landwidth
