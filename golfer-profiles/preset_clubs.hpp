// Clubs made of the preset numbers. Not for use outside of this room.
#pragma once

#include "golfer-profiles/preset_numbers.hpp"
#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// What all clubs of a typical golfer share.
struct ClubMaker {
    Reach reach;
    Scatter scatter;
    Reference reference;
    Hand hand;
};

// The mean length of the golfer's drives: as asked for, or as published for the handicap.
double drive_yd_of(const GolferRequest& request);

// Throws UsageError for a handicap or a drive out of range.
ClubMaker maker_for(const GolferRequest& request);

Club preset_club(const BagSlot& slot, const ClubMaker& maker);

}  // namespace landwidth
