#include "courses/assembly/hole_assembly.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "courses/assembly/hole_ground.hpp"
#include "courses/assembly/out_of_bounds.hpp"
#include "courses/assembly/reach_of_play.hpp"
#include "courses/assembly/scorecard.hpp"
#include "courses/assembly/sea.hpp"
#include "courses/assembly/tee_choice.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// Finer than the outline of a wood is known.
constexpr double canopy_cell_m = 1.0;

// What comes so near to the line of play is on it.
constexpr double on_line_m = 0.5;
// Long outlines are drawn right so far beyond the hole's ground, see outline_near.
constexpr double beyond_extent_m = 100.0;

// The line as drawn in the plane, its end moved to the pin. Corners inside the green are dropped: from there
// one putts.
std::vector<Point> vertices_to_pin(const std::vector<Point>& drawn, Point pin, const Region& green) {
    std::vector<Point> vertices = drawn;
    vertices.pop_back();
    while (vertices.size() > 1 && green.contains(vertices.back()))
        vertices.pop_back();
    vertices.push_back(pin);
    return vertices;
}

Box box_around(const std::vector<Point>& points, double margin_m) {
    Box box{points.front(), points.front()};
    for (const Point p : points) {
        box.min = {std::min(box.min.x, p.x), std::min(box.min.y, p.y)};
        box.max = {std::max(box.max.x, p.x), std::max(box.max.y, p.y)};
    }
    return box.grown(margin_m);
}

// The green and tees of the other holes that reach into the ground of this one.
void add_other_holes(const HoleDraft& draft, const CourseContext& course, const PlaneDrawing& drawing,
                     const Box& extent, const DegreeBox& degrees, std::vector<Surrounding>& surroundings) {
    const Region here = Region::box(extent);
    for (const HoleDraft* other : course.all_holes) {
        if (other->feature == draft.feature || !other->playable) continue;
        std::vector<const FeaturePart*> grounds;
        if (*other->green != *draft.green) grounds.push_back(&course.ground.greens()[*other->green].part);
        for (const std::size_t tee : other->tees)
            grounds.push_back(&course.ground.tees()[tee].part);
        std::vector<Region> parts;
        for (const FeaturePart* ground : grounds) {
            if (!ground->box.meets(degrees)) continue;
            Region part = ground_of(*ground, drawing, CourseGround::tee_around_m);
            if (part.meets(here)) parts.push_back(std::move(part));
        }
        if (!parts.empty())
            surroundings.push_back({Surrounding::Kind::other_hole, Region::united(parts), other->ref});
    }
}

std::optional<Box> box_in_plane(const std::optional<MapExtent>& map, const PlaneFrame& frame) {
    if (!map) return std::nullopt;
    std::vector<Point> corners;
    for (const double lon : {map->west, map->east}) {
        for (const double lat : {map->south, map->north})
            corners.push_back(frame.to_plane({lon, lat}));
    }
    return box_around(corners, 0.0);
}

bool lies_within(const Box& inner, const Box& outer) {
    return inner.min.x >= outer.min.x && inner.min.y >= outer.min.y && inner.max.x <= outer.max.x &&
           inner.max.y <= outer.max.y;
}

// Ground that shots reach and the map does not show is no known rough.
void report_map_edge(HoleDraft& draft, const std::vector<Point>& line, const std::optional<Box>& map,
                     const PlaneFrame& frame) {
    if (!map) return;
    const Box reach = box_around(line, reach_of_play_m);
    for (const auto& [end, name] : {std::pair{line.front(), "tee"}, std::pair{line.back(), "pin"}})
        if (!map->contains(end)) return draft.report<"map-edge/beyond">(frame.to_lonlat(end), name);
    const double beyond_m = std::max(std::max(map->min.x - reach.min.x, map->min.y - reach.min.y),
                                     std::max(reach.max.x - map->max.x, reach.max.y - map->max.y));
    if (beyond_m <= 0.0) return;
    const auto nearest = std::ranges::min_element(line, {}, [&](Point p) {
        return std::min(std::min(p.x - map->min.x, map->max.x - p.x),
                        std::min(p.y - map->min.y, map->max.y - p.y));
    });
    const double from_line_m = std::max(0.0, reach_of_play_m - beyond_m);
    draft.report<"map-edge">(frame.to_lonlat(*nearest), std::lround(from_line_m));
}

// From which tee to the pin.
struct PlayedLine {
    TeePlayed tee;
    PlaneFrame frame;
    LineOfPlay line;
};

// Absent, with an error among the draft's findings, for a line that no hole has.
std::optional<PlayedLine> played_line(HoleDraft& draft, const CourseContext& course) {
    const TeePlayed tee = choose_tee(draft, course.ground, course.tee, course.assumptions.snap_m);
    const LonLat pin = pin_of(draft, course.ground);
    const LonLat start = tee.start.value_or(draft.path.front());
    if (geodesic_distance(start, pin) < shortest_hole_m) {
        draft.report<"hole-length/none">(start);
        return std::nullopt;
    }
    const PlaneFrame frame(start);
    const PlaneDrawing drawing(frame, course.notes.repairs());
    const Region green = ground_of(course.ground.greens()[*draft.green].part, drawing, 0.0);
    LineOfPlay line(vertices_to_pin(drawing.path(draft.path), frame.to_plane(pin), green));
    if (tee.start) line = line.from_tee(frame.to_plane(*tee.start));
    if (line.length() > longest_hole_m) {
        draft.report<"hole-length/from-tee">(start, std::lround(line.length()));
        return std::nullopt;
    }
    return PlayedLine{tee, frame, std::move(line)};
}

