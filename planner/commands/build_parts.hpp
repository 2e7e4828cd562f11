// A club's parts out of what was weighed: some by themselves, some as the rest of the whole.
#pragma once

#include <optional>

#include "golfer-profiles/club_build.hpp"
#include "planner/engine/build_assumptions.hpp"

namespace landwidth {

// As typed, in SI and each within its limits; what was not typed is absent.
struct TypedParts {
    std::optional<double> length_m = {};
    std::optional<double> head_kg = {};
    std::optional<double> shaft_kg = {};
    std::optional<double> shaft_length_m = {};
    std::optional<double> shaft_balance_share = {};
    std::optional<double> grip_kg = {};
    // Of the whole club.
    std::optional<double> total_kg = {};
    std::optional<double> balance_m = {};
    std::optional<SwingWeight> swing_weight = {};
};

struct SolvedParts {
    ClubParts parts;
    // The place of the head's balance point comes from the club's own balance or swing weight and is not
    // assumed: whatever shaft and grip really balance at, the whole club then is as measured.
    bool head_centre_measured;
};

// The head is what was typed or what the total leaves. Throws UsageError: something missing, something
// twice, a head or a balance point that cannot be.
SolvedParts solve_parts(const TypedParts& typed, const BuildAssumptions& assumptions);

}  // namespace landwidth
