// Ground of a hole as it was drawn, and which of two drawings counts where they overlap.
//
// Rules, by what is known and not by one fixed order:
// - Of two areas the one that lies in the other counts: an island of fairway in a lake or a waste bunker, a
//   copse or a patch of drawn rough in a fairway, a bunker in a green. An area lies in another when at least
//   half of it does; in a penalty area when at least nine tenths do, since water is seldom drawn too large.
// - Water without a golf tag in a penalty area that was drawn for golf is part of it.
// - Where neither lies in the other, drawn golf ground counts over land cover (fairway or drawn rough over a
//   wood, fairway over sand). Over a strip so narrow that branches reach across it the wood's then hang, as
//   high as the wood is; a wider one was cut out of the wood. Else the order of LiePartition decides.
// - A single tree and a row of trees stand on fairway and rough wherever they are drawn; water drawn as a
//   line goes by the order of LiePartition.
// Areas that overlap without one lying in the other, more than a slip of the pen and within reach of play,
// can be read two ways: a warning with both ids ("overlap-unclear").
#pragma once

#include <vector>

#include "courses/assembly/hole_findings.hpp"
#include "courses/tags/roles.hpp"
#include "geometry/canopy_raster.hpp"
#include "geometry/lie_partition.hpp"
#include "geometry/line_of_play.hpp"

namespace landwidth {

// One area of a feature. `lie` is never out of bounds; rough only as drawn with a golf tag.
struct DrawnGround {
    Lie lie;
    Region region;    // beyond the hole's ground it need not be right
    double whole_m2;  // the area of all of it, beyond the hole's ground too
    Evidence evidence;
    const MapFeature* feature;
    double tall_m = 0.0;  // of trees: how high they stand
};

// Ground drawn for golf (no penalty area) and what of it lies in another region.
struct GolfGroundIn {
    const DrawnGround* ground;
    Region common;
};
// More than a slip of the pen, and where balls come down.
std::vector<GolfGroundIn> golf_ground_in(const Region& region, const std::vector<DrawnGround>& drawn,
                                         const LineOfPlay& line);

struct SettledGround {
    std::vector<LieLayer> layers;      // for a LiePartition
    std::vector<TallGround> overhang;  // branches over ground that is not trees
};

// `drawn` in the order of the map; of what reaches beyond `extent` only the part within it is compared. Adds
// findings to `notes`.
SettledGround settled(const std::vector<DrawnGround>& drawn, const LineOfPlay& line, const Box& extent,
                      const PlaneFrame& frame, FeatureNotes& notes);

}  // namespace landwidth
