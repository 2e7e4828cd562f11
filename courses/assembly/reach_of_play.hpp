// Which ground, and how much of it, matters to what a golfer is told of a map.
#pragma once

namespace landwidth {

// Balls come down so far from the line of play: 50 yd of aim off it and two spreads of a wild driver. An
// assumption, of findings only.
inline constexpr double reach_of_play_m = 100.0;
// Narrower overlaps are slips of the pen, metres (an assumption).
inline constexpr double slip_m = 2.0;

}  // namespace landwidth
