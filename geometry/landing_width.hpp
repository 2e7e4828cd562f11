// Landing width: how wide the fairway is, across the line of play, where the ball comes down; and how far the
// trouble is on either side.
//
// A transect is a straight cut across the line of play, from left to right. Offsets are metres from the
// line, negative to the left.
#pragma once

#include <optional>

#include "geometry/lie_partition.hpp"
#include "geometry/line_of_play.hpp"

namespace landwidth {

struct FairwayCut {
    double left_m;   // offset of the left edge
    double right_m;  // offset of the right edge; > left_m
    double width_m() const { return right_m - left_m; }
};

struct Trouble {
    double offset_m;  // magnitude: distance from the line to the near edge, >= 0
    Lie lie;          // bunker, trees, penalty area or out of bounds
};

struct Transect {
    double station_m;
    Point centre;                       // the point of the line of play
    Point across;                       // unit step to the right
    std::optional<FairwayCut> fairway;  // within reach_m of the line, cut off there; absent: none
    std::optional<Trouble> left;  // the nearest trouble on that side within reach_m; 0 when the line is in it
    std::optional<Trouble> right;
};

// The cut at a station. The fairway stretch is the one that contains the line, else the nearest one within
// reach_m (of two equally near the wider). A bunker or water inside a fairway ends the stretch; a teeing area
// or this hole's green is neither fairway nor trouble. `other_fairways`: mown ground of other holes, whose
// width is not this hole's.
Transect transect_at(const LiePartition& lies, const LineOfPlay& line, double station_m, double reach_m,
                     const Region& other_fairways = {});

// The same across any direction of travel: through `centre`, square to the unit step `along`. station_m is 0.
// Both throw std::invalid_argument without a finite place, a direction or a reach above 0.
Transect transect_across(const LiePartition& lies, Point centre, Point along, double reach_m,
                         const Region& other_fairways = {});

}  // namespace landwidth
