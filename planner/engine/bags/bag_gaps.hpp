// The gaps of a bag: how far each club carries and how sure that is, how far apart neighbours are and how
// much they overlap, and the slot between the driver and the next club that a second tee club would fill.
//
// Carries are those of the usual shot on the reference day. What the recorded shots leave open comes from
// joint draws of all clubs' patterns (evidence/bag_draws.hpp), so that what two clubs share cancels in their
// gap. A club without recorded shots stands with typical numbers and with how far golfers of one level
// differ.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/length_change.hpp"
#include "golfer-profiles/profile.hpp"
#include "planner/engine/assumptions.hpp"

namespace landwidth {

struct CarriedClub {
    std::size_t club;  // of the golfer
    double carry_m;
    Range carry_90_m;   // of the mean carry: 90 % of what the shots leave open
    double carry_sd_m;  // of single usual shots
    double run_m, total_m;
    double descent_rad;  // below the horizon, by the flight model
    int shots;           // 0: typical numbers
};

enum class GapStanding { even, wide, overlap };

// Between a club and the next shorter one, as positions in BagGaps::clubs.
struct CarryGap {
    std::size_t longer, shorter;
    double gap_m;
    Range gap_90_m;
    // That a usual shot of the longer club lands short of one of the shorter.
    double overlap_chance;
    GapStanding standing;
    // In how much of what the shots leave open the two stand like that.
    double sure;
};

enum class SlotPlace { longer_than_driver, near_driver, fills, near_next, shorter_than_next };

// A club that might go into the slot.
struct SlotCandidate {
    Club club;
    bool on_trial;  // known from the profile; otherwise typical of its kind for this golfer
    double carry_m, total_m, descent_rad;
    SlotPlace place;
};

struct TeeSlot {
    std::size_t driver, next;  // positions in BagGaps::clubs
    double gap_m;
    bool has_room;                          // the gap is wide
    double room_sure;                       // in how much of what the shots leave open it is as has_room says
    double carry_m, total_m;                // of a club in the middle
    Range fills_m;                          // carries that fill it
    std::vector<SlotCandidate> candidates;  // longest first
};

struct BagGaps {
    std::vector<CarriedClub> clubs;    // those in the bag that are hit at full swing, the longest carry first
    std::vector<CarryGap> gaps;        // one less than clubs
    std::optional<TeeSlot> slot = {};  // absent without a driver in the bag, and with nothing behind it
    std::vector<std::string> warnings = {};
    Assumptions assumptions = {};
};

// Throws InputError when no club in the bag but the putter has a pattern.
BagGaps bag_gaps(const Golfer& golfer, const Assumptions& assumptions);

}  // namespace landwidth
