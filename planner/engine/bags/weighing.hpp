// What changes to a golfer's bag are worth on the holes the golfer plays.
//
// Every bag plays every hole: its own field (solved from the bag of today), its own best club from the tee.
// The club for a hole is chosen on today's evidence; what that choice then comes to is taken in every
// posterior draw of the patterns (golfer-profiles/pattern_draws.hpp), the same draws for all bags, so that a
// change may turn out to hurt. The field behind the tee shot is held at the patterns as they stand. All gains
// are strokes saved a round: positive is better.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/course.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/engine/bags/bag_change.hpp"
#include "planner/engine/bags/bag_on_hole.hpp"
#include "planner/engine/bags/compared_clubs.hpp"
#include "planner/engine/bags/more_shots.hpp"
#include "planner/engine/day/conditions.hpp"

namespace landwidth {

struct WeighRequest {
    Assumptions assumptions = default_assumptions();
    Conditions conditions = {};
    bool local_rule_e5 = false;
    std::vector<BagChange> changes;  // side by side; not empty
};

struct HoleGain {
    BagOnHole before;
    BagOnHole after;
    double gain;  // expected
    std::optional<double>
        chance;  // share of the draws in which the hole is played better; absent when nothing changes
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

struct WeighedChange {
    BagChange change;                 // with the club left at home where the bag was full
    std::vector<CourseGain> courses;  // as given
    double strokes;                   // a round with the changed bag, mean of the courses
    double gain;
    double low, high;  // the middle 90 % of the draws of the gain
    double chance;     // share of the draws in which the change helps
    bool settled;      // chance, or its opposite, is at least what the assumptions call settled
    // Where the bag was full: its clubs by how much they would be missed beside the new one, least first.
    std::vector<MissedClub> missed;
    std::optional<MoreShots> more;  // when not settled
};

struct Weighing {
    std::vector<double> course_strokes;  // a round of each course with the bag of today
    double strokes;                      // their mean
    std::vector<WeighedChange> changes;  // as asked for
    std::vector<ComparedClub> compared;  // of all changes together, see compared_clubs
    Conditions conditions = {};
    bool has_heights = false;  // of any hole
    Assumptions assumptions;
    std::vector<std::string> warnings;
};

// `golfer` holds the clubs in the bag and those on trial. Throws UsageError for a change that leaves more
// than 14 clubs in the bag when it says itself what to leave at home, or nothing to play with; InputError as
// plan_round.
Weighing weigh_bags(const std::vector<Course>& courses, const Golfer& golfer, const WeighRequest& request);

}  // namespace landwidth
