// A golfer's profile from recorded shots: one golfer behind all clubs of the logs and of the bag.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "golfer-profiles/evidence/club_figures.hpp"
#include "golfer-profiles/evidence/golfer_prior.hpp"
#include "golfer-profiles/evidence/usual_ways.hpp"
#include "golfer-profiles/logged_clubs.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile.hpp"
#include "golfer-profiles/sessions/session_assumptions.hpp"
#include "golfer-profiles/strikes.hpp"

namespace landwidth {

struct LearnRequest {
    // Without a profile to learn onto: the level, whose typical bag the learnt clubs join. With one, only
    // `reference` is looked at: for clubs that the profile has not.
    GolferRequest typical;
    // False: no handicap is known. Without a drive in `typical` the length is taken from the logs.
    bool handicap_known = true;
    std::optional<Golfer> onto = {};
    std::vector<KindOfClub> kinds = {};
    std::vector<std::string> carried = {};  // builds that stand for their club, see logged_clubs
    GolferPrior weight;
    SessionAssumptions sessions = {};
};

enum class PriorSource { typical, own };  // own: an earlier pattern of the same golfer and club

struct LearntClub {
    LoggedClub logged;
    Club club;  // as in the golfer's profile
    // What was known before any shot: the typical pattern of the level, or the golfer's own as stated.
    ShotPattern prior;
    PriorSource source;
    int earlier_shots;      // recorded before these
    ClubEvidence evidence;  // of all recorded shots at hand: earlier ones, then logged.shots
    // How much of the spread comes from the club's own recorded shots, in [0, 1]; the rest from the golfer's
    // other clubs and from the level.
    double recorded_share;
};

// Of each of logged.shots, the chance that it was a mishit.
std::span<const double> logged_mishit_chance(const LearntClub& club);

struct LearntGolfer {
    Golfer golfer;
    std::vector<LearntClub> clubs;      // in the order of the logs
    std::vector<ShapeFound> shapes;     // clubs whose shots go two ways
    std::vector<StrikeEffect> strikes;  // of clubs with places on the face
    std::vector<std::string> warnings;  // one sentence each
};

// Every club of the golfer is fitted at once, from all shots of all clubs and sessions under the model of
// evidence/golfer_prior.hpp; clubs nobody hit move with what the others show of the golfer. With `onto`, a
// club without recorded shots whose pattern was stated by hand stays as it is.
//
// A learnt club takes the place of the club of its name; one that stands for its club (LoggedClub::
// is_the_one_carried) takes the place of that. One the bag has not joins it; as a club on trial (in_bag
// false) when it is a build of a club in the bag or when 14 are carried already.
//
// Shots that `onto` keeps already are left out and told (known_shots.hpp).
//
// Throws InputError and UsageError as logged_clubs and typical_golfer do, and InputError when no shot is new
// to the profile, or for more clubs than a profile holds.
LearntGolfer learnt_golfer(const std::vector<NamedLog>& logs, const LearnRequest& request);

}  // namespace landwidth
