// A golfer, the clubs and where the ball lands with each: the profile, as the program holds it (metres, SI).
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

enum class ClubKind { driver, mini_driver, fairway_wood, hybrid, driving_iron, iron, wedge, putter };

// "driver", "mini-driver", ...: the words of the profile format.
std::string_view club_kind_name(ClubKind kind);
std::optional<ClubKind> club_kind_named(std::string_view name);

struct Launch {
    double ball_speed_mps;  // > 0
    double launch_rad;      // above the horizon
    double spin_rad_per_s;  // >= 0

    friend bool operator==(const Launch&, const Launch&) = default;
};

// One day at one place: what it did to the ball it did to every club's.
struct Session {
    std::string label;    // date, place, or what the log calls it; unique in the profile
    double weight = 1.0;  // of its shots, (0, 1]: an old session says less of the golfer of today

    friend bool operator==(const Session&, const Session&) = default;
};

// When a shot was hit.
struct ShotTime {
    std::size_t session;  // in Golfer::sessions
    double when;          // share of the session gone by: 0 its first shot, 1 its last

    friend bool operator==(const ShotTime&, const ShotTime&) = default;
};

// The shots a club's pattern was learnt from, and what was known before them.
struct LearntFrom {
    ShotPattern prior;
    std::vector<ShotOffset> shots;  // where they first landed; at most most_learnt_shots
    // Of each shot, or empty when no session is known.
    std::vector<ShotTime> times = {};
    int lost = 0;  // shots besides that were not found: censored, known to be wide only

    friend bool operator==(const LearntFrom&, const LearntFrom&) = default;
};

struct Club {
    std::string name;  // unique in the profile, as same_name compares
    ClubKind kind = ClubKind::iron;
    // The club this is a build of ("driver"): builds of one club are drawn together. Empty: a club of its
    // own.
    std::string build_of = {};
    std::optional<double> length_m = {};
    std::optional<double> loft_rad = {};
    // Absent only for the putter.
    std::optional<ShotPattern> pattern = {};
    std::optional<Launch> launch = {};
    std::string note = {};  // where the numbers come from; may be empty
    // A club on trial is known but not carried: only a comparison of bags looks at it.
    bool in_bag = true;
    std::optional<LearntFrom> learnt_from = {};  // only with a pattern

    friend bool operator==(const Club&, const Club&) = default;
};

// How good a part of the game is: a number is a handicap index (plus handicaps negative).
enum class NamedLevel { tour, scratch, handicap };  // handicap: the golfer's own index
using Level = std::variant<NamedLevel, double>;

enum class Hand { right, left };

struct Golfer {
    std::string name;
    double handicap_index = 0.0;  // plus handicaps negative; [-10, 54]
    // False: the index is a guess by how far the golfer hits the ball, and tells little of how straight.
    bool handicap_known = true;
    Hand hand = Hand::right;
    Level short_game = NamedLevel::handicap;
    Level putting = NamedLevel::handicap;
    std::vector<Club> clubs;  // as listed; at most 14 of them in the bag (Rules of Golf 4.1b)
    std::string note;
    std::vector<Session> sessions = {};  // that the clubs' recorded shots refer to

    // Names compare as in same_name; nullptr when there is none of that name.
    const Club* club(std::string_view name) const;

    friend bool operator==(const Golfer&, const Golfer&) = default;
};

inline constexpr std::size_t most_clubs = 14;  // Rules of Golf 4.1b
// With those on trial, and of the shots of one club that a profile keeps: far more than a fitting sees.
inline constexpr std::size_t most_known_clubs = 40;
inline constexpr std::size_t most_learnt_shots = 1000;

// A club to play with: in the bag, with a pattern, no putter.
bool is_playable(const Club& club);

// The club that a build belongs to: build_of, or where that is empty the name up to ", " ("driver" of
// "driver, 44 in"). Builds of one club are of the same family as same_name compares.
std::string_view family_of(const Club& club);

// Two names are the same when they differ only in spaces around them or in the case of ASCII letters.
bool same_name(std::string_view a, std::string_view b);

// Why a text cannot be the name of a golfer or a club, as the end of a sentence ("is empty"); empty when it
// can: UTF-8, at most 100 bytes, more than spaces, no control characters.
std::string name_problem(std::string_view name);

// The handicap index a level stands for; `tour` is a handicap the engine's assumptions name.
double handicap_of(const Level& level, double own_index, double tour_index);

}  // namespace landwidth
