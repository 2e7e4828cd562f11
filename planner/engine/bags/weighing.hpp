// What changes to a golfer's bag are worth on the holes the golfer plays.
//
// Every bag plays every hole: its own field (solved from the bag of today), its own best club from the tee.
// The club for a hole is chosen on today's evidence; what that choice then comes to is taken in every joint
// draw of the patterns (golfer-profiles/evidence/bag_draws.hpp), the same draws for all bags, so that a
// change may turn out to hurt, and what two builds share cancels. The field behind the tee shot is held at
// the patterns as they stand. All gains are strokes saved a round: positive is better. A change is of the bag
// of today or of a baseline of its own (bag_change.hpp).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/course.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/engine/bags/bag_change.hpp"
#include "planner/engine/bags/compared_clubs.hpp"
#include "planner/engine/bags/gain_sums.hpp"
#include "planner/engine/bags/more_shots.hpp"
#include "planner/engine/bags/shot_evidence.hpp"
#include "planner/engine/bags/straight_holes.hpp"
#include "planner/engine/bags/supposition.hpp"
#include "planner/engine/day/conditions.hpp"

namespace landwidth {

struct WeighRequest {
    Assumptions assumptions = default_assumptions();
    Conditions conditions = {};
    bool local_rule_e5 = false;
    std::vector<BagChange> changes;  // side by side; not empty
    std::vector<SupposedClub> supposed = {};
};

struct CourseGain {
    std::vector<HoleGain> holes;  // as in the course
    double strokes;               // of a round with the changed bag
    double gain;
};

struct MissedClub {
    std::size_t club;
    double strokes;  // a round, see missed_clubs.hpp
};

// What the draws say of a change. `alike` and `not_known` are both undecided: see likeness.hpp.
// `not_compared`: no club that comes or goes is hit on any hole, so that the draws say nothing of it.
enum class BagVerdict { saves, costs, alike, not_known, not_compared };

struct WeighedChange {
    BagChange change;                 // with the club left at home where a bag was full
    std::vector<CourseGain> courses;  // as given
    double strokes;                   // a round with the changed bag, mean of the courses
    // With the patterns as they stand. The draws need not lie around it: where what is open about a pattern
    // is lopsided, their mean is another.
    double gain;
    double low, high;  // the middle 90 % of the draws of the gain
    double chance;     // share of the draws in which the change helps, ties half
    bool settled;      // chance, or its opposite, is at least what the assumptions call settled
    // Where the bag was full: its clubs by how much they would be missed beside the new one, least first.
    std::vector<MissedClub> missed = {};
    std::optional<MoreShots> more = {};  // when it is not known
    double drawn_mean = 0.0;             // of the gain
    double baseline_strokes = 0.0;       // a round with the baseline, mean of the courses
    BagVerdict verdict = BagVerdict::not_known;
    // Clubs of the baseline that the comparison stands on and nobody has recorded a shot with: those that go
    // out or give way on a tee. The golfer's own bag is then not what the change is compared with.
    std::vector<std::size_t> baseline_without_shots = {};
};

struct Weighing {
    std::vector<double> course_strokes;  // a round of each course with the bag of today
    double strokes;                      // their mean
    std::vector<WeighedChange> changes;  // as asked for
    std::vector<ComparedClub> compared;  // of all changes together, see compared_clubs
    ShotEvidence evidence = {};          // of those and their builds, see shot_evidence
    std::vector<SupposedClub> supposed = {};
    std::optional<StraightHoles> straight = {};  // in place of a course
    Conditions conditions = {};
    bool has_heights = false;  // of any hole
    Assumptions assumptions;
    std::vector<std::string> warnings;
};

// `golfer` holds the clubs in the bag and those on trial. Throws UsageError for a change that leaves two
// clubs more than 14 in the bag (one stays at home by itself: that which is missed least), or nothing to play
// with; InputError as plan_round.
Weighing weigh_bags(const std::vector<Course>& courses, const Golfer& golfer, const WeighRequest& request);

}  // namespace landwidth
