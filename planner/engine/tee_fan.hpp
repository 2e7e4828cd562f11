// What becomes of a ball from the tee, for every place it can land: a polar raster around the tee.
//
// A ball flies and runs straight away from the tee, so where it crossed the edge of a penalty area, what it
// ran into and what the rules then cost depend on the landing place alone and are worked out once along every
// ray. Rays are made when first asked for; a fan is for one thread.
//
// The cost of a shot is cost + replay x (cost of playing again): `replay` is the share of balls that come
// back to the tee under stroke and distance (Rule 18.2). For strokes the cost of playing again is 2 + V, V
// the value of the tee itself, and V is solved from that, not guessed: see aim_search.hpp.
//
// On a day that is not the reference day, and over ground that is not flat, a ball of the pattern comes down
// elsewhere than the pattern says (day/day_flight.hpp): its flight is then followed to the ray it lands on. A
// ball that meets a canopy drops there.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "planner/engine/day/day_flight.hpp"
#include "planner/engine/day/hole_day.hpp"
#include "planner/engine/engine_assumptions.hpp"
#include "planner/engine/moving_fairway.hpp"
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
    std::array<float, lie_count> run_shares;  // of what the day and slopes add to it
    float longest_run_rows;
    float usual_carry_m;
    // Null: as in a pattern, over everything.
    std::shared_ptr<const DayFlight> flight;
    std::optional<Wind> wind;  // for its gusts
    // A wind other than the hole's: the plane bearing it blows to, and its strength as a factor on the one
    // the flight was worked out for.
    struct OtherWind {
        double to;
        double strength;
    };
    std::optional<OtherWind> other_wind = {};
};

FanShots fan_shots(const ShotPattern& pattern, int log2_points, std::uint64_t replicate,
                   const EngineAssumptions& assumptions, std::shared_ptr<const DayFlight> flight = {},
                   const std::optional<Wind>& wind = {});

// The share of balls replayed, and what the others make of the hole, weighted (tee shot included).
struct Outcome {
    double cost = 0.0;
    double replay = 0.0;
    double total(double replay_cost) const { return cost + replay * replay_cost; }
    // The expected strokes of a golfer who always plays this shot from the tee: v = total(2 + v).
    double solved() const { return (cost + 2.0 * replay) / (1.0 - replay); }
};

// A place where balls are played from after the tee shot.
struct NextPlace {
    Point place;
    Lie lie;
    int used;      // strokes, penalties among them
    double share;  // of all balls
};

// What happens to the balls of one shot.
struct Tally {
    std::array<double, lie_count> lies{};  // shares, add to 1
    double lost = 0.0;
    double stopped = 0.0;       // by trees or buildings on their way
    double leave_mean_m = 0.0;  // of balls in play; 0 when none is
    double leave_sd_m = 0.0;
};

class TeeFan {
  public:
    // Keeps references. `forward` is the plane bearing of ray 0; rays count clockwise. Balls of a fat tail
    // that would rest beyond 600 yd count as there. `replay_cost` is a first estimate of what playing again
    // from the tee costs.
    TeeFan(const ReliefGround& ground, const HoleDay& day, Point tee, double forward, double replay_cost,
           bool local_rule_e5, const EngineAssumptions& assumptions);

    double bearing_of(int ray) const { return forward_ + ray * angle_step_; }
    // The ray nearest to a plane bearing, in (-rays/2, rays/2].
    int ray_near(double bearing) const;

    Outcome outcome(const FanShots& shots, int aim_ray);
    // The same with the fairway's edges moved out (in: negative) by move_m. A ball dropped out of a penalty
    // area is dropped where it is today, on what that place turns into; under Model Local Rule E-5 it still
    // finds today's fairway. `fairway` is the same at every call.
    Outcome outcome_with_edges_moved(const FanShots& shots, int aim_ray, const MovingFairway& fairway,
                                     float move_m);
    Tally tally(const FanShots& shots, int aim_ray);
    // Where every ball first lands, whatever stands on its way; shares add to 1.
    struct Landing {
        Point place;
        double share;
    };
    std::vector<Landing> landings(const FanShots& shots, int aim_ray);
    // Where the next stroke of every ball is played, relief taken; one entry a ball, shares add to 1.
    std::vector<NextPlace> next_places(const FanShots& shots, int aim_ray);

    // A golfer in a penalty area goes back to the tee when that is cheaper than any drop. Takes that choice
    // again for what playing again costs; false when nothing changed.
    bool settle(double replay_cost);

  private:
    struct Cell {
        float cost;
        float replay;
        float leave_m;
        std::uint16_t stop;  // row of the first bunker or penalty area from here on
        Lie lie;
    };
    // The ground of a few rows, where heights are known: a plane through their middle.
    static constexpr int rows_per_post = 8;
    struct Post {
        float over_tee_m;
        float rise;  // per metre along the ray
        float lean;  // and to its right
    };
    // Trees or a building on a ray: rows [from, to) that are about as high.
    struct Canopy {
        int from;
        int to;
        float top_m;  // over the tee
    };
    // Balls of a ray that lie in the same penalty area: rows [from, to).
    struct PenaltyRun {
        int from;
        int to;
        std::optional<Drop> drop;  // absent when only stroke and distance is left
    };
    struct Ray {
        std::vector<Cell> cells;  // cell i: from i - phase to i + 1 - phase steps from the tee
        float phase = 0.0F;
        std::vector<Post> posts;       // empty where heights are not known
        std::vector<Canopy> canopies;  // near ones first
        std::vector<PenaltyRun> penalty_runs;
        // By row, worked out where balls come down or rest (in a penalty area: of the place of the drop);
        // at_m is NaN before that.
        std::vector<MovingFairway::Turn> turns;
        // Where the last cell made leaves off: the stretch of one lie it belongs to.
        Point last_in_bounds;
        int run_start = 0;
        Lie run_lie = Lie::rough;
    };

