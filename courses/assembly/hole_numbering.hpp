// The numbers of a course's holes: every hole once, every number once.
//
// Rules, each a finding on the hole it changes:
// - Two lines with one ref of which one ends where the other starts, away from any green, are one hole drawn
//   in two pieces and are joined.
// - Two lines with one ref and one green are the same hole from different tees: the one that starts at the
// tee
//   asked for counts, else the longer one (a note).
// - A ref that lists numbers ("1;10") is one hole played as each of them (a note), unless another line has
// the
//   number.
// - One ref, different greens: the later ones get a letter, "7b", "7c" (a warning).
// - No ref: the number in the name if it has one and it is free (a note), else the first free number (a
//   warning).
// - A ref without a number in it stays as it is (a warning) and is played after the numbered ones.
#pragma once

#include <string>
#include <vector>

#include "courses/assembly/hole_draft.hpp"

namespace landwidth {

// The drafts with their numbers: `number` and `ref` are the same now. `tee`: the tee asked for, may be empty.
std::vector<HoleDraft> number_holes(std::vector<HoleDraft> drafts, const CourseGround& ground,
                                    const std::string& tee, double snap_m);

// The holes of a round: numbered holes ascending ("7" before "7b"), then the others in file order. Loops are
// played one after the other: when they share numbers, the refs of the later loops go on from the earlier
// ones (1-9 becomes 10-18; a note on each hole), and `number` stays what it is on the map.
std::vector<HoleDraft> in_order_of_play(std::vector<std::vector<HoleDraft>> loops);

}  // namespace landwidth
