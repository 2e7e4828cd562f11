// What laying heights of the ground under a course can have to tell.
#pragma once

#include "courses/findings/finding_kind.hpp"

namespace landwidth {

// clang-format off
inline constexpr FindingKind ground_kinds[]{
    {"heights-several-bands", Weight::warning, Bears::on_course,
     "the raster has {} bands; the first is taken for the heights",
     "check that it is the ground"},
    {"heights-coarse", Weight::warning, Bears::on_course,
     "its cells are {} m long: rises are about right, slopes come out smoothed",
     "look for a raster with cells of 10 m or less"},
    // {1}: "hole" or "holes".
    {"heights-filled", Weight::warning, Bears::on_course,
     "has no heights for some of the ground of {} {}; the nearest known ones are taken there",
     "give a raster that reaches 200 yd around every line of play"},
};
// clang-format on

}  // namespace landwidth
