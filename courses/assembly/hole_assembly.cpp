#include "courses/assembly/hole_assembly.hpp"

#include <algorithm>
#include <cmath>

#include "courses/assembly/hole_ground.hpp"
#include "courses/assembly/out_of_bounds.hpp"
#include "courses/assembly/scorecard.hpp"
#include "courses/assembly/sea.hpp"
#include "courses/assembly/tee_choice.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// Finer than the outline of a wood is known.
constexpr double canopy_cell_m = 1.0;

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

std::optional<Box> box_in_plane(const std::optional<MapBox>& map, const PlaneFrame& frame) {
    if (!map) return std::nullopt;
    std::vector<Point> corners;
    for (const double lon : {map->west, map->east}) {
        for (const double lat : {map->south, map->north})
            corners.push_back(frame.to_plane({lon, lat}));
    }
    return box_around(corners, 0.0);
}

void report_no_fairway(HoleDraft& draft, int par) {
    draft.report(Severity::warning, "fairway-missing", std::nullopt,
                 "no fairway is mapped for this par " + std::to_string(par) +
                     "; the plan takes all its open ground for rough and knows no landing width",
                 "draw the fairway as an area with golf=fairway");
}

}  // namespace

std::optional<Hole> assemble_hole(HoleDraft& draft, const CourseContext& course) {
    const MapAssumptions& assumptions = course.assumptions;
    const Par par = par_of(draft, assumptions);
    const std::optional<int> stroke_index = stroke_index_of(draft, course.holes_of_course);
    const TeePlayed tee = choose_tee(draft, course.ground, course.tee, assumptions.snap_m);
    const LonLat pin = pin_of(draft, course.ground);
    const FeaturePart& green = course.ground.greens()[*draft.green].part;

    const LonLat start = tee.start.value_or(draft.path.front());
    if (geodesic_distance(start, pin) < shortest_hole_m) {
        draft.report(Severity::error, "hole-length", start, "the hole's tee and pin are in the same place",
                     "draw the hole's line from tee to pin");
        return std::nullopt;
    }

    const PlaneFrame frame(start);
    const PlaneDrawing drawing(frame, course.notes.repairs());
    const Region green_ground = ground_of(green, drawing, 0.0);
    LineOfPlay line(vertices_to_pin(drawing.path(draft.path), frame.to_plane(pin), green_ground));
    if (tee.start) line = line.from_tee(frame.to_plane(*tee.start));

    const Box extent = box_around(line.vertices(), assumptions.hole_margin_m);
    DegreeBox degrees = DegreeBox::around(frame.origin());
    for (const Point p : line.vertices())
        degrees.add(frame.to_lonlat(p));
    degrees = degrees.grown(assumptions.hole_margin_m);
    const std::vector<const IndexedFeature*> near = course.index.near(degrees);
    for (const IndexedFeature* indexed : near)
        course.used.insert(indexed->feature);

    HoleGround ground =
        ground_of_hole(near, *green.feature, green.part, drawing, line, extent, assumptions, course.notes);
    OutOfBounds bounds = out_of_bounds_on({course.boundaries, ground.out_of_bounds_marks}, drawing, line,
                                          extent, assumptions.out_of_bounds_depth_m, draft);
    for (Region& out : bounds.out)
        ground.layers.push_back({Lie::out_of_bounds, std::move(out)});
    Region sea = sea_beside(ground.coastlines, drawing, line, extent, box_in_plane(course.map_box, frame),
                            course.notes, draft);
    if (!sea.empty()) ground.layers.push_back({Lie::penalty_red, std::move(sea)});
    add_other_holes(draft, course, drawing, extent, degrees, ground.surroundings);

    FairwayGround fairways =
        fairways_of(*draft.feature, course.fairways, near, *green.feature, green.part, drawing);
    if (par.strokes > 3 && fairways.own.empty()) report_no_fairway(draft, par.strokes);

    LiePartition lies(extent, ground.layers, bounds.in_bounds);
    CanopyRaster canopy(lies, ground.tall, assumptions.tree_height_m, canopy_cell_m);
    return Hole{.ref = draft.ref,
                .name = draft.feature->tag("name"),
                .feature = draft.feature->label(),
                .par = par.strokes,
                .par_inferred = par.inferred,
                .stroke_index = stroke_index,
                .tee = tee.name,
                .frame = frame,
                .line = std::move(line),
                .lies = std::move(lies),
                .surroundings = std::move(ground.surroundings),
                .canopy = std::move(canopy),
                .other_fairways = std::move(fairways.others)};
}

}  // namespace landwidth
