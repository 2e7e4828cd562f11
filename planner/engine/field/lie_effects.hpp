// What the lie does to a shot pattern: shorter and wider from rough, worse from sand, a low recovery out of
// trees.
//
// Patterns are measured from good lies. The effects are few factors (assumptions.cpp), set so that the tour
// preset comes near the gaps between the columns of the published table; see
// tests/published/field_published.cpp for how near.
#pragma once

#include <array>
#include <optional>

#include "geometry/lie.hpp"
#include "golfer-profiles/profile.hpp"
#include "planner/engine/engine_assumptions.hpp"

namespace landwidth {

// Where a shot is played from, as far as the pattern cares.
enum class Stance : std::uint8_t { tee, fairway, rough, bunker, trees };
inline constexpr std::size_t stance_count = 5;
inline constexpr std::array<Stance, stance_count> all_stances{Stance::tee, Stance::fairway, Stance::rough,
                                                              Stance::bunker, Stance::trees};

// A ball lying on the green is putted: fairway, for a ball beyond the reach of the putting table. Lies in
// play only, else std::logic_error.
Stance stance_on(Lie lie);

// The run of a ball that lands on a lie, as a share of its run on mown ground; 0 where it stays.
double run_share(Lie landed_on, const EngineAssumptions& assumptions);

// The pattern of a club from a stance with a part of the full swing; absent when the club is not for it (a
// driver off the ground, a wood out of sand or trees). `swing` in (0, 1]. Spreads of a part swing fall with
// a power of it, not in proportion: a half wedge is not twice as precise.
std::optional<ShotPattern> pattern_from(const Club& club, Stance stance, double swing,
                                        const EngineAssumptions& assumptions);

}  // namespace landwidth
