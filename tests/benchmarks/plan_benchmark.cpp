// Where the time of a round plan goes: the demo course, from the files to the JSON text and in parts.

#include <benchmark/benchmark.h>

#include <cmath>
#include <memory>

#include "courses/assembly/course_assembly.hpp"
#include "courses/reading/map_source.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/engine/driver_chart.hpp"
#include "planner/engine/hole_plan.hpp"
#include "planner/reports/plan_reports.hpp"
#include "tests/benchmarks/peak_memory.hpp"
#include "tests/benchmarks/shot_evaluation.hpp"

namespace landwidth::bench {
namespace {

std::size_t golfer_of(benchmark::State& state) {
    const auto number = static_cast<std::size_t>(state.range(0));
    state.SetLabel(golfer_names.at(number));
    return number;
}

void every_golfer(benchmark::internal::Benchmark* benchmark) {
    for (std::size_t number = 0; number < golfer_names.size(); ++number)
        benchmark->Arg(static_cast<std::int64_t>(number));
    benchmark->ArgName("golfer")->Unit(benchmark::kMillisecond)->UseRealTime();
}

void files_to_json(benchmark::State& state) {
    const std::size_t number = golfer_of(state);
    const PeakMemory peak;
    for ([[maybe_unused]] auto iteration : state) {
        const PlanRequest request;
        const ProfileReading profile = read_profile(profile_path(number));
        const Course course = assemble_course(read_map(map_path()), {}, request.assumptions.map);
        const RoundPlan plan = plan_round(course, profile.golfer, request);
        benchmark::DoNotOptimize(plan_json({course, profile.golfer, plan}));
    }
    if (const std::optional<double> megabytes = peak.megabytes()) state.counters["peak_MB"] = *megabytes;
}
BENCHMARK(files_to_json)->Apply(every_golfer);

void reading_the_map(benchmark::State& state) {
    for ([[maybe_unused]] auto iteration : state)
        benchmark::DoNotOptimize(read_map(map_path()));
}
BENCHMARK(reading_the_map)->Unit(benchmark::kMillisecond)->UseRealTime();

void assembling_the_course(benchmark::State& state) {
    const MapData map = read_map(map_path());
    const MapAssumptions assumptions = default_assumptions().map;
    for ([[maybe_unused]] auto iteration : state)
        benchmark::DoNotOptimize(assemble_course(map, {}, assumptions));
}
BENCHMARK(assembling_the_course)->Unit(benchmark::kMillisecond)->UseRealTime();

void making_the_bag_ready(benchmark::State& state) {
    const DemoGolfer& golfer = demo_golfer(golfer_of(state));
    for ([[maybe_unused]] auto iteration : state)
        benchmark::DoNotOptimize(
            bag_shots(golfer.golfer, *golfer.flights, golfer.request.assumptions.engine,
                      drawn_bags(golfer.golfer, golfer.request.assumptions.engine.prior, 60)));
}
BENCHMARK(making_the_bag_ready)->Apply(every_golfer);

// What a hole works out when first asked for is there already: see cutting_out_the_lies.
void planning_all_holes(benchmark::State& state) {
    const Course& course = demo_course();
    const std::size_t number = golfer_of(state);
    const DemoGolfer& golfer = demo_golfer(number);
    demo_plan(number);
    for ([[maybe_unused]] auto iteration : state)
        benchmark::DoNotOptimize(plan_round(course, golfer.golfer, golfer.request));
}
BENCHMARK(planning_all_holes)->Apply(every_golfer);

// One trouble on the command's usual axes: 12 landing widths by 15 lengths.
void charting_the_driver(benchmark::State& state) {
    const DemoGolfer& golfer = demo_golfer(golfer_of(state));
    ChartRequest request;
    request.trouble = ChartTrouble::trees;
    for (double width_yd = 16.0; width_yd <= 60.0; width_yd += 4.0)
        request.widths_m.push_back(Yards{width_yd}.metres());
    for (double length_yd = 280.0; length_yd <= 560.0; length_yd += 20.0)
        request.lengths_m.push_back(Yards{length_yd}.metres());
    for ([[maybe_unused]] auto iteration : state)
        benchmark::DoNotOptimize(driver_chart(golfer.golfer, request));
}
BENCHMARK(charting_the_driver)->Apply(every_golfer);

// One hole after the other, without what is made once for a round.
void planning_all_holes_on_one_thread(benchmark::State& state) {
    const Course& course = demo_course();
    const std::size_t number = golfer_of(state);
    const DemoGolfer& golfer = demo_golfer(number);
    demo_plan(number);
    for ([[maybe_unused]] auto iteration : state)
        for (const Hole& hole : course.holes)
            benchmark::DoNotOptimize(
                plan_hole(hole, golfer.golfer, golfer.game, golfer.bag, golfer.request, 0));
}
BENCHMARK(planning_all_holes_on_one_thread)->Apply(every_golfer);

void writing_the_json(benchmark::State& state) {
    const std::size_t number = golfer_of(state);
    const Course& course = demo_course();
    const Golfer& golfer = demo_golfer(number).golfer;
    const RoundPlan& plan = demo_plan(number);
    for ([[maybe_unused]] auto iteration : state)
        benchmark::DoNotOptimize(plan_json({course, golfer, plan}));
}
BENCHMARK(writing_the_json)->Apply(every_golfer);

// The rasters of all holes; cells a second.
void rastering_the_lies(benchmark::State& state) {
    const Course& course = demo_course();
    const double step_m = default_assumptions().engine.lie_cell_m;
    std::int64_t cells = 0;
    for ([[maybe_unused]] auto iteration : state)
        for (const Hole& hole : course.holes) {
            const LieRaster raster(hole.lies, step_m);
            cells += std::int64_t{raster.columns()} * raster.rows();
        }
    state.SetItemsProcessed(cells);
}
BENCHMARK(rastering_the_lies)->Unit(benchmark::kMillisecond)->UseRealTime();

// The exact polygons of all lies of all holes, which the layers and the page draw; a plan does without.
void cutting_out_the_lies(benchmark::State& state) {
    const MapData map = read_map(map_path());
    const MapAssumptions assumptions = default_assumptions().map;
    for ([[maybe_unused]] auto iteration : state) {
        state.PauseTiming();
        const Course course = assemble_course(map, {}, assumptions);
        state.ResumeTiming();
        for (const Hole& hole : course.holes)
            for (const Lie lie : all_lies)
                benchmark::DoNotOptimize(hole.lies.region(lie));
    }
}
BENCHMARK(cutting_out_the_lies)->Unit(benchmark::kMillisecond)->UseRealTime();

// Every aim of the first fan of every choice on one hole, coarse shots; with all rays made already, or not.
std::int64_t fan_of_aims(HoleGround& ground, const DemoGolfer& golfer, const HolePlan& plan) {
    const EngineAssumptions& assumptions = golfer.request.assumptions.engine;
    const int step =
        static_cast<int>(std::lround(assumptions.aim_coarse_step_rad / assumptions.fan_angle_step_rad));
    const int reach =
        static_cast<int>(std::lround(assumptions.aim_reach_rad / assumptions.fan_angle_step_rad));
    std::int64_t shots = 0;
    for (const TeeChoice& choice : plan.choices)
        for (const ClubShots& club : golfer.bag.clubs) {
            if (club.club != choice.club) continue;
            for (int ray = -reach; ray <= reach; ray += step) {
                benchmark::DoNotOptimize(ground.fan().outcome(club.coarse, ray));
                shots += static_cast<std::int64_t>(club.coarse.shots.size());
            }
        }
    return shots;
}

void fan_of_aims_on_fresh_ground(benchmark::State& state) {
    const std::size_t number = golfer_of(state);
    const DemoGolfer& golfer = demo_golfer(number);
    const RoundPlan& plan = demo_plan(number);
    std::vector<std::unique_ptr<const DemoField>> solved;
    for (const Hole& hole : demo_course().holes)
        solved.push_back(std::make_unique<const DemoField>(hole, golfer));
    std::int64_t shots = 0;
    for ([[maybe_unused]] auto iteration : state)
        for (std::size_t hole = 0; hole < plan.holes.size(); ++hole) {
            HoleGround ground(demo_course().holes[hole], golfer, {}, solved[hole]->field);
            shots += fan_of_aims(ground, golfer, plan.holes[hole]);
        }
    state.SetItemsProcessed(shots);
}
BENCHMARK(fan_of_aims_on_fresh_ground)->Apply(every_golfer);

void fan_of_aims_on_known_ground(benchmark::State& state) {
    const std::size_t number = golfer_of(state);
    const DemoGolfer& golfer = demo_golfer(number);
    const HolePlan& plan = demo_plan(number).holes.front();
    const DemoField solved(demo_course().holes.front(), golfer);
    HoleGround ground(demo_course().holes.front(), golfer, {}, solved.field);
    fan_of_aims(ground, golfer, plan);
    std::int64_t shots = 0;
    for ([[maybe_unused]] auto iteration : state)
        shots += fan_of_aims(ground, golfer, plan);
    state.SetItemsProcessed(shots);
}
BENCHMARK(fan_of_aims_on_known_ground)->Apply(every_golfer);

}  // namespace
}  // namespace landwidth::bench
