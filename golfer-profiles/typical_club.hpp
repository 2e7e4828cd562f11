// A single typical club, also of a kind that no preset bag has (a mini-driver, a driving iron).
#pragma once

#include <string_view>

#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// The club of a kind that a golfer of this level and length would have, under the name given. The name tells
// which of its kind it is where it can ("5w"); otherwise, and for a number no preset knows, it is the
// 3-wood, 4-hybrid, 7-iron or pitching wedge, and the note says so. Not the putter's kind: that has no
// pattern. Throws UsageError as typical_golfer does.
Club typical_club(const GolferRequest& request, ClubKind kind, std::string_view name);

// What typical_club is asked for so that the club is like this golfer's own: the golfer's level and hand, and
// the length of the golfer's drive where a driver is in the bag.
GolferRequest request_like(const Golfer& golfer);
// Whether typical_club has an answer: handicap and drive are within what the presets know.
bool has_typical_club(const GolferRequest& request);

}  // namespace landwidth
