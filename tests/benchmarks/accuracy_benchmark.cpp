// What the engine's numbers of points and its steps give away: expected strokes of every choice of the demo
// plans against many more points, and against finer rasters. The counters are in thousandths of a stroke.

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>

#include "tests/benchmarks/shot_evaluation.hpp"

namespace landwidth::bench {
namespace {

constexpr Points reference_points{16, 4, 5000};
constexpr Fineness finest{0.25, 0.25, 0.25};

class Errors {
  public:
    void add(double error) {
        sum_ += error;
        squares_ += error * error;
        largest_ = std::max(largest_, std::abs(error));
        ++count_;
    }
    void report(benchmark::State& state) const {
        state.counters["rms"] = 1e3 * std::sqrt(squares_ / count_);
        state.counters["mean"] = 1e3 * sum_ / count_;
        state.counters["largest"] = 1e3 * largest_;
        state.counters["choices"] = count_;
    }

  private:
    double sum_ = 0.0;
    double squares_ = 0.0;
    double largest_ = 0.0;
    double count_ = 0.0;
};

// Calls visit(hole, its plan) for every hole of a golfer's demo plan.
template <typename Visit>
void for_each_hole(std::size_t number, const Visit& visit) {
    const RoundPlan& plan = demo_plan(number);
    for (std::size_t i = 0; i < plan.holes.size(); ++i)
        visit(demo_course().holes[i], plan.holes[i]);
}

std::size_t golfer_of(benchmark::State& state) {
    const auto number = static_cast<std::size_t>(state.range(0));
    state.SetLabel(golfer_names.at(number));
    return number;
}

// What the plan says, against the reference's points on the engine's own rasters: the quadrature alone.
void points_of_the_plan(benchmark::State& state) {
    const std::size_t number = golfer_of(state);
    const DemoGolfer& golfer = demo_golfer(number);
    Errors errors;
    double stated = 0.0;
    for ([[maybe_unused]] auto iteration : state) {
        BagPoints reference(golfer, {}, reference_points);
        for_each_hole(number, [&](const Hole& hole, const HolePlan& plan) {
            const DemoField solved(hole, golfer);
            HoleGround ground(hole, golfer, {}, solved.field);
            for (const TeeChoice& choice : plan.choices) {
                errors.add(choice.expected_strokes - ground.strokes(plan, choice, reference.of(choice.club)));
                stated += choice.standard_error * choice.standard_error;
            }
        });
    }
    errors.report(state);
    state.counters["stated_rms"] = 1e3 * std::sqrt(stated / state.counters["choices"]);
}

// A single set of points of each size: what the coarse fan, the refinement and the draws work with.
void points_of_one_set(benchmark::State& state) {
    const std::size_t number = golfer_of(state);
    const DemoGolfer& golfer = demo_golfer(number);
    const int log2_points = static_cast<int>(state.range(1));
    Errors errors;
    for ([[maybe_unused]] auto iteration : state) {
        BagPoints reference(golfer, {}, reference_points);
        BagPoints single(golfer, {}, {log2_points, 1, 0});
        for_each_hole(number, [&](const Hole& hole, const HolePlan& plan) {
            const DemoField solved(hole, golfer);
            HoleGround ground(hole, golfer, {}, solved.field);
            for (const TeeChoice& choice : plan.choices)
                errors.add(ground.strokes(plan, choice, single.of(choice.club)) -
                           ground.strokes(plan, choice, reference.of(choice.club)));
        });
    }
    errors.report(state);
}

// Rasters of so many hundredths of the engine's steps against the finest, a quarter of them; the same points
// on both, so that little but the steps differs.
void steps_of_the_rasters(benchmark::State& state) {
    const std::size_t number = golfer_of(state);
    const DemoGolfer& golfer = demo_golfer(number);
    const auto step = [&](std::size_t axis) { return static_cast<double>(state.range(axis)) / 100.0; };
    const Fineness tried{step(1), step(2), step(3)};
    Errors errors;
    for ([[maybe_unused]] auto iteration : state) {
        BagPoints reference(golfer, finest, reference_points);
        BagPoints points(golfer, tried, reference_points);
        for_each_hole(number, [&](const Hole& hole, const HolePlan& plan) {
            const DemoField solved(hole, golfer);
            HoleGround finest_ground(hole, golfer, finest, solved.field);
            HoleGround ground(hole, golfer, tried, solved.field);
            for (const TeeChoice& choice : plan.choices)
                errors.add(ground.strokes(plan, choice, points.of(choice.club)) -
                           finest_ground.strokes(plan, choice, reference.of(choice.club)));
        });
    }
    errors.report(state);
}

// Points and steps together: the error of the numbers the plan prints.
void points_and_steps_of_the_plan(benchmark::State& state) {
    const std::size_t number = golfer_of(state);
    const DemoGolfer& golfer = demo_golfer(number);
    Errors errors;
    for ([[maybe_unused]] auto iteration : state) {
        BagPoints reference(golfer, finest, reference_points);
        for_each_hole(number, [&](const Hole& hole, const HolePlan& plan) {
            const DemoField solved(hole, golfer);
            HoleGround ground(hole, golfer, finest, solved.field);
            for (const TeeChoice& choice : plan.choices)
                errors.add(choice.expected_strokes - ground.strokes(plan, choice, reference.of(choice.club)));
        });
    }
    errors.report(state);
}

void once(benchmark::internal::Benchmark* benchmark) {
    benchmark->Iterations(1)->Unit(benchmark::kMillisecond)->UseRealTime();
}

void once_for_every_golfer(benchmark::internal::Benchmark* benchmark) {
    for (std::size_t number = 0; number < golfer_names.size(); ++number)
        benchmark->Arg(static_cast<std::int64_t>(number));
    once(benchmark->ArgName("golfer"));
}
BENCHMARK(points_of_the_plan)->Apply(once_for_every_golfer);
BENCHMARK(points_and_steps_of_the_plan)->Apply(once_for_every_golfer);

// The bogey golfer spreads widely and meets all kinds of lies.
constexpr std::int64_t bogey = 2;
BENCHMARK(points_of_one_set)
    ->ArgNames({"golfer", "log2"})
    ->ArgsProduct({{bogey}, benchmark::CreateDenseRange(6, 13, 1)})
    ->Apply(once);
BENCHMARK(steps_of_the_rasters)
    ->ArgNames({"golfer", "cell%", "row%", "ray%"})
    ->Args({bogey, 100, 100, 100})
    ->Args({bogey, 50, 50, 50})
    ->Args({bogey, 100, 25, 25})
    ->Args({bogey, 200, 25, 25})
    ->Args({bogey, 400, 25, 25})
    ->Args({bogey, 25, 100, 25})
    ->Args({bogey, 25, 200, 25})
    ->Args({bogey, 25, 25, 50})
    ->Args({bogey, 25, 25, 100})
    ->Apply(once);

}  // namespace
}  // namespace landwidth::bench