    std::size_t ray_slot(int number) const {
        while (number < 0)
            number += rays_;
        while (number >= rays_)
            number -= rays_;
        return static_cast<std::size_t>(number);
    }
    // A ray by its number, with at least the cells up to a row.
    Ray& ray_with(int number, float furthest_row) {
        const std::size_t slot = ray_slot(number);
        Ray& ray = fan_[slot];
        const int needed = std::min(static_cast<int>(std::min(furthest_row, 1e6F)) + 3, most_rows_);
        if (static_cast<int>(ray.cells.size()) < needed)
            lengthen(ray, static_cast<int>(slot), number, needed);
        return ray;
    }
    void lengthen(Ray& ray, int slot, int number, int needed) const;
    void extend_ray(Ray& ray, Point direction, int rows) const;
    Cell ball_at_rest(Point place, Point last_in_bounds, Lie lie) const;
    PenaltyRun penalty_run(const Ray& ray, int to, Point direction) const;
    bool apply(const PenaltyRun& run, Ray& ray) const;
    // The run that a row in a penalty area belongs to.
    static const PenaltyRun& run_of(const Ray& ray, int row);
    MovingFairway::Turn turn_on(const Ray& ray, int row, Point direction, const MovingFairway& fairway) const;
    Point place_on(const Ray& ray, int row, Point direction) const {
        return tee_ + (row + 0.5 - double{ray.phase}) * row_step_ * direction;
    }
    static int row_index(const Ray& ray, float row) {
        return std::clamp(static_cast<int>(row + ray.phase), 0, static_cast<int>(ray.cells.size()) - 1);
    }
    const Post& post_of(const Ray& ray, int row) const {
        return ray.posts[static_cast<std::size_t>(row / rows_per_post)];
    }
    float over_tee_m(const Ray& ray, int row) const {
        const Post& post = post_of(ray, row);
        const float from_middle = static_cast<float>(row % rows_per_post) - 0.5F * (rows_per_post - 1);
        return post.over_tee_m + post.rise * from_middle * static_cast<float>(row_step_);
    }
    static int nearest_whole(double value) {
        return static_cast<int>(value < 0.0 ? value - 0.5 : value + 0.5);
    }
    // The air around the shots of one ray.
    struct Air {
        bool differs;  // from that of the reference day
        WindAngle wind;
        double curl;                                // growth of a ball's direction off the aim
        std::array<float, surface_count> more_run;  // rows, on fairway or what is then a share of it
    };
    Air air_around(const FanShots& shots, int ray) const;
    // A ball of a pattern in the air over this hole; rows from the tee.
    struct Flying {
        int ray;
        float flat_row;  // where it comes down on ground as high as the tee
        float row;       // where it lands
        float carry_m;   // on the reference day
    };
    // Where the balls of one flight that would land along a ray on the reference day and level ground come
    // down, at every rows_per_knot rows of that: what lies between is nearly straight.
    static constexpr int rows_per_knot = 16;
    struct Knot {
        float turn;  // in rays
        float flat_row;
        float row;
    };
    struct FlightOverHole {
        std::shared_ptr<const DayFlight> flight;
        std::vector<std::vector<Knot>> rays;
    };
    FlightOverHole& over_hole(const FanShots& shots);
    const std::vector<Knot>& knots_for(const FanShots& shots, FlightOverHole& over, int ray, const Air& air,
                                       float furthest_row);
    Knot knot_at(const FanShots& shots, int ray, float row, const Air& air, float gust);
    Flying flown(const std::vector<Knot>& knots, int ray, float row, float off_aim, const Air& air) const;
    // Of a ball in a wind of its own.
    Flying flown_alone(const FanShots& shots, int ray, std::uint32_t index, float off_aim, const Air& air);
    // The row where a ball meets a canopy, if it does.
    std::optional<int> met_canopy(const Ray& ray, const DayFlight& flight, const Flying& ball,
                                  const WindAngle& wind) const;
    struct Rest {
        const Ray* ray;
        int number;  // of the ray
        int row;
        bool stopped;  // by a canopy
    };
    template <class LieOf>
    Rest rest_of(const FanShots& shots, const Ray& ray, const Flying& ball, const Air& air,
                 const LieOf& lie_of);
    // Calls visit(shot, rest) for every ball; lie_of(ray, number, row) is what the ground of a row
    // counts as for a ball that lands there.
    template <class LieOf, class Visit>
    void for_each_ball(const FanShots& shots, int aim_ray, const LieOf& lie_of, Visit&& visit);
    // Calls visit(shot, ball as it lands, its ray, the air) for every ball.
    template <class Visit>
    void for_each_landing(const FanShots& shots, int aim_ray, Visit&& visit);
    template <class Visit>
    void for_each_ball(const FanShots& shots, int aim_ray, Visit&& visit);
    void add_canopy(Ray& ray, int row, Point place) const;

    ReliefGround ground_;
    HoleDay day_;
    float tee_height_m_;
    Point tee_;
    double forward_;
    double row_step_;
    double angle_step_;
    int rays_;
    int most_rows_;
    double replay_cost_;
    bool local_rule_e5_;
    double trees_lost_share_;
    std::vector<Ray> fan_;
    std::vector<FlightOverHole> flights_;
};

}  // namespace landwidth
