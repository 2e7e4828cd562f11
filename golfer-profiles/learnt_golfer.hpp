// A golfer's profile from recorded shots: a pattern for every club in the logs, the rest of the bag from what
// is known otherwise.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/logged_clubs.hpp"
#include "golfer-profiles/pattern_prior.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct LearnRequest {
    // Without a profile to learn onto: the level, whose typical bag the learnt clubs join. With one, only
    // `reference` is looked at: for clubs that the profile has not.
    GolferRequest typical;
    std::optional<Golfer> onto = {};
    std::vector<KindOfClub> kinds = {};
    PatternPrior weight;
    // Builds in the bag of clubs that are only logged as builds: "driver, 45.5 in".
    std::vector<std::string> carried = {};
};

enum class PriorSource { typical, own };  // own: an earlier pattern of the same golfer and club

struct LearntClub {
    LoggedClub logged;
    Club club;  // as in the golfer's profile
    // What was known before these shots: the typical pattern, scaled to the golfer's length, or the golfer's
    // own.
    ShotPattern prior;
    PriorSource source;
    double prior_scale;                 // of the typical pattern, in [0.75, 1.3]; 1 for an own one
    int earlier_shots;                  // behind an own one
    double usual_carry_m;               // median of the recorded shots
    std::vector<double> mishit_chance;  // of each of logged.shots, in [0, 1]
    // How much of spread and mishits comes from recorded shots and not from a preset, in [0, 1].
    double recorded_share;
};

struct LearntGolfer {
    Golfer golfer;
    std::vector<LearntClub> clubs;      // in the order of the logs
    std::vector<std::string> warnings;  // one sentence each
};

// The prior of each club is the typical club of the golfer's level (or its own in `onto`), scaled by the
// median of the recorded carries over the typical carry: the ratio is held within [0.75, 1.3] and leans on 1
// for one or two shots. Without `onto`, the clubs nobody hit are those of a typical golfer with the learnt
// length.
//
// A learnt club takes the place of the club of its name. One the bag has not joins it; as a club on trial
// (in_bag false) when it is a build of a club in the bag or when 14 are carried already.
//
// Throws InputError and UsageError as logged_clubs and typical_golfer do, and InputError when shots are
// recorded that the profile has learnt from already.
LearntGolfer learnt_golfer(const std::vector<NamedLog>& logs, const LearnRequest& request);

}  // namespace landwidth
