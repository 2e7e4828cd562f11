// One hole planned on a day, for the tests of wind and ground.
#pragma once

#include "tests/planner/engine/invented_hole.hpp"

namespace landwidth::fixture {

// A steady wind of so many miles an hour from a true bearing.
Conditions windy(double mph, double from_degrees);

HolePlan planned(const HoleParts& parts, const Golfer& golfer, const Conditions& day = {},
                 FieldKind field = FieldKind::personal);

// club_golfer() with tails, and misses that fall short to the right.
Golfer slicer();

// A bend to the right: water left, woods inside the bend, out of bounds beyond them, sand at the corner.
HoleParts eventful_hole();

}  // namespace landwidth::fixture
