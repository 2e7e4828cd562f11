// What the map does not say and the reading has to assume. The values live in planner/engine/assumptions.cpp;
// this room only names what it needs.
#pragma once

namespace landwidth {

struct MapAssumptions {
    // Widths of watercourses drawn as a line without a width, metres.
    double stream_width_m;
    double ditch_width_m;
    double river_width_m;
    // Ground under a single tree, and half the width of a row of trees, metres.
    double tree_radius_m;
    // How high trees, scrub and buildings without a height stand over the ground, and a storey of a building,
    // metres.
    double tree_height_m;
    double scrub_height_m;
    double building_height_m;
    double storey_height_m;
    // Out of bounds beyond a line reaches this far, metres.
    double out_of_bounds_depth_m;
    // How far from the line of play ground counts as ground of the hole, metres.
    double hole_margin_m;
    // A pin, green or tee belongs to a hole when it lies within this of the line's end, metres.
    double snap_m;
    // A hole longer than this is a par 4 (5, 6), metres, men's lengths.
    double par4_from_m;
    double par5_from_m;
    double par6_from_m;
};

}  // namespace landwidth
