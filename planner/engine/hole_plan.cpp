#include "planner/engine/hole_plan.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/landing_width.hpp"
#include "planner/engine/aim_description.hpp"
#include "planner/engine/aim_search.hpp"

namespace landwidth {

namespace {

constexpr double landing_reach_m = Yards{100.0}.metres();
// A club is too much for a hole when even its short shots land this far beyond the pin.
constexpr double overshoot_m = Yards{30.0}.metres();
constexpr double short_shot_sd = 2.5;
// Bends of the line within this of the longest club's total can be aimed at.
constexpr double bend_slack_m = Yards{50.0}.metres();
constexpr double least_caution_share = 0.002;

bool is_driver(const Golfer& golfer, std::size_t club) {
    return golfer.clubs[club].kind == ClubKind::driver;
}

std::vector<const ClubShots*> sensible_clubs(const Hole& hole, const Golfer& golfer, const BagShots& bag,
                                             const EngineAssumptions& assumptions) {
    const double asked = std::min(bag.longest_total_m, hole.line.length());
    std::vector<const ClubShots*> sensible;
    std::vector<const ClubShots*> all;
    for (const ClubShots& shots : bag.clubs) {
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
AimRange within_corridor(AimRange range, const Hole& hole, const TeeFan& fan, double carry_m,
                         double corridor_m) {
    const auto outside = [&](int ray) {
        const Point landing = hole.line.tee() + carry_m * along_bearing(fan.bearing_of(ray));
        return std::abs(hole.line.place_of(landing).offset_m) > corridor_m;
    };
    const int middle = std::clamp(0, range.first_ray, range.last_ray);
    while (range.first_ray < middle && outside(range.first_ray))
        ++range.first_ray;
    while (range.last_ray > middle && outside(range.last_ray))
        --range.last_ray;
    return range;
}

double club_length(const Golfer& golfer, const EngineAssumptions& assumptions) {
    double longest = 0.0;
    for (const Club& club : golfer.clubs)
        if (club.kind != ClubKind::putter) longest = std::max(longest, club.length_m.value_or(0.0));
    return longest > 0.0 ? longest : assumptions.club_length_m;
}

Tally mean_tally(TeeFan& fan, const ClubShots& shots, int ray) {
    Tally mean;
    const double share = 1.0 / static_cast<double>(shots.replicates.size());
    for (const FanShots& set : shots.replicates) {
        const Tally tally = fan.tally(set, ray);
        for (std::size_t lie = 0; lie < lie_count; ++lie)
            mean.lies[lie] += share * tally.lies[lie];
        mean.lost += share * tally.lost;
        mean.leave_mean_m += share * tally.leave_mean_m;
        mean.leave_sd_m += share * tally.leave_sd_m;
    }
    return mean;
}

std::vector<Caution> cautions(const Hole& hole, const TeeFan& fan, const ClubShots& shots, int ray,
                              double row_step_m) {
    std::vector<Caution> found;
    for (const Surrounding& surrounding : hole.surroundings) {
        if (surrounding.region.empty()) continue;
        const Box bounds = surrounding.region.bounds();
        double share = 0.0;
        for (const FanShots::OnRay& group : shots.coarse.rays) {
            const Point direction = along_bearing(fan.bearing_of(ray + group.ray));
            for (std::uint32_t i = group.first; i < group.end; ++i) {
                const FanShots::Shot& shot = shots.coarse.shots[i];
                const Point landing = hole.line.tee() + double{shot.row} * row_step_m * direction;
                if (bounds.contains(landing) && surrounding.region.contains(landing))
                    share += double{shot.weight};
            }
        }
        if (share >= least_caution_share) found.push_back({surrounding.kind, surrounding.label, share});
    }
    std::ranges::stable_sort(found, std::ranges::greater{}, &Caution::share);
    return found;
}

TeeChoice tee_choice(const Hole& hole, const Golfer& golfer, TeeFan& fan, const AimMarks& marks,
                     const ClubShots& shots, const AimedClub& aimed, double tee_value,
                     const EngineAssumptions& assumptions) {
    const ShotPattern& pattern = *golfer.clubs[aimed.club].pattern;
    const double aim = fan.bearing_of(aimed.ray);
    const Point along = along_bearing(aim);
    const double carry = pattern.usual.centre.carry_m;
    const Point target = hole.line.tee() + carry * along;
    const Tally tally = mean_tally(fan, shots, aimed.ray);
    return {.club = aimed.club,
            .aim = aim,
            .aim_bearing = hole.frame.true_bearing(hole.line.tee(), target),
            .aim_point = target,
            .description = marks.describe(aim, carry),
            .expected_strokes = aimed.outcome.total(tee_value),
            .standard_error = aimed.standard_error,
            .lies = tally.lies,
            .lost_share = tally.lost,
            .leave_mean_m = tally.leave_mean_m,
            .leave_sd_m = tally.leave_sd_m,
            .landing = transect_across(hole.lies, target, along, landing_reach_m).fairway,
            .cautions = cautions(hole, fan, shots, aimed.ray, assumptions.fan_ray_step_m)};
}

double value_without_choice(const std::vector<AimedClub>& clubs, const auto& allowed) {
    std::vector<AimedClub> kept;
    std::ranges::copy_if(clubs, std::back_inserter(kept), allowed);
    return kept.empty() ? std::numeric_limits<double>::quiet_NaN() : solved_tee_value(kept);
}

}  // namespace

HolePlan plan_hole(const Hole& hole, const Golfer& golfer, const StrokesByDistance& strokes,
                   const BagShots& bag, const PlanRequest& request) {
    const EngineAssumptions& assumptions = request.assumptions.engine;
    const LieRaster raster(hole.lies, assumptions.lie_cell_m);
    const PublishedField field(strokes, hole.line, hole.lies.extent());
    const ReliefGround ground{raster, field, hole.line.pin(), club_length(golfer, assumptions),
                              assumptions.back_on_line_reach_m};
    const Point tee = hole.line.tee();
    const double forward = plane_bearing(hole.line.vertices()[1] - tee);
    TeeFan fan(ground, tee, forward, field.strokes(tee, Lie::teeing_area), request.local_rule_e5,
               assumptions);
    const AimRange range = aim_range(hole, fan, forward, bag.longest_total_m, assumptions);
    const int coarse_rays = std::max(
        1, static_cast<int>(std::lround(assumptions.aim_coarse_step_rad / assumptions.fan_angle_step_rad)));
    std::vector<Contender> contenders;
    for (const ClubShots* shots : sensible_clubs(hole, golfer, bag, assumptions)) {
        const double carry = golfer.clubs[shots->club].pattern->usual.centre.carry_m;
        contenders.push_back({shots, within_corridor(range, hole, fan, carry, assumptions.aim_corridor_m)});
    }
    const AimSearch search = search_aims(fan, contenders, coarse_rays);
    std::vector<std::size_t> order(contenders.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::ranges::stable_sort(order, {},
                             [&](std::size_t i) { return search.clubs[i].outcome.total(search.tee_value); });

    const AimMarks marks(hole);
    HolePlan plan{};
    for (const std::size_t i : order)
        plan.choices.push_back(tee_choice(hole, golfer, fan, marks, *contenders[i].shots, search.clubs[i],
                                          search.tee_value, assumptions));
    Verdict& verdict = plan.verdict;
    verdict.best = 0;
    verdict.confidence =
        confidence_in(fan, contenders, search.clubs, order.front(), search.tee_value, coarse_rays);
    if (plan.choices.size() > 1) {
        verdict.over = 1;
        verdict.margin = plan.choices[1].expected_strokes - plan.choices[0].expected_strokes;
        const double noise = 2.0 * std::hypot(plan.choices[0].standard_error, plan.choices[1].standard_error);
        verdict.toss_up = *verdict.margin < noise || verdict.confidence < assumptions.toss_up_below;
    }
    const auto driver = [&](const AimedClub& club) { return is_driver(golfer, club.club); };
    plan.never_driver = value_without_choice(search.clubs, [&](const AimedClub& c) { return !driver(c); });
    plan.always_driver = hole.par >= 4 ? value_without_choice(search.clubs, driver) : search.tee_value;
    return plan;
}

}  // namespace landwidth
