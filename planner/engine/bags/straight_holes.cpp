#include "planner/engine/bags/straight_holes.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace landwidth {

namespace {

constexpr std::size_t par4_lengths = 5;
constexpr std::size_t par5_lengths = 2;
constexpr std::size_t hole_count = 2 * (par4_lengths + par5_lengths);
// Without a common divisor with the number of holes, so that dealing by it meets every hole once.
constexpr std::size_t dealing_step = 3;
static_assert(hole_count % dealing_step != 0);

std::vector<double> evenly(double from, double to, std::size_t count) {
    std::vector<double> values;
    for (std::size_t i = 0; i < count; ++i)
        values.push_back(std::lerp(from, to, static_cast<double>(i) / static_cast<double>(count - 1)));
    return values;
}

std::vector<double> lengths_of(const StraightHoleMix& mix) {
    std::vector<double> lengths = evenly(mix.shortest_par4_m, mix.longest_par4_m, par4_lengths);
    const std::vector<double> par5s = evenly(mix.shortest_par5_m, mix.longest_par5_m, par5_lengths);
    lengths.insert(lengths.end(), par5s.begin(), par5s.end());
    return lengths;
}

// What is dealt, in that order; what is left over is rough.
std::vector<ChartTrouble> troubles_of(const StraightHoleMix& mix) {
    std::vector<ChartTrouble> troubles;
    const auto add = [&](double count, ChartTrouble one, ChartTrouble other) {
        for (int i = 0; i < static_cast<int>(std::lround(count)); ++i)
            troubles.push_back(i % 2 == 0 ? one : other);
    };
    add(mix.with_trees, ChartTrouble::trees, ChartTrouble::trees);
    add(mix.with_water, ChartTrouble::water_left, ChartTrouble::water_right);
    add(mix.with_out_of_bounds, ChartTrouble::out_right, ChartTrouble::out_left);
    troubles.resize(hole_count, ChartTrouble::rough);
    return troubles;
}

}  // namespace

StraightHoles straight_holes(const StraightHoleMix& mix, std::optional<ChartTrouble> trouble) {
    StraightHoles straight{{}, trouble};
    for (const double length_m : lengths_of(mix))
        for (const double width_m : {mix.narrow_m, mix.wide_m})
            straight.holes.push_back({width_m, length_m, trouble.value_or(ChartTrouble::rough)});
    if (trouble) return straight;
    const std::vector<ChartTrouble> dealt = troubles_of(mix);
    for (std::size_t i = 0; i < hole_count; ++i)
        straight.holes[dealing_step * i % hole_count].trouble = dealt[i];
    return straight;
}

Course straight_course(const StraightHoles& straight, const Assumptions& assumptions) {
    std::vector<std::optional<Hole>> made(straight.holes.size());
    tbb::parallel_for(std::size_t{0}, made.size(), [&](std::size_t i) {
        const StraightHole& hole = straight.holes[i];
        made[i] = chart_hole(hole.width_m, hole.length_m, hole.trouble, assumptions);
        made[i]->ref = std::to_string(i + 1);
    });
    Course course{.name = "", .source = "", .attribution = "", .holes = {}, .findings = {}};
    for (std::optional<Hole>& hole : made)
        course.holes.push_back(*std::move(hole));
    return course;
}

}  // namespace landwidth
