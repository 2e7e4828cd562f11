// Relief by the Rules of Golf 2023: where a ball that is out of play may be dropped, and what that place is
// worth.
//
// Penalty area, one stroke (Rule 17.1d): (1) stroke and distance, (2) back on the line, (3) for a red one
// lateral relief. The stroke-and-distance option refers back to where the shot was played; its value is
// solved by the caller. `used` everywhere: strokes taken when the ball is dropped, the penalty among them.
#pragma once

#include <optional>

#include "geometry/lie_raster.hpp"
#include "planner/engine/strokes_field.hpp"

namespace landwidth {

// Where relief is looked for.
struct ReliefGround {
    const LieRaster& lies;
    const StrokesField& field;
    Point pin;
    double club_length_m;         // the longest club of the bag other than the putter
    double back_on_line_reach_m;  // assumption: how far back is tried
};

struct Drop {
    Point place;
    Lie lie;
    double cost;  // of the whole hole from there on, on the scale of the field
};

// Rule 17.1d(2): the best place on the straight line from the hole through the crossing point, further from
// the hole, on ground in play outside penalty areas. Absent when there is none within reach.
std::optional<Drop> back_on_the_line(const ReliefGround& ground, Point crossing, int used);

// Rule 17.1d(3), red only: the best place within two club-lengths of the crossing point, not nearer the hole
// than it, on ground in play outside penalty areas. Absent when there is none.
std::optional<Drop> lateral_relief(const ReliefGround& ground, Point crossing, int used);

// The better of the options that do not go back to the tee, for a ball in a penalty area of that colour.
// Absent: stroke and distance is all there is.
std::optional<Drop> penalty_area_relief(const ReliefGround& ground, Lie colour, Point crossing, int used);

// Model Local Rule E-5 (two penalty strokes): the nearest fairway no nearer the hole than the point where the
// ball was lost or crossed the edge. Looked for on the circle around the hole through that point, up to 150
// yd to each side (assumption).
std::optional<Drop> local_rule_e5_drop(const ReliefGround& ground, Point reference, int used);

}  // namespace landwidth
