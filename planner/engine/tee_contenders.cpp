#include "planner/engine/tee_contenders.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/units.hpp"
#include "planner/engine/day/usual_ball.hpp"

namespace landwidth {

namespace {

// A club is too much for a hole when even its short shots land this far beyond the pin.
constexpr double overshoot_m = Yards{30.0}.metres();
constexpr double short_shot_sd = 2.5;
// Bends of the line within this of the longest club's total can be aimed at.
constexpr double bend_slack_m = Yards{50.0}.metres();

bool is_driver(const Golfer& golfer, std::size_t club) {
    return golfer.clubs[club].kind == ClubKind::driver;
}

// Carry and run of the club that goes furthest.
double longest_total(const Golfer& golfer) {
    double longest = 0.0;
    for (const Club& club : golfer.clubs)
        if (is_playable(club))
            longest = std::max(longest, club.pattern->usual.centre.carry_m + club.pattern->run_m);
    return longest;
}

std::vector<const ClubShots*> sensible_clubs(const Hole& hole, const Golfer& golfer, const BagShots& bag,
                                             const EngineAssumptions& assumptions) {
    const double asked = std::min(longest_total(golfer), hole.line.length());
    std::vector<const ClubShots*> sensible;
    std::vector<const ClubShots*> all;
    for (const ClubShots& shots : bag.clubs) {
        if (!is_playable(golfer.clubs[shots.club])) continue;
        const ShotPattern& pattern = *golfer.clubs[shots.club].pattern;
        const double total = pattern.usual.centre.carry_m + pattern.run_m;
        const double shortest = pattern.usual.centre.carry_m - short_shot_sd * pattern.usual.carry_sd_m;
        const bool enough = total >= assumptions.tee_club_floor_share * asked;
        const bool too_much = shortest > hole.line.length() + overshoot_m;
        const bool asked_for = hole.par >= 4 && is_driver(golfer, shots.club);
        if ((enough && !too_much) || asked_for) sensible.push_back(&shots);
        all.push_back(&shots);
    }
    return sensible.empty() ? all : sensible;
}

AimRange aim_range(const Hole& hole, const TeeFan& fan, double forward, double longest_total_m,
                   const EngineAssumptions& assumptions) {
    double left = 0.0;
    double right = 0.0;
    const auto include = [&](Point target) {
        const Point step = target - hole.line.tee();
        if (length(step) < assumptions.fan_ray_step_m) return;
        const double turn = std::remainder(plane_bearing(step) - forward, 2.0 * std::numbers::pi);
        left = std::min(left, turn);
        right = std::max(right, turn);
    };
    for (const Point& vertex : hole.line.vertices())
        if (distance(vertex, hole.line.tee()) <= longest_total_m + bend_slack_m) include(vertex);
    include(hole.line.pin());
    return {fan.ray_near(forward + left - assumptions.aim_reach_rad),
            fan.ray_near(forward + right + assumptions.aim_reach_rad)};
}

// The aims of one club: those whose landing place stays within the hole's corridor; an aim outside it plays
// another hole.
AimRange within_corridor(AimRange range, const TeeGround& ground, const TeeFan& fan, std::size_t club,
                         double carry_m, double corridor_m) {
    const LineOfPlay& line = ground.hole.line;
    const auto outside = [&](int ray) {
        const Point landing =
            carried(line.tee(), fan.bearing_of(ray), carry_m, *ground.flights.full(club), ground.day);
        return std::abs(line.place_of(landing).offset_m) > corridor_m;
    };
    const int middle = std::clamp(0, range.first_ray, range.last_ray);
    while (range.first_ray < middle && outside(range.first_ray))
        ++range.first_ray;
    while (range.last_ray > middle && outside(range.last_ray))
        --range.last_ray;
    return range;
}

}  // namespace

std::vector<Contender> tee_contenders(const TeeGround& ground, const Golfer& golfer, const BagShots& bag,
                                      const TeeFan& fan, double forward,
                                      const EngineAssumptions& assumptions) {
    const AimRange range = aim_range(ground.hole, fan, forward, longest_total(golfer), assumptions);
    std::vector<Contender> contenders;
    for (const ClubShots* shots : sensible_clubs(ground.hole, golfer, bag, assumptions)) {
        const double carry = golfer.clubs[shots->club].pattern->usual.centre.carry_m;
        contenders.push_back(
            {shots, within_corridor(range, ground, fan, shots->club, carry, assumptions.aim_corridor_m)});
    }
    return contenders;
}

}  // namespace landwidth
