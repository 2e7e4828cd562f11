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

// Expected putts of tour players from a distance in feet, >= 0: one-putt and three-putt shares of M. Broadie,
// Every Shot Counts, 2014 (three-putts at 50 and 60 ft from memory), linear between the distances published;
// 1 at the hole.
double tour_putts(double distance_ft);

}  // namespace landwidth
