// The forms of a change of club build.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/club_build.hpp"
#include "golfer-profiles/head_change.hpp"
#include "golfer-profiles/length_change.hpp"
#include "golfer-profiles/lie_change.hpp"
#include "planner/engine/assumption_entry.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// What every report of a build is made from; what is not known is absent and left out.
struct BuildView {
    std::string club;  // its name in the profile, else its kind
    ClubKind kind = ClubKind::driver;
    std::optional<double> length_m = {};  // as it is
    // The club as weighed and balanced, where its parts are not known.
    std::optional<ClubWeights> weighed = {};
    // Where they are; without a wish, before and after are the same. Without `restored`, no head of a weight
    // that is built gives the target, or the wishes name the head.
    std::optional<BuildChange> parts = {};
    BuildWishes wishes = {};
    // The place of the head's balance point was worked out from the club's own weight and balance.
    bool head_centre_measured = false;
    // A few grams more on the head, and the heads of `parts` that give the two targets, against the head as
    // it is.
    std::optional<HeadChange> head_step = {};
    std::optional<HeadChange> restored_head = {};
    std::optional<HeadChange> restored_inertia_head = {};
    std::optional<LengthChange> flight = {};
    // Why no rule of thumb is told of the length wished for, and up to what change they would be; never of a
    // putter, of which there is none.
    std::optional<LengthSilence> silence = {};
    double length_reach_m = 0.0;
    std::optional<LieChange> lie = {};
    KnownFlight known = {};
    std::vector<LengthVerdict> verdicts = {};  // of the length wished for, else of the present one
    std::vector<AssumptionEntry> assumptions = {};
    DisplayUnits units = DisplayUnits::yards;  // of carry; a club is always in inches and grams
};

std::string build_text(const BuildView& view);

// The same as a page, with the club drawn on its balance.
std::string build_html(const BuildView& view);

// One object, "landwidth-build/1": units in the names, carry in those of the view; ranges as [low, high].
std::string build_json(const BuildView& view);

}  // namespace landwidth
