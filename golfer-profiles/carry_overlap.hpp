// How far two clubs' carries overlap.
#pragma once

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// The chance that a usual shot of `longer` lands short of a usual shot of `shorter`, each hit once, mishits
// not counted: 0.5 for the same pattern twice, towards 0 the clearer they are apart. To 0.002.
double chance_longer_is_shorter(const ShotPattern& longer, const ShotPattern& shorter);

}  // namespace landwidth
