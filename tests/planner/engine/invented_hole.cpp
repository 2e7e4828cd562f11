#include "tests/planner/engine/invented_hole.hpp"

#include <cmath>
#include <functional>

namespace landwidth::fixture {

namespace {

using Move = std::function<Point(Point)>;

Ring moved_ring(const Ring& ring, const Move& move) {
    Ring result;
    for (const Point& p : ring)
        result.push_back(move(p));
    return result;
}

Region moved_region(const Region& region, const Move& move) {
    std::vector<Region> parts;
    for (const PolygonRings& polygon : region.polygons()) {
        PolygonRings rings{moved_ring(polygon.outer, move), {}};
        for (const Ring& inner : polygon.inners)
            rings.inners.push_back(moved_ring(inner, move));
        parts.push_back(Region::repaired(rings).region);
    }
    return Region::united(parts);
}

HoleParts transformed(const HoleParts& parts, const Move& move, const Move& back) {
    HoleParts result = parts;
    result.line = moved_ring(parts.line, move);
    for (LieLayer& layer : result.layers)
        layer.region = moved_region(layer.region, move);
    if (parts.in_bounds) result.in_bounds = moved_region(*parts.in_bounds, move);
    for (TallGround& tall : result.tall)
        tall.region = moved_region(tall.region, move);
    if (parts.height_m)
        result.height_m = [height_m = parts.height_m, back](Point p) { return height_m(back(p)); };
    return result;
}

Region box_yd(double left, double bottom, double right, double top) {
    return Region::box({yd(left, bottom), yd(right, top)});
}

constexpr double canopy_step_m = 1.0, post_step_m = 2.0;

std::shared_ptr<const HeightRaster> heights_of(const HoleParts& parts, const Box& extent) {
    if (!parts.height_m) return nullptr;
    const auto posts = [](double length) { return static_cast<int>(std::ceil(length / post_step_m)) + 1; };
    const Point size = extent.max - extent.min;
    const int columns = posts(size.x);
    const int rows = posts(size.y);
    std::vector<float> heights_m;
    for (int row = 0; row < rows; ++row)
        for (int column = 0; column < columns; ++column)
            heights_m.push_back(static_cast<float>(parts.height_m(
                extent.min + Point{size.x * column / (columns - 1), size.y * row / (rows - 1)})));
    return std::make_shared<const HeightRaster>(extent, columns, rows, std::move(heights_m));
}

}  // namespace

Hole invented_hole(const HoleParts& parts) {
    Box extent{parts.line.front(), parts.line.front()};
    for (const Point& p : parts.line) {
        extent.min = {std::min(extent.min.x, p.x), std::min(extent.min.y, p.y)};
        extent.max = {std::max(extent.max.x, p.x), std::max(extent.max.y, p.y)};
    }
    const Box ground = extent.grown(yd(parts.margin_yd, 0).x);
    LiePartition lies(ground, parts.layers, parts.in_bounds);
    CanopyRaster canopy(lies, parts.tall, parts.trees_m, canopy_step_m);
    return {.ref = "1",
            .name = "",
            .feature = "way/1",
            .par = parts.par,
            .par_inferred = false,
            .stroke_index = std::nullopt,
            .tee = "",
            .frame = PlaneFrame({-27.0, 44.0}),
            .line = LineOfPlay(parts.line),
            .lies = std::move(lies),
            .surroundings = {},
            .canopy = std::move(canopy),
            .heights = heights_of(parts, ground)};
}

HoleParts straight_hole(double length_yd, double fairway_width_yd) {
    HoleParts parts;
    parts.line = {yd(0, 0), yd(0, length_yd)};
    parts.layers = {
        {Lie::teeing_area, box_yd(-5, -5, 5, 5)},
        {Lie::fairway, box_yd(-fairway_width_yd / 2, 60, fairway_width_yd / 2, length_yd - 15)},
        {Lie::green, Region::disc(yd(0, length_yd), yd(12, 0).x)},
    };
    return parts;
}

Region band(double from_yd, double to_yd) {
    return box_yd(-1000, from_yd, 1000, to_yd);
}

Region beyond(double offset_yd) {
    return offset_yd > 0 ? box_yd(offset_yd, -1000, 1000, 2000) : box_yd(-1000, -1000, offset_yd, 2000);
}

ShotPattern pattern(double carry_yd, double carry_sd_yd, double side_sd_yd, double run_yd) {
    ShotPattern result;
    result.usual = {{yd(carry_yd, 0).x, 0.0}, yd(carry_sd_yd, 0).x, yd(side_sd_yd, 0).x, 0.0};
    result.run_m = yd(run_yd, 0).x;
    result.shots = 30;
    return result;
}

Club club(const char* name, ClubKind kind, const ShotPattern& shots) {
    Club result;
    result.name = name;
    result.kind = kind;
    result.pattern = shots;
    return result;
}

Golfer club_golfer() {
    Golfer golfer;
    golfer.name = "Tester";
    golfer.handicap_index = 10.0;
    golfer.clubs = {club("driver", ClubKind::driver, pattern(230, 14, 20, 20)),
                    club("3-wood", ClubKind::fairway_wood, pattern(210, 12, 15, 15)),
                    club("hybrid", ClubKind::hybrid, pattern(190, 10, 12, 10)),
                    club("5-iron", ClubKind::iron, pattern(171, 9, 10.5, 7)),
                    club("7-iron", ClubKind::iron, pattern(150, 8, 9, 5)),
                    club("9-iron", ClubKind::iron, pattern(126, 7, 7.5, 3.5)),
                    club("wedge", ClubKind::wedge, pattern(100, 6, 6, 2))};
    return golfer;
}

Course course_of(std::vector<Hole> holes) {
    Course course;
    course.name = "invented";
    course.holes = std::move(holes);
    return course;
}

HoleParts mirrored(const HoleParts& parts) {
    const Move flip = [](Point p) { return Point{-p.x, p.y}; };
    return transformed(parts, flip, flip);
}

HoleParts turned(const HoleParts& parts, double clockwise_rad) {
    const auto turn = [](double radians) -> Move {
        const double c = std::cos(radians);
        const double s = std::sin(radians);
        return [=](Point p) { return Point{c * p.x + s * p.y, -s * p.x + c * p.y}; };
    };
    return transformed(parts, turn(clockwise_rad), turn(-clockwise_rad));
}

HoleParts moved(const HoleParts& parts, Point by) {
    return transformed(
        parts, [=](Point p) { return p + by; }, [=](Point p) { return p - by; });
}

Golfer mirrored(const Golfer& golfer) {
    Golfer result = golfer;
    const auto flip = [](Spread& spread) {
        spread.centre.side_m = -spread.centre.side_m;
        spread.correlation = -spread.correlation;
    };
    for (Club& club : result.clubs) {
        if (!club.pattern) continue;
        flip(club.pattern->usual);
        if (club.pattern->mishit) flip(club.pattern->mishit->spread);
    }
    return result;
}

const TeeChoice* choice_of(const HolePlan& plan, const Golfer& golfer, const char* club) {
    for (const TeeChoice& choice : plan.choices)
        if (golfer.clubs[choice.club].name == club) return &choice;
    return nullptr;
}

}  // namespace landwidth::fixture
