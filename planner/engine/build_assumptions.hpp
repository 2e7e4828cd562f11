// The constants behind a change of club build, apart from those of a plan: what is assumed of a club's parts,
// and common practice on length. Values, units, meanings and sources stand in build_assumptions.cpp.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/club_build.hpp"
#include "golfer-profiles/head_change.hpp"
#include "golfer-profiles/length_change.hpp"
#include "planner/engine/assumption_entry.hpp"

namespace landwidth {

struct BuildAssumptions {
    // Of parts of which nothing else is known.
    double head_centre_from_end_m;
    double shaft_balance_share;
    double grip_balance_m;
    SwingWeightThumb thumb;
    LengthPractice length;
    Range lie_per_length;  // radians a metre: how much flatter a shorter club plays
    HeadPractice head;
};

// Where a head balances differs by the kind of club, which has its own default.
BuildAssumptions default_build_assumptions(ClubKind kind = ClubKind::driver);
std::vector<AssumptionEntry> list_build_assumptions(const BuildAssumptions& assumptions,
                                                    ClubKind kind = ClubKind::driver);
// `text` is "name=value". Throws UsageError: unknown name, not a number, out of range, a range whose low end
// lies above its high end.
void override_build_assumptions(BuildAssumptions& assumptions, const std::vector<std::string>& texts);

}  // namespace landwidth
