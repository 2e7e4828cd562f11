// Recorded shots beside what is made of them, for every machine-readable report that has them.
#pragma once

#include "golfer-profiles/evidence/club_figures.hpp"
#include "planner/reports/json_pieces.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// "recorded" (null without shots at hand), "recorded_without_mishits" (null without any) and "model": lengths
// in these units with the unit in the name, 90 % intervals as [low, high].
Json json_evidence(const ClubEvidence& evidence, DisplayUnits units);

}  // namespace landwidth
