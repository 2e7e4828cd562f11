// A level for golfers who have none: a handicap index guessed from how far they hit the ball. It stands in
// for the short game and the putting, and the patterns take it for little (Golfer::handicap_known false).
#pragma once

#include <string>

#include "golfer-profiles/presets.hpp"

namespace landwidth {

// The handicap index whose golfers hit drives of this total on average (R&A and USGA distance reports),
// within [0, 36].
double handicap_by_drive(Reference reference, double drive_total_yd);

// The drive, in all, of the typical golfer who carries the club of this kind and name so far. Yards. Throws
// UsageError when no golfer does.
double drive_by_carry(const GolferRequest& like, ClubKind kind, const std::string& name, double carry_yd);

// The same by the speed of a driver's head; ball speed 1.45 times as much (common practice, no source).
double drive_by_club_speed(const GolferRequest& like, double club_speed_mps);

// The golfer with this drive and the handicap guessed by it.
GolferRequest guessed_level(GolferRequest like, double drive_total_yd);

}  // namespace landwidth