// What is mapped near the line of a hole.
struct NearGround {
    Box extent;
    DegreeBox degrees;
    std::vector<const IndexedFeature*> features;
};

NearGround ground_near(const PlayedLine& played, const CourseContext& course) {
    const double margin_m = course.assumptions.hole_margin_m;
    DegreeBox degrees = DegreeBox::around(played.frame.origin());
    for (const Point p : played.line.vertices())
        degrees.add(played.frame.to_lonlat(p));
    degrees = degrees.grown(margin_m);
    return {box_around(played.line.vertices(), margin_m), degrees, course.index.near(degrees)};
}

struct LaidGround {
    LiePartition lies;
    CanopyRaster canopy;
    std::vector<Surrounding> surroundings;
};

LaidGround laid_ground(HoleDraft& draft, const PlayedLine& played, const NearGround& near,
                       const PlaneDrawing& drawing, const CourseContext& course) {
    const MapAssumptions& assumptions = course.assumptions;
    const LineOfPlay& line = played.line;
    const Box& extent = near.extent;
    const std::optional<Box> map_box = box_in_plane(course.map_box, played.frame);
    const FeaturePart& green = course.ground.greens()[*draft.green].part;
    HoleGround ground = ground_of_hole(near.features, *green.feature, green.part, drawing, line, extent,
                                       near.degrees.grown(beyond_extent_m), assumptions, course.notes);
    OutOfBounds bounds =
        out_of_bounds_on({course.boundaries, ground.out_of_bounds_marks, ground.drawn}, drawing, line, extent,
                         assumptions.out_of_bounds_depth_m, draft, course.notes);
    // Where the boundary lies within the map, what is beyond the map is out of bounds anyway.
    if (!bounds.in_bounds || !map_box || !lies_within(bounds.in_bounds->bounds(), *map_box))
        report_map_edge(draft, line.vertices(), map_box, played.frame);
    SettledGround lies_drawn = settled(ground.drawn, line, extent, played.frame, course.notes);
    for (Region& out : bounds.out)
        lies_drawn.layers.push_back({Lie::out_of_bounds, std::move(out)});
    std::ranges::move(lies_drawn.overhang, std::back_inserter(ground.tall));
    Region sea = sea_beside(ground.coastlines, drawing, line, extent, map_box, course.notes, draft);
    tell_ground_in_sea(sea, ground.coastlines, ground.drawn, drawing, line, course.notes);
    if (!sea.empty()) lies_drawn.layers.push_back({Lie::penalty_red, std::move(sea)});
    add_other_holes(draft, course, drawing, extent, near.degrees, ground.surroundings);
    LiePartition lies(extent, lies_drawn.layers, bounds.in_bounds);
    CanopyRaster canopy(lies, ground.tall, assumptions.tree_height_m, canopy_cell_m);
    return {std::move(lies), std::move(canopy), std::move(ground.surroundings)};
}

Hole laid_hole(HoleDraft& draft, const Par& par, std::optional<int> stroke_index, const PlayedLine& played,
               const NearGround& near, const CourseContext& course) {
    const PlaneDrawing drawing(played.frame, course.notes.repairs());
    LaidGround ground = laid_ground(draft, played, near, drawing, course);
    const FeaturePart& green = course.ground.greens()[*draft.green].part;
    FairwayGround fairways =
        fairways_of(*draft.feature, course.fairways, near.features, *green.feature, green.part, drawing);
    if (par.strokes > 3) {
        const bool crossed = fairways.own.meets(Region::around(played.line.vertices(), on_line_m));
        if (fairways.own.empty())
            draft.report<"fairway-missing">(std::nullopt, par.strokes);
        else if (!crossed)
            draft.report<"fairway-missing/beside">(std::nullopt);
    }
    return {.ref = draft.ref,
            .name = draft.feature->tag("name"),
            .feature = draft.feature->label(),
            .par = par.strokes,
            .par_inferred = par.inferred,
            .stroke_index = stroke_index,
            .tee = played.tee.name,
            .frame = played.frame,
            .line = played.line,
            .lies = std::move(ground.lies),
            .surroundings = std::move(ground.surroundings),
            .canopy = std::move(ground.canopy),
            .other_fairways = std::move(fairways.others),
            .mapped_ref = draft.mapped_ref};
}

}  // namespace

AssembledHole assemble_hole(HoleDraft draft, const CourseContext& course) {
    AssembledHole result;
    if (draft.playable) {
        const Par par = par_of(draft, course.assumptions);
        const std::optional<int> stroke_index = stroke_index_of(draft, course.holes_of_course);
        if (const std::optional<PlayedLine> played = played_line(draft, course)) {
            const NearGround near = ground_near(*played, course);
            result.hole = laid_hole(draft, par, stroke_index, *played, near, course);
            for (const IndexedFeature* indexed : near.features)
                result.ground.push_back(indexed->feature);
        }
    }
    result.findings = std::move(draft.findings);
    for (Finding& finding : result.findings)
        finding.hole = draft.ref;
    return result;
}

}  // namespace landwidth
