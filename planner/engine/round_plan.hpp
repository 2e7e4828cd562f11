// The answer: for every hole, every sensible tee club at its best aim, and the verdict among them.
//
// Lengths metres, angles radians; points in the hole's plane (see Hole::frame).
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "courses/course.hpp"
#include "geometry/landing_width.hpp"
#include "golfer-profiles/profile.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/engine/break_evens.hpp"
#include "planner/engine/cost_map.hpp"
#include "planner/engine/day/conditions.hpp"
#include "planner/engine/planned_shot.hpp"
#include "planner/engine/score_distribution.hpp"

namespace landwidth {

// Something a golfer can see from the tee, and how the aim line passes it.
struct Sighting {
    // The aim line passes an edge of the thing, lies over it (the ball carries it), or points at it (it is
    // beyond the ball).
    enum class Mark { left_edge, right_edge, over, towards };
    Lie lie;  // bunker, trees, penalty area, fairway or green: what is seen
    Mark mark;
    double distance_m;  // from the tee to the thing, along the aim line
    double offset_m;  // of the aim line from the edge at that distance, positive to the right; 0 for over and
                      // towards
};

// The aim line said so that a golfer can use it.
struct AimDescription {
    double offset_m;  // of the aim point from the line of play (the centre line), positive to the right
    std::optional<Sighting> sighting;  // the nearest thing worth naming
};

// Something inside the shot pattern that is no lie: keep it in mind before swinging.
struct Caution {
    Surrounding::Kind kind;
    std::string label;  // may be empty
    double share;       // of balls that first land in it
};

// What the golfer wants of every hole: the fewest strokes on average, the most Stableford points (Rule 21.1,
// net of the strokes the handicap gives where the map has a stroke index), or the best chance of par or
// better.
enum class AimFor { strokes, stableford, par_or_better };

// The usual shot as it comes out on this hole on this day; on the reference day and flat ground as in the
// profile.
struct ShotOfTheDay {
    double carry_m = 0.0;  // along the aim
    double drift_m = 0.0;  // across it, from where it lands on the reference day, positive to the right
    double run_m = 0.0;    // on fairway
    double peak_m = 0.0;   // over the tee
    double landing_angle_rad = 0.0;  // below the horizon
    double stopped_share = 0.0;      // of all balls: by trees or buildings on their way
};

struct TeeChoice {
    std::size_t club;     // index in the golfer's bag
    double aim;           // plane bearing of the aim line from the tee
    Bearing aim_bearing;  // the same, true
    Point aim_point;      // on the aim line at the usual carry
    AimDescription description;
    double expected_strokes;             // to hole out, this stroke included
    double aim_value;                    // what the golfer aims for: strokes, points, or the share of holes
                                         // played in par or better
    double standard_error;               // of aim_value, from the quadrature alone
    ScoreDistribution score;             // empty with the published field
    std::array<double, lie_count> lies;  // shares by the lie where the ball finishes, add to 1
    double lost_share;                   // of all balls: lost among trees (part of lies[trees])
    double leave_mean_m;                 // distance left along the line of play, balls in play
    double leave_sd_m;
    std::optional<FairwayCut> landing;  // the fairway across the aim line where the usual shot comes down
    std::vector<Caution> cautions;
    ShotOfTheDay day = {};
};

struct Verdict {
    std::size_t best;                 // index in choices: 0
    std::optional<double> margin;     // what the next club is worse by, in the units of aim_value, >= 0;
                                      // absent with a single club
    std::optional<std::size_t> over;  // index in choices of that next club
    double confidence;                // share of posterior draws of the patterns in which `best` stays best
    bool toss_up;                     // neither is ahead: the margin is within the noise
    // Of a toss-up: nothing much is lost by either, as opposed to not known yet (likeness.hpp).
    bool alike = false;
};

struct HolePlan {
    std::vector<TeeChoice> choices;  // cheapest first, never empty
    Verdict verdict;
    // Against verdict.over; for a toss-up, or a margin below the assumption close_margin.
    std::optional<BreakEvens> break_evens;
    // After the verdict's tee shot came to rest where it usually does, to the green; empty on a par 3 and
    // with the published field.
    std::vector<PlannedShot> next;
    std::optional<CostMap> cost_map;  // when asked for
    // The length that the planned shots make of the hole on this day: its length, less what each of them goes
    // further than on the reference day and flat ground (more: what it goes less far).
    double plays_as_m = 0.0;
    double rise_m = 0.0;  // from tee to pin; 0 where heights are not known
    // Where the wind blows along the first leg of the hole: in the back of a ball positive, and to its right.
    double tail_wind_mps = 0.0;
    double cross_wind_mps = 0.0;
    int strokes_received;  // by the handicap on this hole, for Stableford; else 0
    double always_driver;  // expected strokes with the driver where it is allowed (par 4 and longer), else
                           // the best club; NaN without a driver
    double never_driver;   // expected strokes with the best club that is no driver; NaN when there is none
};

enum class FieldKind { published, personal };

struct RoundPlan {
    FieldKind field;
    AimFor aim_for;
    std::vector<HolePlan> holes;  // as in the course
    int par;
    double expected_strokes;
    double aim_value;  // strokes or points of the round; for par_or_better the mean number of such holes
    ScoreDistribution score;              // of the round, holes independent; empty with the published field
    std::optional<double> always_driver;  // in the units of aim_value
    std::optional<double> never_driver;
    Conditions conditions = {};
    bool has_heights = false;  // of any hole
    Assumptions assumptions;
    std::vector<std::string> warnings;  // one sentence each: of profile, map and plan
};

struct PlanRequest {
    Assumptions assumptions = default_assumptions();
    bool local_rule_e5 = false;  // Model Local Rule E-5 instead of stroke and distance
    FieldKind field = FieldKind::personal;
    AimFor aim_for = AimFor::strokes;  // other aims need the personal field
    bool cost_maps = false;            // for a report that shades the holes
    Conditions conditions = {};
};

// Throws InputError when no club of the bag but the putter has a pattern. Deterministic: the same inputs give
// the same digits on any number of threads.
RoundPlan plan_round(const Course& course, const Golfer& golfer, const PlanRequest& request);

}  // namespace landwidth
