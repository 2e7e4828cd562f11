// What becomes of a ball from the tee, for every place it can land: a polar raster around the tee.
//
// A ball flies and runs straight away from the tee, so where it crossed the edge of a penalty area, what it
// ran into and what the rules then cost depend on the landing place alone and are worked out once along every
// ray. Rays are made when first asked for; a fan is for one thread.
//
// The expected strokes of a shot are 1 + strokes + replay (1 + V), V the value of the tee itself: `replay` is
// the share of balls that come back to it under stroke and distance (Rule 18.2). V is solved from that, not
// guessed: see aim_search.hpp.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "planner/engine/engine_assumptions.hpp"
#include "planner/engine/pattern_quadrature.hpp"
#include "planner/engine/relief.hpp"

namespace landwidth {

// A club's weighted shots in cells of a fan, gathered by ray, near ones first; the same for every hole.
struct FanShots {
    struct Shot {
        float row;  // cells from the tee, fraction included
        float weight;
    };
    // The shots [first, end) of one ray.
    struct OnRay {
        std::int32_t ray;  // from the aim ray
        std::uint32_t first;
        std::uint32_t end;
    };
    std::vector<Shot> shots;
    std::vector<OnRay> rays;
    // Cells a ball runs after landing, by the lie it lands on; the most of them.
    std::array<float, lie_count> run_rows;
    float longest_run_rows;
};

FanShots fan_shots(const ShotPattern& pattern, int log2_points, std::uint64_t replicate,
                   const EngineAssumptions& assumptions);

// Strokes after the one from the tee, and the share of balls replayed.
struct Outcome {
    double strokes = 0.0;
    double replay = 0.0;
    // What the shot costs when replaying costs `tee_value` and one penalty stroke.
    double total(double tee_value) const { return 1.0 + strokes + replay * (1.0 + tee_value); }
    // The value of the tee for a golfer who always plays this shot from it: total(v) = v.
    double solved() const { return (1.0 + strokes + replay) / (1.0 - replay); }
};

// What happens to the balls of one shot.
struct Tally {
    std::array<double, lie_count> lies{};  // shares, add to 1
    double lost = 0.0;
    double leave_mean_m = 0.0;  // of balls in play; 0 when none is
    double leave_sd_m = 0.0;
};

class TeeFan {
  public:
    // Keeps references. `forward` is the plane bearing of ray 0; rays count clockwise. Balls of a fat tail
    // that would rest beyond 600 yd count as there. `tee_value` is a first estimate of V.
    TeeFan(const ReliefGround& ground, Point tee, double forward, double tee_value, bool local_rule_e5,
           const EngineAssumptions& assumptions);

    double bearing_of(int ray) const { return forward_ + ray * angle_step_; }
    // The ray nearest to a plane bearing, in (-rays/2, rays/2].
    int ray_near(double bearing) const;

    Outcome outcome(const FanShots& shots, int aim_ray);
    Tally tally(const FanShots& shots, int aim_ray);

    // A golfer in a penalty area goes back to the tee when that is cheaper than any drop. Takes that choice
    // again for a value of the tee; false when nothing changed.
    bool settle(double tee_value);

  private:
    struct Cell {
        float strokes;
        float replay;
        float leave_m;
        std::uint16_t stop;  // row of the first bunker or penalty area from here on
        Lie lie;
    };
    // Balls of a ray that lie in the same penalty area: rows [from, to).
    struct PenaltyRun {
        int from;
        int to;
        float drop_strokes;  // penalty included; infinite when only stroke and distance is left
    };
    struct Ray {
        std::vector<Cell> cells;  // cell i: from i - phase to i + 1 - phase steps from the tee
        float phase = 0.0F;
        std::vector<PenaltyRun> penalty_runs;
        // Where the last cell made leaves off: the stretch of one lie it belongs to.
        Point last_in_bounds;
        int run_start = 0;
        Lie run_lie = Lie::rough;
    };

    // The ray with at least the cells that these shots can reach.
    const Ray& ray_for(const FanShots& shots, const FanShots::OnRay& group, int aim_ray);
    void extend_ray(Ray& ray, Point direction, int rows) const;
    Cell ball_at_rest(Point place, Point last_in_bounds, Lie lie) const;
    PenaltyRun penalty_run(const Ray& ray, int to, Point direction) const;
    bool apply(const PenaltyRun& run, Ray& ray) const;
    static const Cell& resting_cell(const Ray& ray, const FanShots& shots, const FanShots::Shot& shot);

    ReliefGround ground_;
    Point tee_;
    double forward_;
    double row_step_;
    double angle_step_;
    int rays_;
    int most_rows_;
    double tee_value_;
    bool local_rule_e5_;
    double trees_lost_share_;
    std::vector<Ray> fan_;
};

}  // namespace landwidth
