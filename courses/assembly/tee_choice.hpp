// Which teeing areas belong to which hole, and which one is played from.
//
// A teeing area belongs to the hole whose first part its middle lies nearest to, within snap_m, and to every
// other hole whose line is as near to it within 3 m: both loops of nine, a hole played twice. The first part
// goes from 100 m behind the start of the line to three fifths of it or 200 m ahead, whichever is less. A tee
// whose ref lists numbers of holes nearby ("1;10") belongs to all of those, within three times snap_m, and to
// no other.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/assembly/hole_draft.hpp"

namespace landwidth {

// Whether a feature is the tee of this name: an item of its `tee` tag, its `colour`, its `name` or a word of
// it, or its `ref` (which mostly is the number of the hole). Without regard to case.
bool goes_by_tee(const MapFeature& feature, const std::string& name);

// Of each hole the indices of the course's tees that belong to it; none of one that is not playable.
std::vector<std::vector<std::size_t>> tees_of(const std::vector<HoleDraft>& drafts,
                                              const CourseGround& ground, double snap_m);

struct TeePlayed {
    std::string name;             // may be empty
    std::optional<LonLat> start;  // where to play from; absent: the start of the line as drawn
};

// The tee asked for, of those of the hole the nearest to the start of its line; a hole without it is played
// from the start of its line (a warning). Nothing asked for: the teeing area that contains the start of the
// line, else the nearest within snap_m, from its middle (a note), else the start as drawn (a note).
TeePlayed choose_tee(HoleDraft& draft, const CourseGround& ground, const std::string& wish, double snap_m);

// The names of the tees of a hole, for saying which there are.
std::vector<std::string> tee_names(const HoleDraft& draft, const CourseGround& ground);

}  // namespace landwidth
