#include "planner/engine/aim_description.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

#include "geometry/landing_width.hpp"

namespace landwidth {

namespace {

constexpr double landing_reach_m = Yards{100.0}.metres();
// What is worth naming: not at the golfer's feet, not out of sight beyond the ball, not far from the aim
// line.
constexpr double nearest_m = Yards{60.0}.metres();
constexpr double beyond_ball_m = Yards{120.0}.metres();
constexpr double furthest_aside_m = Yards{15.0}.metres();
// A thing wider than this from the tee is no target; its edges still are.
constexpr double widest_target_rad = 6.0 * radians_per_degree;
// An object beats a mown edge that is this much nearer to the aim line.
constexpr double mown_edge_handicap_m = Yards{3.0}.metres();
// Things near the distance of the ball are easier to aim by: what a yard of depth counts against a yard
// aside.
constexpr double depth_share = 0.05;

// The angle a thing takes up as seen from the tee, relative to the aim line, and how far its edges are.
struct Sight {
    double left_rad = std::numeric_limits<double>::infinity();
    double right_rad = -std::numeric_limits<double>::infinity();
    double left_distance_m = 0.0;
    double right_distance_m = 0.0;
    double nearest_m = std::numeric_limits<double>::infinity();
};

Sight sight_of(const Ring& ring, Point tee, double aim) {
    Sight sight;
    for (const Point& p : ring) {
        const Point step = p - tee;
        const double angle = std::remainder(plane_bearing(step) - aim, 2.0 * std::numbers::pi);
        const double away = length(step);
        if (angle < sight.left_rad) {
            sight.left_rad = angle;
            sight.left_distance_m = away;
        }
        if (angle > sight.right_rad) {
            sight.right_rad = angle;
            sight.right_distance_m = away;
        }
        sight.nearest_m = std::min(sight.nearest_m, away);
    }
    return sight;
}

struct Candidate {
    Sighting sighting;
    double rank_m;  // the smaller the better
};

void offer(std::optional<Candidate>& best, const Sighting& sighting, double rank_m) {
    if (std::abs(sighting.offset_m) > furthest_aside_m) return;
    if (!best || rank_m < best->rank_m) best = Candidate{sighting, rank_m};
}

// The offset of the aim line from the edge, right positive: an edge at a negative angle lies to the left of
// it.
void offer_edge(std::optional<Candidate>& best, Sighting sighting, double angle, double depth_m) {
    sighting.offset_m = -sighting.distance_m * std::sin(angle);
    offer(best, sighting, std::abs(sighting.offset_m) + depth_m);
}

}  // namespace

AimMarks::AimMarks(const Hole& hole) : hole_(hole) {
    for (const Lie lie : {Lie::bunker, Lie::trees, Lie::penalty_red, Lie::penalty_yellow, Lie::green})
        for (const Region& region : hole.lies.mapped(lie))
            for (PolygonRings& polygon : region.polygons())
                things_.push_back({lie, std::move(polygon.outer)});
}

AimDescription AimMarks::describe(double aim, double distance_m) const {
    const Point along = along_bearing(aim);
    const Point target = hole_.line.tee() + distance_m * along;
    std::optional<Candidate> best;
    for (const Thing& thing : things_) {
        const Sight sight = sight_of(thing.outline, hole_.line.tee(), aim);
        if (sight.nearest_m < nearest_m || sight.nearest_m > distance_m + beyond_ball_m) continue;
        const double depth = depth_share * std::abs(sight.nearest_m - distance_m);
        const bool faced = sight.left_rad < 0.0 && sight.right_rad > 0.0;
        if (faced && sight.right_rad - sight.left_rad < widest_target_rad) {
            const bool carried = sight.nearest_m < distance_m;
            offer(best,
                  {thing.lie, carried ? Sighting::Mark::over : Sighting::Mark::towards, sight.nearest_m, 0.0},
                  depth);
        }
        offer_edge(best, {thing.lie, Sighting::Mark::left_edge, sight.left_distance_m, 0.0}, sight.left_rad,
                   depth);
        offer_edge(best, {thing.lie, Sighting::Mark::right_edge, sight.right_distance_m, 0.0},
                   sight.right_rad, depth);
    }
    const Transect transect =
        transect_across(hole_.lies, target, along, landing_reach_m, hole_.other_fairways);
    if (transect.fairway) {
        const FairwayCut& cut = *transect.fairway;
        offer(best, {Lie::fairway, Sighting::Mark::left_edge, distance_m, -cut.left_m},
              std::abs(cut.left_m) + mown_edge_handicap_m);
        offer(best, {Lie::fairway, Sighting::Mark::right_edge, distance_m, -cut.right_m},
              std::abs(cut.right_m) + mown_edge_handicap_m);
    }
    AimDescription description{hole_.line.place_of(target).offset_m, std::nullopt};
    if (best) description.sighting = best->sighting;
    return description;
}

}  // namespace landwidth
