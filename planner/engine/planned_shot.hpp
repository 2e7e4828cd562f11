// The strokes a plan expects after the tee shot: one usual ball followed to the green.
//
// Points in the hole's plane, lengths in metres.
#pragma once

#include <cstddef>
#include <optional>

#include "geometry/lie.hpp"
#include "geometry/point.hpp"

namespace landwidth {

// What a shot is for. A lay-up stays short of the green on purpose; an advance is as close as the clubs reach
// when none reaches the green; a recovery leaves the trees.
enum class ShotPurpose { to_the_green, lay_up, advance, recovery };

struct PlannedShot {
    std::size_t club;  // index in the golfer's bag
    double swing;      // of a full one: 1, or less for a partial wedge or a punch from trees
    ShotPurpose purpose;
    Point from;
    Lie lie;           // where `from` is
    double to_hole_m;  // distance left before the shot, along the line of play
    Point aim_point;   // on the aim line, at the usual carry
    Point leave;       // where the usual shot comes to rest
    Lie leave_lie;
    double leave_m;       // distance left from there, along the line of play
    double more_m = 0.0;  // what the usual shot goes further than on the reference day and flat ground
    double aim_value;  // of the whole hole, as TeeChoice::aim_value: what it comes to with the ball at `from`

    // The best shot of the other purpose (going for the green against laying up) where the golfer has one.
    struct Alternative {
        std::size_t club;
        double swing;
        ShotPurpose purpose;
        double leave_m;
        double margin;  // what it costs more, >= 0
    };
    std::optional<Alternative> alternative;
};

}  // namespace landwidth
