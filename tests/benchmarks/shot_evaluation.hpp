// One hole's ground at steps of our choice, and what a shot on it costs with as many points as we like: for
// measuring what the steps and the numbers of points of the engine give away.
#pragma once

#include <map>
#include <vector>

#include "tests/benchmarks/demo_round.hpp"

namespace landwidth::bench {

// Steps of the rasters, as shares of the engine's own.
struct Fineness {
    double lie_cell = 1.0;
    double ray_step = 1.0;
    double angle_step = 1.0;  // 1 / a whole number, so that every aim of the engine is a ray here too
};

// Independent replicates of the quadrature. The engine uses the replicates 0 to 8 itself.
struct Points {
    int log2_points;
    int replicates;
    std::uint64_t first_replicate = 1000;
};

// The shots of every club of a golfer; each club's made when first asked for.
class BagPoints {
  public:
    BagPoints(const DemoGolfer& golfer, const Fineness& fineness, Points points);
    const std::vector<FanShots>& of(std::size_t club);

  private:
    const DemoGolfer& golfer_;
    EngineAssumptions assumptions_;
    Points points_;
    std::map<std::size_t, std::vector<FanShots>> sets_;
};

class HoleGround {
  public:
    // Keeps a reference to the field, whose own steps stay what they are.
    HoleGround(const Hole& hole, const DemoGolfer& golfer, const Fineness& fineness,
               const StrokesField& field);
    HoleGround(const HoleGround&) = delete;
    HoleGround& operator=(const HoleGround&) = delete;

    // Expected strokes of a choice of the hole's plan, at its aim, mean of the sets; replaying from the tee
    // costs what the plan's best choice costs. The sets are of the same fineness.
    double strokes(const HolePlan& plan, const TeeChoice& choice, const std::vector<FanShots>& sets);

    TeeFan& fan() { return fan_; }

  private:
    EngineAssumptions assumptions_;
    LieRaster raster_;
    ReliefGround relief_;
    TeeFan fan_;
};

}  // namespace landwidth::bench
