// What reading a map file can have to tell.
#pragma once

#include "courses/findings/finding_kind.hpp"

namespace landwidth {

namespace advised {
inline constexpr std::string_view export_more =
    "export a larger area, with all points and members of what lies in it";
inline constexpr std::string_view draw_it_or_remove_it = "draw it or remove the feature";
inline constexpr std::string_view draw_its_outline = "draw its outline";
inline constexpr std::string_view draw_the_outline = "draw the outline or remove the feature";
inline constexpr std::string_view remove_one = "remove one of the two";
}  // namespace advised

// clang-format off
inline constexpr FindingKind reading_kinds[]{
    // The file.
    {"export-incomplete", Weight::warning, Bears::on_course,
     "the export says of itself: {}",
     "export it again"},
    // A number of elements.
    {"elements-doubled", Weight::note, Bears::on_course,
     "{} elements come more than once; of each the one with more in it is taken",
     "nothing, if the export writes its elements once more without tags"},
    {"elements-deleted", Weight::note, Bears::on_course,
     "{} elements are marked as deleted and left out",
     "nothing, if they are meant to go"},
    {"crs-missing", Weight::warning, Bears::on_course,
     "layer {} has no coordinate reference system; its coordinates are taken for WGS 84 longitude and "
     "latitude",
     "check that the course lies where it should, or save the layer with its reference system"},
    // A number of features, a layer.
    {"tags-cut-off", Weight::warning, Bears::on_course,
     "{} features of layer {} have tags in one text that breaks off, so that some are lost",
     "export with the golf tags in fields of their own, or to GeoPackage"},

    // What the user says the layers and columns mean.
    {"tag-mapping-unused", Weight::warning, Bears::on_course,
     "--tags is not used: OpenStreetMap data brings its own tags",
     "correct the tags in the map itself"},
    // Where the rule stands; what it says.
    {"tag-rule-unmatched", Weight::warning, Bears::on_course,
     "{}: nothing on this map fits",
     "correct or remove the line"},
    {"tag-rule-says-nothing", Weight::warning, Bears::on_course,
     "{}: {} says nothing about the ground",
     "use a tag that does, such as golf=fairway, natural=wood"},
    {"tag-rule-says-nothing/some", Weight::warning, Bears::on_course,
     "{}: of the tags it gives, these say nothing about the ground: {}",
     "give these features tags that do by lines of their own, before this one"},
    {"words-unknown", Weight::warning, Bears::on_course,
     "{}: these say nothing about the ground, so that their features are left out: {}",
     "if they are ground of a hole, say what they mean in a file for --tags"},

    // Shapes as they were drawn.
    {"shape-missing", Weight::as_lost, Bears::on_feature,
     "{} has no shape and is left out", advised::draw_it_or_remove_it},
    {"shape-empty", Weight::warning, Bears::on_feature,
     "{} has an empty ring, which is left out", advised::draw_the_outline},
    {"shape-huge", Weight::warning, Bears::on_feature,
     "{} reaches further than any course, so that a point of it must be misplaced; it is left out",
     "correct the misplaced point"},
    {"point-stray", Weight::as_lost, Bears::on_feature,
     "one point of {} lies {:.1f} km away from the others and is left out",
     "move the point to where it belongs"},
    {"line-point", Weight::as_lost, Bears::on_feature,
     "{} is a line with only one point, which is left out", advised::draw_it_or_remove_it},
    {"area-open", Weight::as_lost, Bears::on_feature,
     "{} is a line that does not close, so that it holds no ground; it is left out", "close the outline"},
    // "an area" or "a line".
    {"area-missing", Weight::as_lost, Bears::on_feature,
     "{} is only a point where {} is needed; it is left out", advised::draw_its_outline},
    {"area-missing/water", Weight::warning, Bears::on_feature,
     "{} is drawn as a point and is left out", advised::draw_its_outline},
    // Metres.
    {"ring-closed/gap", Weight::warning, Bears::on_feature,
     "{} is an outline with a gap of {} m, taken as closed",
     "join the last point to the first"},
    {"ring-closed/not-repeated", Weight::note, Bears::on_feature,
     "{} has a ring that is not closed, taken as closed",
     "repeat the first point as the last"},
    {"ring-repaired", Weight::warning, Bears::on_feature,
     "{} was not a valid area ({}) and was repaired",
     "redraw its outline so that it does not cross itself"},
    {"ring-thin/points", Weight::as_lost, Bears::on_feature,
     "{} has a ring of fewer than three different points, which holds no ground and is left out",
     advised::draw_the_outline},
    {"ring-thin/no-ground", Weight::warning, Bears::on_feature,
     "{} encloses no ground and is left out",
     "draw its outline or remove it"},
    // "2 of its 3 points are".
    {"ring-thin/way", Weight::as_lost, Bears::on_feature,
     "{} has fewer than two points ({} not in the file) and is left out",
     "draw it or remove the way"},
    {"ring-thin/cut", Weight::as_lost, Bears::on_feature,
     "{} holds no ground in what is left of it and is left out", advised::export_more},
    // The id of the other.
    {"drawn-twice", Weight::note, Bears::on_feature,
     "{} is the same as {} and is left out", advised::remove_one},

    // What an export cut. What is lost: "2 of its 5 points are".
    {"points-missing", Weight::as_lost, Bears::on_feature,
     "{} is cut: {} not in the file; its shape is what is left", advised::export_more},
    {"boundary-cut", Weight::warning, Bears::on_feature,
     "{} is cut: {}; it is no boundary, and nothing is out of bounds by it", advised::export_more},
    // What is there: "2 of its 5 members are in the file".
    {"relation-cut/line", Weight::as_lost, Bears::on_feature,
     "{} is cut: {}; its shape is what is left", advised::export_more},
    // The number of the way whose tags it has; what is there.
    {"relation-cut/rings-of-way", Weight::as_lost, Bears::on_feature,
     "{} of way/{} is cut: {}; rings inside it may be missing", advised::export_more},
    {"relation-cut/no-ground", Weight::as_lost, Bears::on_feature,
     "{} is cut: {}; nothing of it holds ground, and it is left out", advised::export_more},
    {"relation-cut/shortest-way", Weight::as_lost, Bears::on_feature,
     "{} is cut: {}; it is built of what is there, closed the shortest way", advised::export_more},
    {"relation-cut/edge-of-data", Weight::as_lost, Bears::on_feature,
     "{} is cut: {}; it is built as far as it reaches, closed along the edge of the data",
     advised::export_more},
    {"relation-cut/box", Weight::as_lost, Bears::on_feature,
     "{} is cut: {}; it is built as far as it reaches, closed along the box of the export",
     advised::export_more},

    // Relations.
    {"relation-incomplete/empty", Weight::as_lost, Bears::on_feature,
     "{} could not be built and is left out: it has no members with points",
     "export a larger area with all members, or repair the relation"},
    // Ids.
    {"relation-incomplete/members", Weight::as_lost, Bears::on_feature,
     "{} could not be built and is left out: the file lacks its members {}",
     "export a larger area with all members, or repair the relation"},
    {"relation-incomplete/rings-open", Weight::as_lost, Bears::on_feature,
     "{} could not be built and is left out: its rings do not close",
     "join the outline's ends, or repair the relation"},
    {"relation-incomplete/ring-open", Weight::as_lost, Bears::on_feature,
     "{} has a ring that does not close, which is left out",
     "join the outline's ends, or repair the relation"},
    {"relation-unused", Weight::note, Bears::on_feature,
     "{} is a relation that is no multipolygon; it is not used",
     "tag the members themselves, or make it a multipolygon"},
    // "way/1 itself" or "way/1 and way/2".
    {"relation-crossing", Weight::warning, Bears::on_feature,
     "{} has rings that cross ({})",
     "correct the outline where it crosses"},
    {"relation-doubled/stretch", Weight::note, Bears::on_feature,
     "{} has a stretch of its outline drawn twice", advised::remove_one},
    {"relation-doubled/member", Weight::note, Bears::on_feature,
     "{} has {} as a member twice", advised::remove_one},
    // The id of the member, "inner" or "outer".
    {"relation-role", Weight::note, Bears::on_feature,
     "{} has the member {} whose role should be \"{}\" by where it runs; it is taken for that",
     "correct the role"},
};
// clang-format on

}  // namespace landwidth
