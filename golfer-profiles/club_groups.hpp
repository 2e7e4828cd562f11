// The shots of logs by club and build, whatever spelling each log used.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "golfer-profiles/logs/named_log.hpp"
#include "golfer-profiles/logs/repeated_rows.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// What the user says a club is, by the name the logs or the profile give it.
struct KindOfClub {
    std::string club;
    ClubKind kind;
};

struct ShotGroup {
    std::string club;   // as first written; its builds keep it, but for case
    std::string build;  // as first written, "driver, 44 in" as "44 in"; empty for the club itself
    ClubKind kind;
    bool is_the_one_carried = false;
    struct Member {
        const LoggedShot* shot;
        std::size_t log;
    };
    std::vector<Member> members;  // at least one

    std::string name() const { return build.empty() ? club : club + ", " + build; }
};

// In the order in which they first appear, putters too; without the rows in `repeated`. Spellings of one club
// (club_key) and of one build (build_key) are one group. Where every shot of a club is of a build, one of the
// builds is the one carried: the one in `carried` ("driver, 45.5 in"), else the one with the most shots, the
// first of equals. `warnings` says which spellings were taken together and which build is carried.
//
// Throws InputError with file and row for a club whose kind neither `kinds` nor its name tells, UsageError
// for an entry of `kinds` or `carried` that is of no shot, or that asks for a build where the club itself
// has shots.
std::vector<ShotGroup> shot_groups(const std::vector<NamedLog>& logs, const RepeatedRows& repeated,
                                   const std::vector<KindOfClub>& kinds,
                                   const std::vector<std::string>& carried,
                                   std::vector<std::string>& warnings);

// "a.csv: row 7".
std::string place_of(const ShotGroup& group, const std::vector<NamedLog>& logs);

}  // namespace landwidth
