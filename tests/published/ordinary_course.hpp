// A course of ordinary difficulty, invented for the published checks: what "standard" means there.
//
// Fairways 34 yd wide from 60 yd on, a green of 12 yd radius with two or three bunkers, fairway bunkers at
// 230 and 255 yd, woods from 40 yd off the line on either side of par 4s and 5s, water on three holes, out of
// bounds 50 yd to the right on two. Level, no wind.
#pragma once

#include "courses/course.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth::published {

// One hole without water or out of bounds; with both by its number (1 to 18).
Hole ordinary_hole(double length_yd, int par, int number);

struct OrdinaryCourse {
    Course course;
    double length_yd;
};
// 18 holes, par 72; scale 1: 6654 yd.
OrdinaryCourse ordinary_course(double scale);

// The golfer with a driver that carries 20 yd more, as straight and as even in yards as before.
Golfer with_longer_driver(const Golfer& golfer);

}  // namespace landwidth::published
