// Areas of which the file holds only a part: a lake or wood at the edge of an export.
//
// What is there is stretches of the outline. They are closed so that the area reaches as far as the data
// does:
//
//      +------------------+
//      |      outline  ___|    Where a stretch ends at the box of the export, or no further from it than its
//      |   ___________/  :|    points are from each other, the outline goes on along the box; else straight
//      |__/ a   | b       |    to the nearest open end. Along the box there are two ways round, one for each
//      +------------------+    side, a or b.
//
// The side is chosen by evidence: the one that swallows fewer of the places where golf is drawn; then the one
// that agrees with closed rings (inner ones inside, outer ones outside); then the smaller one. Closed rings
// and their roles stay as they are. Stretches are cut off at the box: ground beyond it is unknown.
#pragma once

#include <optional>
#include <vector>

#include "courses/reading/rings.hpp"
#include "courses/tags/map_extent.hpp"

namespace landwidth {

struct CutArea {
    std::vector<LonLatPolygon> polygons;  // empty: nothing that holds ground
    bool along_box = false;               // part of the outline is the box
};

// Adds places of what is drawn for golf and lies dry: where holes start and end, tees, greens, fairways,
// bunkers, pins; a few of each. Nothing once there are thousands.
void add_golf_places(const MapFeature& feature, std::vector<LonLat>& places);

// `box`: of the export, or for want of that of the data. Without one every open end goes straight to the
// nearest other. `golf`: places that no lake or wood covers, as far as known. Time grows with the square of
// the number of open ends.
CutArea cut_area(std::vector<OutlinePart> stretches, const std::optional<MapExtent>& box,
                 const std::vector<LonLat>& golf);

}  // namespace landwidth
