// From logs of shots to clubs: which club each shot belongs to, where it landed, how far it ran.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/club_groups.hpp"
#include "golfer-profiles/logs/named_log.hpp"
#include "golfer-profiles/profile.hpp"
#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

struct LandedShot {
    ShotOffset landing;  // where it first landed
    std::size_t log;     // of the logs given
    std::size_t row;     // of that log
    // In LoggedClubs::sessions; absent when the log tells neither date nor session.
    std::optional<std::size_t> session = {};
};

struct LoggedClub {
    std::string name;                     // "driver", or for a build of it "driver, 44.5 in"
    std::string club;                     // "driver"
    std::string build;                    // "44.5 in"; may be empty
    ClubKind kind;                        // never a putter
    std::optional<double> length_m = {};  // where the build is a length
    std::vector<LandedShot> shots = {};   // in the order of the logs; at least one, or `lost` is
    int lost = 0;                         // shots besides that were not found
    // A build that stands for the club itself: every shot of the club is of some build, and this one is the
    // one in the bag. Its name keeps the build ("driver, 45.5 in").
    bool is_the_one_carried = false;
    std::optional<double> run_m = {};   // median of the shots with carry and total
    std::optional<Launch> launch = {};  // medians of the shots with ball speed, launch angle and spin
    // What prepare_sessions made of its shots, for the club's note; may be empty.
    std::string session_note = {};
};

struct LoggedClubs {
    std::vector<LoggedClub> clubs;       // in the order in which they first appear
    std::vector<Session> sessions = {};  // in the order in which they first appear; weights 1
    std::vector<std::string> warnings;
    // Landings are those of the reference day and sessions are known: prepare_sessions has been here.
    bool sessions_prepared = false;
};

// Clubs and builds are grouped as shot_groups does; rows that repeat others (repeated_rows) count once. A
// shot that only has a total landed that much of it before its end along its own direction: by the run of the
// club's other shots where those tell, else by run_share_of_carry of its kind, said in a warning. Putts are
// left aside with a warning. A session is a date and what the log calls the session, whatever the time of
// day. What was recorded and is not used is said.
//
// Throws InputError and UsageError as shot_groups does, and InputError for more clubs than a profile holds.
LoggedClubs logged_clubs(const std::vector<NamedLog>& logs, const std::vector<KindOfClub>& kinds,
                         const std::vector<std::string>& carried = {});

}  // namespace landwidth
