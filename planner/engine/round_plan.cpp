#include "planner/engine/round_plan.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/error.hpp"
#include "planner/engine/hole_plan.hpp"
#include "planner/engine/preset_patterns.hpp"

namespace landwidth {

namespace {

// The sum over the holes, absent when one of them has no value.
std::optional<double> sum_of(const std::vector<HolePlan>& holes, double HolePlan::*value) {
    double sum = 0.0;
    for (const HolePlan& hole : holes)
        sum += hole.*value;
    return std::isnan(sum) ? std::nullopt : std::optional(sum);
}

bool has_driver(const Golfer& golfer) {
    for (const Club& club : golfer.clubs)
        if (club.kind == ClubKind::driver && is_playable(club)) return true;
    return false;
}

std::vector<std::string> plan_warnings(const Course& course, const Golfer& golfer,
                                       const PlanRequest& request) {
    std::vector<std::string> warnings;
    if (std::optional<std::string> presets = preset_patterns_warning(golfer))
        warnings.push_back(*std::move(presets));
    if (!has_driver(golfer))
        warnings.push_back("the bag has no driver, so there is no round with the driver to compare with");
    if (request.local_rule_e5)
        warnings.push_back(
            "planned under Model Local Rule E-5 (two penalty strokes, fairway drop); it applies only where "
            "the committee has adopted it");
    if (request.aim_for == AimFor::stableford &&
        !std::ranges::all_of(course.holes, [](const Hole& hole) { return hole.stroke_index.has_value(); }))
        warnings.push_back(
            "not every hole has a stroke index on the map, so points count no handicap strokes");
    return warnings;
}

}  // namespace

RoundPlan plan_round(const Course& course, const Golfer& golfer, const PlanRequest& request) {
    if (request.field == FieldKind::published && request.aim_for != AimFor::strokes)
        throw UsageError("the published table knows mean strokes alone; other aims need the personal field");
    const EngineAssumptions& engine = request.assumptions.engine;
    const auto flights = std::make_shared<const BagFlights>(golfer, request.conditions, engine);
    const BagShots bag =
        bag_shots(golfer, *flights, engine,
                  drawn_bags(golfer, engine.prior, static_cast<int>(engine.confidence_draws)));
    const GolferGame game(golfer, flights, engine);
    const std::vector<int> received = request.aim_for == AimFor::stableford
                                          ? strokes_received(course, golfer.handicap_index)
                                          : std::vector<int>(course.holes.size(), 0);
    RoundPlan plan{};
    plan.field = request.field;
    plan.aim_for = request.aim_for;
    plan.assumptions = request.assumptions;
    plan.conditions = request.conditions;
    plan.has_heights =
        std::ranges::any_of(course.holes, [](const Hole& hole) { return hole.heights != nullptr; });
    plan.warnings = plan_warnings(course, golfer, request);
    plan.warnings.insert(plan.warnings.end(), flights->doubts().begin(), flights->doubts().end());
    plan.holes.resize(course.holes.size());
    // Every hole is computed on its own in one fixed order of sums, so that threads cannot change a digit.
    tbb::parallel_for(std::size_t{0}, course.holes.size(), [&](std::size_t i) {
        plan.holes[i] = plan_hole(course.holes[i], golfer, game, bag, request, received[i]);
    });
    std::vector<ScoreDistribution> scores;
    for (std::size_t i = 0; i < plan.holes.size(); ++i) {
        scores.push_back(plan.holes[i].choices[plan.holes[i].verdict.best].score);
        plan.par += course.holes[i].par;
        plan.expected_strokes += plan.holes[i].choices[plan.holes[i].verdict.best].expected_strokes;
        plan.aim_value += plan.holes[i].choices[plan.holes[i].verdict.best].aim_value;
    }
    plan.score = sum_of(scores);
    if (has_driver(golfer)) plan.always_driver = sum_of(plan.holes, &HolePlan::always_driver);
    plan.never_driver = sum_of(plan.holes, &HolePlan::never_driver);
    return plan;
}

}  // namespace landwidth
