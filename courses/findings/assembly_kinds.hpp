// What putting the holes of a course together can have to tell.
#pragma once

#include "courses/findings/finding_kind.hpp"

namespace landwidth {

namespace advised {
inline constexpr std::string_view one_line = "draw golf=hole as one line from tee to pin";
inline constexpr std::string_view line_to_pin = "draw the line to the pin";
inline constexpr std::string_view number_the_hole = "set ref to the number of the hole";
inline constexpr std::string_view land_on_left = "draw every coastline with the land on its left";
inline constexpr std::string_view bounds_as_area = "draw out of bounds as an area";
}  // namespace advised

// clang-format off
inline constexpr FindingKind assembly_kinds[]{
    // The course as a whole: what it lacks is more likely missing on the map than on the ground.
    {"ground-missing", Weight::warning, Bears::on_course,
     "the map has lines of holes and no ground drawn for golf, so that nothing can be planned",
     "draw the greens first, then tees, fairways, bunkers, water, woods and the boundary"},
    {"bunkers-missing", Weight::warning, Bears::on_course,
     "no bunker is mapped on the whole course; the plan reckons with none",
     "draw the bunkers with golf=bunker, unless there are none"},
    {"water-missing", Weight::note, Bears::on_course,
     "no water or penalty area is mapped on the whole course; the plan reckons with none",
     "draw it with golf=lateral_water_hazard, golf=water_hazard or natural=water, unless there is none"},
    {"boundary-missing", Weight::note, Bears::on_course,
     "the course has no boundary; only golf=out_of_bounds is out of bounds",
     "draw the course as an area with leisure=golf_course"},
    {"boundary-missing/edge-unknown", Weight::warning, Bears::on_course,
     "the course has no boundary and the file does not say where its map ends; ground on which nothing is "
     "drawn is taken for rough",
     "check that the map reaches 100 m and more around the holes, or draw leisure=golf_course"},
    // The id of the only one.
    {"features-unused/one", Weight::note, Bears::on_course,
     "1 golf feature lies on the ground of no hole ({})",
     "nothing, unless a hole is missing"},
    // How many, the id of the first.
    {"features-unused/several", Weight::note, Bears::on_course,
     "{} golf features lie on the ground of no hole (the first: {})",
     "nothing, unless a hole is missing"},
    // Tags.
    {"golf-unknown", Weight::note, Bears::on_course,
     "{} says nothing about the lie; the ground there counts as what else is mapped",
     "nothing, or tag it as fairway, rough, bunker, ..."},
    {"course-inferred", Weight::note, Bears::on_hole,
     "the hole names no course; it is taken for one of \"{}\"",
     "set golf:course:name"},

    // The line of a hole.
    {"hole-not-a-line/point", Weight::error, Bears::on_hole,
     "the hole is drawn as a point, not as a line from tee to pin", advised::one_line},
    {"hole-not-a-line/closed", Weight::error, Bears::on_hole,
     "the hole's line is closed: it ends where it starts", advised::one_line},
    {"hole-not-a-line/only-a-point", Weight::error, Bears::on_hole,
     "golf=hole is drawn as a point here; a hole needs a line from tee to pin", advised::one_line},
    {"hole-not-a-line/also-a-point", Weight::note, Bears::on_hole,
     "golf=hole is drawn as a point here and not used", advised::one_line},
    // How many, "point" or "points", "is" or "are".
    {"hole-points-missing", Weight::error, Bears::on_hole,
     "{} {} of the hole's line {} not in the file",
     "export a larger area, with all points of the hole's line in it"},
    {"hole-line-point/none", Weight::error, Bears::on_hole,
     "the hole's line has no point in the file", advised::one_line},
    {"hole-line-point/one", Weight::error, Bears::on_hole,
     "the hole's line has only one point", advised::one_line},
    // Metres.
    {"hole-length/line", Weight::error, Bears::on_hole, "the hole's line is {} m long, which no golf hole is",
     "check the line and the coordinate reference system of the map"},
    {"hole-length/from-tee", Weight::error, Bears::on_hole,
     "from its tee to its pin the hole is {} m long, which no golf hole is",
     "check the hole's line, tee, green and pin"},
    {"hole-length/none", Weight::error, Bears::on_hole,
     "the hole's tee and pin are in the same place",
     "draw the hole's line from tee to pin"},
    // Metres.
    {"line-in-parts/gap", Weight::warning, Bears::on_hole,
     "the hole's line is in parts up to {} m apart, taken as one",
     "draw it as one line from tee to pin"},
    {"line-in-parts/too-far", Weight::error, Bears::on_hole,
     "the hole's line is in parts that lie too far apart", advised::one_line},
    // Ids.
    {"line-in-parts/two-lines", Weight::warning, Bears::on_hole,
     "the hole is drawn as two lines, {} and {}, taken as one",
     "draw it as one line from tee to pin"},
    {"line-turned-round", Weight::warning, Bears::on_hole,
     "the hole's line runs from green to tee and is turned round",
     "draw it from tee to pin"},
    // Ids: the other line, the one that counts.
    {"alternative-line/tee", Weight::note, Bears::on_hole,
     "{} is another line to the same green, from another tee; {}, which starts at the tee asked for, counts",
     "name the tee with --tee to play the other"},
    {"alternative-line/longer", Weight::note, Bears::on_hole,
     "{} is another line to the same green, from another tee; {}, the longer one, counts",
     "name the tee with --tee to play the other"},

    // Its green and its pin. Metres, the id of the green.
    {"green-missing", Weight::error, Bears::on_hole,
     "no golf=green lies within {} m of the end of the hole's line",
     "map the green as an area, or draw the line to it"},
    // The id of the green, its ref.
    {"green-of-another", Weight::warning, Bears::on_hole,
     "the green at the end of the hole's line, {}, bears the number {}",
     "correct the ref of the green or of the hole"},
    {"line-past-green", Weight::warning, Bears::on_hole,
     "the hole's line runs on {} m behind its green, {}, and is ended there", advised::line_to_pin},
    {"green-snapped/near", Weight::note, Bears::on_hole, "the hole's line ends {} m short of its green, {}",
     advised::line_to_pin},
    {"green-snapped/by-number", Weight::warning, Bears::on_hole,
     "the hole's line ends {} m short of its green, {}, which is known by its number", advised::line_to_pin},
    {"pin-inferred/hole-point", Weight::note, Bears::on_hole,
     "no golf=pin in the green; the point {} tagged golf=hole is taken",
     "tag it golf=pin"},
    // "end of the hole's line" or "middle of the green".
    {"pin-inferred", Weight::note, Bears::on_hole,
     "no golf=pin in the green; the {} is taken",
     "map the pin, or aim for the middle of the green"},

    // Its number.
    {"ref-missing", Weight::warning, Bears::on_hole,
     "the hole has no ref; it is called {}, the first number that is free", advised::number_the_hole},
    {"ref-inferred", Weight::note, Bears::on_hole, "the hole has no ref; its number is taken from its name",
     advised::number_the_hole},
    {"ref-unreadable", Weight::warning, Bears::on_hole,
     "ref \"{}\" is no number; the hole comes after the numbered ones", advised::number_the_hole},
    // The ref, what this hole is called.
    {"ref-doubled", Weight::warning, Bears::on_hole, "ref {} is used by several holes; this one is called {}",
     "give every hole of the course its own ref, or set golf:course:name where there are several courses"},
    {"ref-renumbered", Weight::note, Bears::on_hole,
     "hole {} of its loop, numbered on after the loops before it",
     "nothing, if the loops are played in this order"},
    {"played-twice", Weight::note, Bears::on_hole,
     "its ref is \"{}\": one line played as several holes",
     "nothing, if the round goes over it twice"},

    // Its card. Par, yards.
    {"par-doubtful", Weight::warning, Bears::on_hole,
     "par {} on a line of {} yd is doubtful; it is kept",
     "check par and the hole's line"},
    // The list, what is taken of it.
    {"par-listed", Weight::note, Bears::on_hole,
     "par is \"{}\"; {} is taken",
     "set the par of the tees you play"},
    {"par-inferred", Weight::note, Bears::on_hole,
     "no par is given; par {} is inferred from the length of {} yd",
     "set par on the hole"},
    // What it says, par, yards.
    {"par-unreadable", Weight::warning, Bears::on_hole,
     "par \"{}\" is not between 3 and 6; par {} is inferred from the length of {} yd",
     "set par on the hole"},
    // What it says, the highest there can be.
    {"handicap-unreadable", Weight::warning, Bears::on_hole,
     "handicap \"{}\" is no stroke index from 1 to {} and is left out",
     "correct the handicap tag"},

    // Its tee. The name asked for, "" or " (there is red and white)".
    {"tee-missing", Weight::warning, Bears::on_hole,
     "the hole has no tee called \"{0}\"{1}; it is played from the start of its line",
     "map the tee with golf=tee and tee={0}, or choose another"},
    {"tee-unmapped", Weight::note, Bears::on_hole,
     "no teeing area at the start of the hole's line; it is played from there",
     "map the tee with golf=tee"},
    // Metres, the id of the teeing area.
    {"tee-snapped", Weight::note, Bears::on_hole,
     "the hole's line starts {} m from the nearest teeing area, {}, and is played from the middle of it",
     "start the line in the tee it is for"},
    // "point" or "line", metres.
    {"tee-not-an-area", Weight::note, Bears::on_feature,
     "golf=tee is drawn as a {1}; it is taken for {2:.3g} m around it",
     "draw the outline of the tee"},

    // Its ground.
    {"fairway-missing", Weight::warning, Bears::on_hole,
     "no fairway is mapped for this par {}; the plan takes all its open ground for rough and knows no "
     "landing width",
     "draw the fairway as an area with golf=fairway"},
    {"fairway-missing/beside", Weight::warning, Bears::on_hole,
     "the hole's fairway lies beside its line of play all the way",
     "draw the line along the fairway, or the fairway that is missing"},
    // "tee" or "pin".
    {"map-edge/beyond", Weight::warning, Bears::on_hole,
     "the hole's {} lies beyond the edge of the map; ground there is unknown and taken for rough",
     "export a larger area, 100 m and more around the course"},
    // Metres.
    {"map-edge", Weight::warning, Bears::on_hole,
     "the map ends {} m beside the hole's line; ground beyond is unknown and taken for rough",
     "export a larger area, 100 m and more around the course"},
    // Of the second: its tag, its id; square metres, a lie, "" or " with branches over it".
    {"overlap-unclear", Weight::warning, Bears::on_feature,
     "{} and {} ({}) both cover {} m2; it counts as {}{}",
     "draw their edges so that they meet"},
    // The coastline, square metres.
    {"overlap-unclear/sea", Weight::warning, Bears::on_feature,
     "{} reaches over the coastline ({}); {} m2 of it count as penalty area",
     "draw their edges so that they meet"},
    {"sand-as-bunker", Weight::note, Bears::on_feature,
     "natural=sand without a golf tag, taken for a bunker",
     "tag it golf=bunker"},
    {"heath-as-rough", Weight::note, Bears::on_feature,
     "{}, taken for rough",
     "tag it golf=lateral_water_hazard if it is a penalty area"},
    {"water-as-red", Weight::note, Bears::on_feature, "{} without a golf tag, taken for a red penalty area",
     "tag it golf=water_hazard if it is marked yellow"},
    {"water-intermittent", Weight::note, Bears::on_feature,
     "{} does not always hold water; it is a penalty area all the same",
     "check with the course"},
    {"water-under-ground", Weight::note, Bears::on_feature,
     "{} runs under ground here and is left out",
     "nothing, if it cannot be seen"},
    // Metres.
    {"width-assumed", Weight::note, Bears::on_feature,
     "{} has no width; it is taken for {:.3g} m wide",
     "set width in metres"},
    // The tag, metres.
    {"width-assumed/unreadable", Weight::note, Bears::on_feature,
     "{} has {}, which cannot be read; it is taken for {:.3g} m wide",
     "set width in metres"},
    {"height-assumed", Weight::note, Bears::on_feature,
     "{} has {}, which cannot be read as its height; it is taken for {:.3g} m high",
     "set height in metres"},
    {"in-play/beach", Weight::note, Bears::on_feature,
     "{} lies in play; it counts as what else is mapped there, else as rough",
     "tag it golf=bunker or golf=lateral_water_hazard if it plays as one"},
    {"in-play/barrier", Weight::note, Bears::on_feature,
     "{} stands in play; the plan lets balls fly over it and roll through",
     "draw golf=out_of_bounds along it if it bounds the course"},

    // Out of bounds. The id of the boundary.
    {"boundary-inside", Weight::warning, Bears::on_feature,
     "{} reaches beyond the course boundary ({}); it counts as in bounds",
     "draw the boundary round it"},
    // The id of the out-of-bounds area, square metres.
    {"out-of-bounds-over", Weight::warning, Bears::on_feature,
     "{} and {} (golf=out_of_bounds) both cover {} m2; it counts as out of bounds",
     "draw their edges so that they meet"},
    // "tee" or "green".
    {"boundary-unused", Weight::warning, Bears::on_hole,
     "the hole's {} lies outside the course boundary, which is not applied on this hole",
     "correct the leisure=golf_course area"},
    // The id of the boundary.
    {"boundary-beside", Weight::warning, Bears::on_course,
     "no hole lies in the course boundary beside them, {}, so that nothing is out of bounds by it",
     "draw leisure=golf_course round the holes"},
    // Ids of what is tagged so.
    {"out-of-bounds-unclear/point", Weight::warning, Bears::on_hole,
     "{} (golf=out_of_bounds) is only a point and is left out",
     "draw out of bounds as a line or an area"},
    // Also "tee" or "green".
    {"out-of-bounds-unclear/one-end", Weight::warning, Bears::on_hole,
     "{} (golf=out_of_bounds) holds the hole's {} but not both ends, so that which side is out cannot be "
     "told; it is left out",
     "correct the out-of-bounds area"},
    {"out-of-bounds-unclear/crossing", Weight::warning, Bears::on_hole,
     "{} (golf=out_of_bounds) crosses the line of play, so that which side is out cannot be told; it is left "
     "out",
     advised::bounds_as_area},
    {"out-of-bounds-unclear/bend", Weight::warning, Bears::on_hole,
     "{} (golf=out_of_bounds) bends round the line of play; parts of it that would put the line of play out "
     "are left out",
     advised::bounds_as_area},

    // The sea.
    {"sea-as-red", Weight::note, Bears::on_feature,
     "the sea beside natural=coastline is taken for a red penalty area",
     "draw it as an area with golf=water_hazard if it is marked yellow"},
    {"coastline-ends", Weight::warning, Bears::on_feature,
     "natural=coastline ends beside a hole; it is taken to go on straight from there",
     "export a larger piece of the map, or draw the coastline on"},
    {"coastline-contradicts", Weight::warning, Bears::on_feature,
     "natural=coastline has the sea on both its sides, seen together with the others near",
     advised::land_on_left},
    {"coastline-turned-round", Weight::warning, Bears::on_feature,
     "natural=coastline puts the holes into the sea; it is taken the other way round",
     "draw it with the land on its left"},
    // "tee" or "pin".
    {"hole-in-the-sea", Weight::warning, Bears::on_hole, "the {} lies in the sea by natural=coastline",
     "draw every coastline with the land on its left, and islands closed"},
};
// clang-format on

}  // namespace landwidth
