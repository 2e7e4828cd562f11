#include "golfer-profiles/evidence/club_figures.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "golfer-profiles/evidence/mishit_chance.hpp"
#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {

namespace {

constexpr double outside_each_side = 0.05;

RawFigures figures_of(std::vector<double> values) {
    std::ranges::sort(values);
    const auto count = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
    double squares = 0.0;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    return {mean, values.size() > 1 ? std::sqrt(squares / (count - 1.0)) : 0.0, quantile(values, 0.5),
            quantile(values, outside_each_side), quantile(values, 1.0 - outside_each_side)};
}

template <class Number>
OpenFigure open_figure(const ShotPattern& pattern, std::span<const ShotPattern> draws, Number number) {
    std::vector<double> values;
    for (const ShotPattern& draw : draws)
        values.push_back(number(draw));
    std::ranges::sort(values);
    return {number(pattern), quantile(values, outside_each_side), quantile(values, 1.0 - outside_each_side)};
}

}  // namespace

RawShots raw_figures(std::span<const ShotOffset> shots) {
    std::vector<double> carries, sides;
    for (const ShotOffset& shot : shots) {
        carries.push_back(shot.carry_m);
        sides.push_back(shot.side_m);
    }
    return {shots.size(), figures_of(std::move(carries)), figures_of(std::move(sides))};
}

OpenPattern open_pattern(const ShotPattern& pattern, std::span<const ShotPattern> draws) {
    const auto of = [&](auto number) { return open_figure(pattern, draws, number); };
    return {of([](const ShotPattern& p) { return p.usual.centre.carry_m; }),
            of([](const ShotPattern& p) { return p.usual.centre.side_m; }),
            of([](const ShotPattern& p) { return p.usual.carry_sd_m; }),
            of([](const ShotPattern& p) { return p.usual.side_sd_m; }),
            of([](const ShotPattern& p) { return p.mishit ? p.mishit->share : 0.0; })};
}

ClubEvidence club_evidence(const ShotPattern& pattern, std::span<const ShotOffset> shots,
                           std::span<const ShotPattern> draws) {
    ClubEvidence evidence{
        .raw = {}, .raw_usual = {}, .open = open_pattern(pattern, draws), .mishit_chance = {}};
    evidence.mishit_chance = mishit_chances(draws, shots);
    std::vector<ShotOffset> usual;
    for (std::size_t i = 0; i < shots.size(); ++i)
        if (evidence.mishit_chance[i] <= taken_for_mishit) usual.push_back(shots[i]);
    if (!shots.empty()) evidence.raw = raw_figures(shots);
    if (!usual.empty()) evidence.raw_usual = raw_figures(usual);
    return evidence;
}

}  // namespace landwidth
