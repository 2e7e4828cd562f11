// Par and stroke index of a hole from its tags.
//
// Rules: par is 3 to 6; of a list ("4;5") the item that goes with the hole's ref, else the first (a note).
// Missing or unreadable (a warning) par is inferred from the length of the line as drawn (a note). A par that
// fits no length near the line's is kept with a warning: the line more than a quarter longer than the longest
// or a third shorter than the shortest hole of that par. A stroke index below 1 or above both 18 and the
// number of holes is left out with a warning.
#pragma once

#include <optional>

#include "courses/assembly/hole_draft.hpp"
#include "courses/map_assumptions.hpp"

namespace landwidth {

struct Par {
    int strokes;  // 3..6
    bool inferred;
};

Par par_of(HoleDraft& draft, const MapAssumptions& assumptions);
int par_for_length(double length_m, const MapAssumptions& assumptions);
std::optional<int> stroke_index_of(HoleDraft& draft, std::size_t holes_of_course);

}  // namespace landwidth
