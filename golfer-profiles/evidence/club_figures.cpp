#include "golfer-profiles/evidence/club_figures.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

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
    return {mean, values.size() > 1 ? std::sqrt(squares / (count - 1.0)) : 0.0,
            quantile_of_sorted(values, 0.5), quantile_of_sorted(values, outside_each_side),
            quantile_of_sorted(values, 1.0 - outside_each_side)};
}

template <class Number>
OpenFigure open_figure(const ShotPattern& pattern, std::span<const ShotPattern> draws, Number number) {
    std::vector<double> values;
    for (const ShotPattern& draw : draws)
        values.push_back(number(draw));
    std::ranges::sort(values);
    return {number(pattern), quantile_of_sorted(values, outside_each_side),
            quantile_of_sorted(values, 1.0 - outside_each_side)};
}

}  // namespace

double quantile_of_sorted(std::span<const double> sorted, double share) {
    const double place = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (place - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

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

}  // namespace landwidth
