#include "tests/benchmarks/simulated_golfers.hpp"

#include "geometry/units.hpp"
#include "golfer-profiles/evidence/usual_ways.hpp"
#include "golfer-profiles/presets.hpp"

namespace landwidth::bench {
namespace {

double yd(double yards) {
    return Yards{yards}.metres();
}

ShotPattern typical_driver(double handicap) {
    return *typical_golfer({"simulated", handicap}).club("driver")->pattern;
}

}  // namespace

std::vector<SimulatedGolfer> simulated_golfers() {
    std::vector<SimulatedGolfer> golfers{{"typical", 14, typical_driver(14)}};
    ShotPattern biased = typical_driver(14);
    biased.usual.centre.side_m = yd(20);
    biased.mishit->spread.centre.side_m = yd(12);
    golfers.push_back({"20 yd bias", 14, biased});
    ShotPattern straight = typical_driver(14);
    straight.usual = {{yd(200), 0.0}, yd(9), yd(13), -0.1};
    straight.mishit->share = 0.06;
    golfers.push_back({"straight", 14, straight});
    ShotPattern wild = typical_driver(8);
    wild.usual = {{yd(258), 0.0}, yd(15), yd(33), -0.1};
    wild.mishit = Mishit{0.10, {{yd(262), yd(10)}, yd(18), yd(75), 0.0}};
    golfers.push_back({"wild, fast", 8, wild});
    golfers.push_back({"says 25", 25, typical_driver(4)});
    ShotPattern slice = typical_driver(18);
    slice.usual.centre.side_m = yd(14);
    slice.usual.side_sd_m = yd(24);
    slice.ways =
        with_share({Way{0.65, 0.3, -0.6, 0.95, 0.6, 0.0}, Way{0.35, -0.6, 1.1, 0.95, 0.6, 0.0}}, 0.35);
    golfers.push_back({"slice", 18, slice});
    return golfers;
}

Golfer measured(const SimulatedGolfer& simulated, const std::vector<ShotOffset>& driver,
                const std::vector<ShotOffset>& build) {
    Golfer golfer = typical_golfer({"simulated", simulated.handicap_said});
    for (Club& club : golfer.clubs)
        if (club.pattern) club.learnt_from = LearntFrom{*club.pattern, {}};
    Club other = golfer.clubs.front();
    golfer.clubs.front().learnt_from->shots = driver;
    golfer.clubs.front().pattern->shots = static_cast<int>(driver.size());
    if (build.empty()) return golfer;
    other.name = "driver, 44 in";
    other.build_of = "driver";
    other.in_bag = false;
    other.learnt_from->shots = build;
    other.pattern->shots = static_cast<int>(build.size());
    golfer.clubs.push_back(std::move(other));
    return golfer;
}

}  // namespace landwidth::bench
