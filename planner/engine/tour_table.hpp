// The published strokes to hole out: tour players, by distance and lie.
//
// Source: M. Broadie, Assessing Golfer Performance on the PGA TOUR, Interfaces 42(2), 2012, table 9. It is
// not monotonic in places; that is the source, and nothing is smoothed.
#pragma once

#include <array>
#include <span>

#include "geometry/units.hpp"

namespace landwidth {

enum class TourLie { tee, fairway, rough, sand, recovery };

struct TourRow {
    double distance_yd;
    // By TourLie; NaN where the table has no value (tee below 100 yd).
    std::array<double, 5> strokes;
};

// The table's rows, 10 to 600 yd.
std::span<const TourRow> tour_table();

// Between the nodes linear, exact at them. Below the first and beyond the last node of a column the line
// through the nearest two nodes is continued (assumption). Distance along the line of play, >= 0.
double tour_strokes(TourLie lie, Yards distance);

// Shares of tour players' putts from a distance in feet, >= 0, holed with the first and with the third putt;
// the others take two. M. Broadie, Every Shot Counts, 2014 (three-putts at 50 and 60 ft from memory), linear
// between the distances published; beyond 60 ft the last line is continued, up to all three-putts.
struct PuttShares {
    double one, three;
};
PuttShares tour_putt_shares(double distance_ft);

// Expected putts: 2 - one + three; 1 at the hole.
double tour_putts(double distance_ft);

}  // namespace landwidth
