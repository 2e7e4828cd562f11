// Holes and golfers made by hand for the engine's tests. Lengths in yards here, as a golfer would say them.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "courses/course.hpp"
#include "golfer-profiles/profile.hpp"
#include "planner/engine/round_plan.hpp"

namespace landwidth::fixture {

// A point or step in yards.
constexpr Point yd(double x, double y) {
    return {x * metres_per_yard, y * metres_per_yard};
}

struct HoleParts {
    std::vector<Point> line;  // metres, tee first
    std::vector<LieLayer> layers;
    std::optional<Region> in_bounds;
    int par = 4;
    double margin_yd = 250.0;
    double trees_m = 12.0;  // how high all trees stand that `tall` says nothing of
    std::vector<TallGround> tall = {};
    std::function<double(Point)> height_m = {};  // of the ground; flat without
};
Hole invented_hole(const HoleParts& parts);

// From (0, 0) due north: fairway 60 yd from the tee to the green, a round green of 12 yd radius.
HoleParts straight_hole(double length_yd, double fairway_width_yd);

// Everything between two stations, across the whole hole.
Region band(double from_yd, double to_yd);
// Everything to the right of x = offset (negative: left of it).
Region beyond(double offset_yd);

ShotPattern pattern(double carry_yd, double carry_sd_yd, double side_sd_yd, double run_yd);
Club club(const char* name, ClubKind kind, const ShotPattern& shots);

// driver 230 + 20, 3-wood 210 + 15, hybrid 190 + 10, 5-iron 171 + 7, 7-iron 150 + 5, 9-iron 126 + 3.5, wedge
// 100 + 2; side spreads 20, 15, 12, 10.5, 9, 7.5, 6 yd.
Golfer club_golfer();

Course course_of(std::vector<Hole> holes);

// The same ground and line seen in a mirror (x turned to -x), turned clockwise by an angle, or moved.
HoleParts mirrored(const HoleParts& parts);
HoleParts turned(const HoleParts& parts, double clockwise_rad);
HoleParts moved(const HoleParts& parts, Point by);
Golfer mirrored(const Golfer& golfer);

const TeeChoice* choice_of(const HolePlan& plan, const Golfer& golfer, const char* club);

}  // namespace landwidth::fixture
