// The holes on which bags are weighed when no course is given: those of the driver chart
// (driver_chart_hole.hpp), 14 of them, as many as a round usually has of par 4 and 5.
//
// Two landing widths, five lengths of par 4 and two of par 5, all of them as the assumptions have it; what
// lies beyond the rough is a mix of all kinds, or one kind on every hole. Par 3s are left out: a tee club is
// not chosen there. All play due north, so that a wind has no meaning on them.
#pragma once

#include <optional>
#include <vector>

#include "planner/engine/driver_chart_hole.hpp"

namespace landwidth {

struct StraightHole {
    double width_m;  // of the landing
    double length_m;
    ChartTrouble trouble;
};

struct StraightHoles {
    std::vector<StraightHole> holes;      // as in the course of straight_course
    std::optional<ChartTrouble> trouble;  // on every hole; absent: the mix
};

// By length, then width. A mix deals woods, water and out of bounds over widths and lengths; sides take
// turns.
StraightHoles straight_holes(const StraightHoleMix& mix, std::optional<ChartTrouble> trouble);

// Without a name and a source: it is nowhere.
Course straight_course(const StraightHoles& holes, const Assumptions& assumptions);

}  // namespace landwidth
