// Areas of which the file holds only a part: a lake or wood at the edge of an export.
//
// What is there is stretches of the outline. They are closed so that the area reaches as far as the data
// does:
//
//      +-----------------+  box of the export          Where a stretch ends at the edge (or nearer to it than
//      to |      stretch  __|                             the end of another), the outline goes on along the
//      box; |   ___________/ :|  ':' the side along the     else straight to the nearest open end. Along the
//      box there
//      |__/ a | b        |  box, a or b                are two ways round, one for each side of the
//      stretches.
//      +-----------------+
//
// The side is chosen by evidence: the one that swallows fewer of the places where golf is drawn; then the one
// that agrees with closed rings (inner ones inside, outer ones outside); then the smaller one. Closed rings
// and their roles stay as they are. Stretches are cut off at the box: ground beyond it is unknown.
#pragma once

#include <optional>
#include <vector>

#include "courses/reading/map_extent.hpp"
#include "courses/reading/rings.hpp"

namespace landwidth {

struct CutArea {
    std::vector<LonLatPolygon> polygons;  // empty: nothing that holds ground
    bool along_box = false;               // part of the outline is the box
};

// Without a box every open end goes straight to the nearest other. `golf`: places that no lake or wood
// covers, as far as known. Time grows with the square of the number of open ends.
CutArea cut_area(std::vector<Stretch> stretches, const std::optional<MapExtent>& box,
                 const std::vector<LonLat>& golf);

}  // namespace landwidth
