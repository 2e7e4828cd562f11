// What a feature of a map is to a golf hole.
#pragma once

namespace landwidth {

enum class Role {
    none,
    hole,
    tee,
    fairway,
    green,
    pin,
    bunker,
    rough,
    yellow_penalty_area,
    red_penalty_area,
    out_of_bounds,
    driving_range,
    other_golf,   // a golf=* value that says nothing about the lie
    other_sport,  // disc golf and the like, or a course out of use
    boundary,
    water,        // an area of water without a golf tag
    watercourse,  // a line of water without a golf tag
    coastline,
    sand,
    beach,
    trees,
    tree,
    tree_row,
    heath,  // heath and wetland: rough ground that may be worse than rough
    road,
    path,
    building,
    barrier,  // a fence, a wall, a hedge
};

}  // namespace landwidth
