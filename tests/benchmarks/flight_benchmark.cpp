// What a flight, a launch for a carry and a run-out cost: a plan in weather takes some thousand of each.
#include <benchmark/benchmark.h>

#include "golfer-profiles/club_flight.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/run_out.hpp"

namespace landwidth {
namespace {

const ClubFlight& driver() {
    static const ClubFlight flight(preset_golfer("scratch-man").clubs[0]);
    return flight;
}

void fly_a_drive(benchmark::State& state) {
    AirFlow flow = reference_air();
    flow.along_mps = -4.0;
    flow.right_mps = 3.0;
    const BallLaunch ball = driver().launch_for(driver().carry_m());
    for (auto _ : state)
        benchmark::DoNotOptimize(fly(ball, flow, driver().aerodynamics()));
}
BENCHMARK(fly_a_drive)->Unit(benchmark::kMicrosecond);

void find_a_launch(benchmark::State& state) {
    double share = 0.3;
    for (auto _ : state) {
        benchmark::DoNotOptimize(driver().launch_for(share * driver().carry_m()));
        share = share > 1.3 ? 0.3 : share + 0.01;
    }
}
BENCHMARK(find_a_launch)->Unit(benchmark::kMicrosecond);

void fit_a_club(benchmark::State& state) {
    const Club club = preset_golfer("scratch-man").clubs[0];
    for (auto _ : state)
        benchmark::DoNotOptimize(ClubFlight(club));
}
BENCHMARK(fit_a_club)->Unit(benchmark::kMicrosecond);

void run_out_a_drive(benchmark::State& state) {
    const Flight flight = fly({driver().launch()}, reference_air(), driver().aerodynamics());
    const Impact impact{flight.landing_speed_mps, flight.landing_angle_rad, flight.landing_spin_rad_per_s};
    for (auto _ : state)
        benchmark::DoNotOptimize(run_out(impact, Firmness::ordinary, {0.02, -0.03}));
}
BENCHMARK(run_out_a_drive)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace landwidth
