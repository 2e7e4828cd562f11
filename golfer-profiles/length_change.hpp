// What another length may do to speed and carry, as ranges of common practice, where those say anything, and
// what the rules and the trade say about a length.
//
// A range and never a number: what a golfer does with another club cannot be computed. No change of carry is
// always part of it: a longer club costs centred strikes, which may eat the whole gain, and a shorter one may
// give back what it loses. What becomes of the side spread is left to a trial.
//
// Example: an inch off a driver at 0 to 3 mph an inch, 1.40 to 1.50 mph of ball a mph of club and 2 to 3 yd a
// mph of ball: club -3 to 0 mph, ball -4.5 to 0 mph, carry -13.5 to 0 yd.
#pragma once

#include <optional>
#include <vector>

#include "geometry/units.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct Range {
    double low, high;  // low <= high
};

// Values from common practice; the caller brings them with their sources.
struct LengthPractice {
    Range club_speed_per_length;  // m/s a metre of club; low >= 0
    Range smash_wood;             // ball speed over club speed: drivers, fairway woods, hybrids
    Range smash_iron;             // irons and driving irons
    Range smash_wedge;
    Range carry_per_ball_speed;  // metres a m/s
    double reach_m;              // the largest change of length these are meant for; > 0
};

// What is known of the golfer with the club as it is, each above 0.
struct KnownFlight {
    std::optional<double> club_speed_mps = {};
    std::optional<double> ball_speed_mps = {};
    std::optional<double> carry_m = {};
};

struct LengthChange {
    double from_m, to_m;
    // Of ball speed over club speed; one value twice where the golfer's own is known.
    Range smash;
    bool own_smash;
    Range club_speed_mps;  // changes, towards longer positive
    Range ball_speed_mps;
    Range carry_m;
    // Where the golfer's own is known: what it may become, not below 0.
    std::optional<Range> club_speed_after_mps = {};
    std::optional<Range> ball_speed_after_mps = {};
    std::optional<Range> carry_after_m = {};
};

// Why a rule of thumb on length says nothing of a change: it is made from small changes of clubs that are
// built, and goes on as a straight line nowhere.
enum class LengthSilence { change_too_large, no_such_length };
std::optional<LengthSilence> length_silence(ClubKind kind, double from_m, double to_m,
                                            const LengthPractice& practice);

// The lengths that clubs of a kind are built to. A driver's: common practice, no source; the others:
// assumptions.
Range built_lengths(ClubKind kind);

// Lengths > 0. Nothing for a putter, and where the rules are silent.
std::optional<LengthChange> length_change(ClubKind kind, double from_m, double to_m, const KnownFlight& known,
                                          const LengthPractice& practice);

// Limits of length. Equipment Rules, from memory: at least 18 in; at most 48 in, the putter excepted; at most
// 46 in where the committee has Model Local Rule G-10 in force, the putter excepted.
inline constexpr double shortest_club_m = 18.0 * metres_per_inch;
inline constexpr double longest_club_m = 48.0 * metres_per_inch;
inline constexpr double local_rule_longest_m = 46.0 * metres_per_inch;
// Common practice, no source: fittings for a driver end at 44.5 to 45.5 in; 47 in is extreme.
inline constexpr double usual_driver_from_m = 44.5 * metres_per_inch;
inline constexpr double usual_driver_to_m = 45.5 * metres_per_inch;
inline constexpr double extreme_driver_m = 47.0 * metres_per_inch;

enum class LengthVerdict {
    shorter_than_rules,      // not a conforming club
    longer_than_rules,       // not a conforming club
    longer_than_local_rule,  // not where Model Local Rule G-10 is in force
    seldom_still_a_driver,   // a driver below the usual lengths
    usual_driver,
    longer_than_usual_driver,
    extreme_driver,
};

// The rules first, then the trade's view of a driver; empty when nothing bears. A length on a limit, to a
// micrometre, is within it.
std::vector<LengthVerdict> length_verdicts(ClubKind kind, double length_m);

}  // namespace landwidth
