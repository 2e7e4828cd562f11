// Which way a hole's line runs and to which green: one scored choice among all greens and both directions.
//
// Every fact has a price, and the cheapest choice counts (the prices are assumptions):
// - two for every metre from the line's end to the green; a quarter for every metre that it runs on behind a
//   green it crosses,
// - 40 for every other green it crosses before: one does not play across greens,
// - 50 less where the green bears the hole's number, 50 more where it bears only others,
// - a half for every metre from the line's start to the nearest tee, 30 at most,
// - 40 for turning the line round,
// - 100 for a green that the line runs on behind, to end in another, where another hole's line ends in it.
// A green is in reach within snap_m of the line's end, within three times as much with the hole's number on
// it, and when the line crosses it no more than 150 m before its end; not the one the line starts in.
// Practice greens (so tagged or named, or on a driving range) are none. A line that starts at a tee and does
// not end at one is not turned round, and none is turned round to a green in which another hole's line ends,
// unless that bears the hole's number: rather is its own green missing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/assembly/course_ground.hpp"

namespace landwidth {

struct HoleEnds {
    std::size_t green;  // index into the course's greens
    bool turned;        // the line runs from green to tee
    double short_by_m;  // how far the line ends before the green; 0: in it or past it
    // Of a line that runs on behind its green: by how much; 0: it ends in it or before it.
    double past_by_m;
    bool bears_number, bears_other_number;
};

// `path`: of the hole, at least two points; `numbers`: of the hole, may be empty. Absent when no green is in
// reach of either end.
std::optional<HoleEnds> ends_of(const MapFeature& hole, const LonLatPath& path,
                                const std::vector<std::string>& numbers, const CourseGround& ground,
                                double snap_m);

// The path, running towards the green, without what lies behind it.
LonLatPath ended_in_green(const LonLatPath& path, const Region& green, const PlaneFrame& frame);

}  // namespace landwidth
