// What people call the ground of a golf hole, as tags: the names of layers, the values of a column, the names
// of placemarks.
//
// "Greens" is golf=green, "cart path" golf=cartpath, "Hole 3 fairway" golf=fairway and ref=3. Only a text
// that is a known phrase counts, once the number of the hole, counters ("bunker 2") and sides ("left") are
// taken out: "The Pond Café" is no pond. Water, trees and holes are what their shape lets them be: "trees"
// are a wood as an area, a row as a line, a tree as a point.
#pragma once

#include <optional>
#include <string_view>

#include "courses/tags/map_feature.hpp"

namespace landwidth {

enum class Drawn { point, line, area, unknown };

struct GroundWords {
    Tags tags;
    // Whether they say what the ground is; else only of which hole ("Hole 3" on an area).
    bool what = false;
};

// Absent for a text that says nothing of the kind.
std::optional<GroundWords> ground_words(std::string_view text, Drawn drawn);

}  // namespace landwidth
