#include "tests/benchmarks/shot_evaluation.hpp"

#include "planner/engine/hole_study.hpp"

namespace landwidth::bench {

namespace {

EngineAssumptions at_fineness(EngineAssumptions assumptions, const Fineness& fineness) {
    assumptions.lie_cell_m *= fineness.lie_cell;
    assumptions.fan_ray_step_m *= fineness.ray_step;
    assumptions.fan_angle_step_rad *= fineness.angle_step;
    return assumptions;
}

double forward_of(const Hole& hole) {
    return plane_bearing(hole.line.vertices()[1] - hole.line.tee());
}

}  // namespace

BagPoints::BagPoints(const DemoGolfer& golfer, const Fineness& fineness, Points points)
    : golfer_(golfer),
      assumptions_(at_fineness(golfer.request.assumptions.engine, fineness)),
      points_(points) {}

const std::vector<FanShots>& BagPoints::of(std::size_t club) {
    const auto [found, missing] = sets_.try_emplace(club);
    std::vector<FanShots>& sets = found->second;
    if (!missing) return sets;
    for (std::uint64_t i = 0; i < static_cast<std::uint64_t>(points_.replicates); ++i)
        sets.push_back(fan_shots(*golfer_.golfer.clubs[club].pattern, points_.log2_points,
                                 points_.first_replicate + i, assumptions_, golfer_.flights->full(club),
                                 golfer_.flights->day().wind));
    return sets;
}

HoleGround::HoleGround(const Hole& hole, const DemoGolfer& golfer, const Fineness& fineness,
                       const StrokesField& field)
    : assumptions_(at_fineness(golfer.request.assumptions.engine, fineness)),
      raster_(hole.lies, assumptions_.lie_cell_m),
      relief_{raster_, field, hole.line.pin(), club_length(golfer.golfer, assumptions_),
              assumptions_.back_on_line_reach_m},
      fan_(relief_, day_over(hole, golfer.flights->day()), hole.line.tee(), forward_of(hole),
           field.cost(hole.line.tee(), Lie::teeing_area, 2), golfer.request.local_rule_e5, assumptions_) {}

double HoleGround::strokes(const HolePlan& plan, const TeeChoice& choice, const std::vector<FanShots>& sets) {
    const double replay_cost = 2.0 + plan.choices[plan.verdict.best].expected_strokes;
    const int ray = fan_.ray_near(choice.aim);
    // Rays made on the way take or leave the drops at a first guess of what the tee is worth: make them all,
    // settle, and only then sum.
    for (const FanShots& set : sets)
        fan_.outcome(set, ray);
    fan_.settle(replay_cost);
    double sum = 0.0;
    for (const FanShots& set : sets)
        sum += fan_.outcome(set, ray).total(replay_cost);
    return sum / static_cast<double>(sets.size());
}

}  // namespace landwidth::bench
