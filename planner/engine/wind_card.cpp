#include "planner/engine/wind_card.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/error.hpp"
#include "planner/engine/hole_study.hpp"
#include "planner/engine/preset_patterns.hpp"

namespace landwidth {

namespace {

// What the larger cells can be off by between two clubs (strokes): see
// tests/planner/engine/wind_card_test.cpp.
constexpr double coarse_noise = 0.02;

WindCardVerdict verdict_on(const Hole& hole, const Golfer& golfer, const GolferGame& game,
                           const BagShots& bag, const PlanRequest& request) {
    HoleStudy study(hole, golfer, game, bag, request, 0);
    const HoleStudy::Options options = study.options();
    const AimSearch& search = options.search;
    const std::vector<std::size_t> order = by_cost(search);
    const auto cost = [&](std::size_t i) { return search.clubs[i].outcome.total(search.replay_cost); };
    const AimedClub& best = search.clubs[order.front()];
    const TeeChoice choice =
        study.choice(*options.contenders[order.front()].shots, *golfer.clubs[best.club].pattern,
                     study.fan().bearing_of(best.ray), search.replay_cost);
    WindCardVerdict verdict{.club = best.club,
                            .aim_bearing = choice.aim_bearing,
                            .expected_strokes = choice.expected_strokes,
                            .margin = 0.0,
                            .over = best.club,
                            .toss_up = false,
                            .tail_wind_mps = 0.0,
                            .cross_wind_mps = 0.0,
                            .drift_m = choice.day.drift_m,
                            .carry_m = choice.day.carry_m};
    if (order.size() > 1) {
        const AimedClub& next = search.clubs[order[1]];
        verdict.over = next.club;
        verdict.margin = cost(order[1]) - cost(order[0]);
        const double noise = 2.0 * std::hypot(best.standard_error, next.standard_error);
        verdict.toss_up = verdict.margin < std::max(noise, coarse_noise);
    }
    const WindAlong along = wind_along(study.day(), game.flights().day(), hole);
    verdict.tail_wind_mps = along.tail_mps;
    verdict.cross_wind_mps = along.cross_mps;
    return verdict;
}

std::vector<std::size_t> flips_of(const WindCardHole& hole) {
    std::vector<std::size_t> flips;
    for (std::size_t i = 0; i < hole.wind_from.size(); ++i) {
        const WindCardVerdict& windy = hole.wind_from[i];
        if (windy.club != hole.still.club && !windy.toss_up && !hole.still.toss_up) flips.push_back(i);
    }
    return flips;
}

}  // namespace

WindCard wind_card(const Course& course, const Golfer& golfer, const PlanRequest& request, const Wind& wind) {
    if (request.aim_for != AimFor::strokes || request.field != FieldKind::personal)
        throw UsageError("a wind card is made for the fewest strokes with the personal field");
    PlanRequest coarse = request;
    coarse.assumptions = with_coarser_field(with_coarser_fan(request.assumptions));
    coarse.conditions.wind.reset();
    const EngineAssumptions& engine = coarse.assumptions.engine;

    // How balls fly depends on the speed of the wind, not on where it comes from.
    const auto still = std::make_shared<const BagFlights>(golfer, coarse.conditions, engine);
    Conditions windy = coarse.conditions;
    windy.wind = wind;
    const BagFlights in_wind(golfer, windy, engine);
    const BagShots still_shots = bag_shots(golfer, *still, engine, {});
    const BagShots windy_shots = bag_shots(golfer, in_wind, engine, {});
    std::vector<GolferGame> winds;
    winds.reserve(1 + wind_card_directions);
    winds.emplace_back(golfer, still, engine);
    for (std::size_t i = 0; i < wind_card_directions; ++i) {
        const Bearing from{2.0 * std::numbers::pi * static_cast<double>(i) / wind_card_directions};
        winds.emplace_back(golfer, std::make_shared<const BagFlights>(in_wind.with_wind_from(from)), engine);
    }

    WindCard card{.speed_mps = wind.speed_mps,
                  .gusts_mps = wind.gusts_mps,
                  .holes = std::vector<WindCardHole>(course.holes.size()),
                  .still_strokes = 0.0,
                  .strokes = {},
                  .conditions = coarse.conditions,
                  .assumptions = request.assumptions,
                  .warnings = {}};
    tbb::parallel_for(std::size_t{0}, course.holes.size() * winds.size(), [&](std::size_t job) {
        const std::size_t index = job / winds.size();
        const std::size_t direction = job % winds.size();
        WindCardHole& hole = card.holes[index];
        WindCardVerdict& verdict = direction == 0 ? hole.still : hole.wind_from[direction - 1];
        verdict = verdict_on(course.holes[index], golfer, winds[direction],
                             direction == 0 ? still_shots : windy_shots, coarse);
    });
    for (WindCardHole& hole : card.holes) {
        hole.flips = flips_of(hole);
        card.still_strokes += hole.still.expected_strokes;
        for (std::size_t i = 0; i < wind_card_directions; ++i)
            card.strokes[i] += hole.wind_from[i].expected_strokes;
    }
    if (std::optional<std::string> presets = preset_patterns_warning(golfer))
        card.warnings.push_back(*std::move(presets));
    card.warnings.insert(card.warnings.end(), still->doubts().begin(), still->doubts().end());
    return card;
}

}  // namespace landwidth
