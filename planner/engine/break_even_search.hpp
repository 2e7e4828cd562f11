// Looks for the break-evens of a verdict: trials of the hole with one thing moved, the aims found anew.
//
// What is moved, and how far it is looked for, outward from today on both sides:
// - side spread: the side standard deviations of the best club's usual shots and mishits alike, from 0.4 to
//   2.5 times today's;
// - carry: the centre of its usual shots along the aim, by up to 15 % either way; mishits move in proportion,
//   run, side centre and spreads stay;
// - landing width: all fairway edges outward or inward by up to 15 yd, and inward no further than where the
//   landing is gone; the landing width changes by twice that (see moving_fairway.hpp for what stays). For
//   strokes alone: on other aims the field does not tell what a fairway deep inside would be worth as rough.
// - wind, of a plan in still air: with the best club's aim or against it, up to 30 mph either way.
// All this for the tee shot: the next club, the shots that follow and what every place is worth for them
// stay as they are today, though a golfer may play the best club again on the same hole.
//
// Every trial sums over the same quadrature points, a small set; what that set is off by today, against the
// replicates of the plan, is taken off every trial. So the margin at today's values is exactly the plan's.
// The first change of sign on a grid of steps (5 %, 1 %, 1 yd an edge and 2 mph) is halved down; a margin
// that dips below nothing and back within one step is missed.
#pragma once

#include "planner/engine/break_evens.hpp"
#include "planner/engine/hole_study.hpp"

namespace landwidth {

// A club at its best aim today.
struct Rival {
    std::size_t club;  // in the golfer's bag
    const ShotPattern& pattern;
    AimRange aims;  // allowed
    int ray;
};

// `margin`: what `next` costs more than `best` by the plan, >= 0. `landing`: of `best`, see TeeChoice.
BreakEvens find_break_evens(HoleStudy& study, const Rival& best, const Rival& next, double margin,
                            const std::optional<FairwayCut>& landing);

}  // namespace landwidth
