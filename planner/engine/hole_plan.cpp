#include "planner/engine/hole_plan.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/units.hpp"
#include "planner/engine/break_even_search.hpp"
#include "planner/engine/day/usual_ball.hpp"
#include "planner/engine/field/cost_sampling.hpp"

namespace landwidth {

namespace {

// A picture needs no finer cells.
constexpr double cost_map_step_m = Yards{6.0}.metres();

bool is_driver(const Golfer& golfer, std::size_t club) {
    return golfer.clubs[club].kind == ClubKind::driver;
}

// What the hole comes to when only some clubs may be played from the tee; NaN when none of them is.
double value_without_choice(const HoleStudy& study, const AimSearch& search, const auto& allowed) {
    std::vector<AimedClub> kept;
    std::ranges::copy_if(search.clubs, std::back_inserter(kept), allowed);
    if (kept.empty()) return std::numeric_limits<double>::quiet_NaN();
    return study.aim_for().value(tee_cost(kept, study.replay_cost()));
}

// How the day makes the hole play: what its shots, the tee shot first, go further or less far.
void take_the_day(const HoleStudy& study, const Golfer& golfer, HolePlan& plan) {
    const Hole& hole = study.hole();
    const HoleDay& day = study.day();
    const TeeChoice& tee_shot = plan.choices.front();
    double more_m = usual_ball(hole.line.tee(), tee_shot.aim, *golfer.clubs[tee_shot.club].pattern,
                               *study.flights().full(tee_shot.club), day)
                        .more_m;
    for (const PlannedShot& shot : plan.next)
        more_m += shot.more_m;
    plan.plays_as_m = hole.line.length() - more_m;
    if (day.heights != nullptr)
        plan.rise_m = day.heights->at(hole.line.pin()) - day.heights->at(hole.line.tee());
    const WindAlong wind = wind_along(day, study.flights().day(), hole);
    plan.tail_wind_mps = wind.tail_mps;
    plan.cross_wind_mps = wind.cross_mps;
}

bool is_close(const Verdict& verdict, const EngineAssumptions& assumptions) {
    return verdict.margin && (verdict.toss_up || *verdict.margin < assumptions.close_margin);
}

}  // namespace

HolePlan plan_hole(const Hole& hole, const Golfer& golfer, const GolferGame& game, const BagShots& bag,
                   const PlanRequest& request, int strokes_received) {
    const EngineAssumptions& assumptions = request.assumptions.engine;
    HoleStudy study(hole, golfer, game, bag, request, strokes_received);
    const HoleStudy::Options options = study.options();
    const std::vector<Contender>& contenders = options.contenders;
    const AimSearch& search = options.search;
    const std::vector<std::size_t> order = by_cost(search);
    const auto cost = [&](std::size_t i) { return search.clubs[i].outcome.total(search.replay_cost); };

    HolePlan plan{};
    plan.strokes_received = strokes_received;
    for (const std::size_t i : order)
        plan.choices.push_back(study.choice(*contenders[i].shots, *golfer.clubs[search.clubs[i].club].pattern,
                                            study.fan().bearing_of(search.clubs[i].ray), search.replay_cost));
    TeeChoice& best = plan.choices.front();
    if (best.score.empty()) best.score = study.score(*contenders[order.front()].shots, best.aim);
    Verdict& verdict = plan.verdict;
    verdict.best = 0;
    const Confidence confidence = confidence_in(study.fan(), contenders, search.clubs, order.front(),
                                                search.replay_cost, study.coarse_rays());
    verdict.confidence = confidence.share;
    if (plan.choices.size() > 1) {
        verdict.over = 1;
        verdict.margin = cost(order[1]) - cost(order[0]);
        const double noise = 2.0 * std::hypot(plan.choices[0].standard_error, plan.choices[1].standard_error);
        verdict.toss_up = *verdict.margin < noise || verdict.confidence < assumptions.toss_up_below;
        verdict.alike = verdict.toss_up && is_alike(confidence.margin, assumptions.equal_within_tee);
    }
    if (is_close(verdict, assumptions)) {
        const auto rival = [&](std::size_t i) {
            return Rival{search.clubs[i].club, *golfer.clubs[search.clubs[i].club].pattern,
                         contenders[i].range, search.clubs[i].ray};
        };
        // A par 3 is aimed at a green: its landing has no width to speak of.
        const auto landing = hole.par >= 4 ? plan.choices.front().landing : std::nullopt;
        plan.break_evens =
            find_break_evens(study, rival(order[0]), rival(order[1]), *verdict.margin, landing);
    }
    if (hole.par >= 4)
        plan.next = study.next_shots_after(plan.choices[0].club, *golfer.clubs[plan.choices[0].club].pattern,
                                           plan.choices[0].aim);
    if (request.cost_maps && study.personal() != nullptr)
        plan.cost_map = sampled_costs(*study.personal(), cost_map_step_m);
    take_the_day(study, golfer, plan);
    const auto driver = [&](const AimedClub& club) { return is_driver(golfer, club.club); };
    const auto any = [](const AimedClub&) { return true; };
    plan.never_driver = value_without_choice(study, search, [&](const AimedClub& c) { return !driver(c); });
    plan.always_driver = hole.par >= 4 ? value_without_choice(study, search, driver)
                                       : value_without_choice(study, search, any);
    return plan;
}

}  // namespace landwidth
