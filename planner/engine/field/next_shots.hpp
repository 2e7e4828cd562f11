// What the plan expects after the tee shot: the usual ball followed over the solved choices to the green.
#pragma once

#include <vector>

#include "planner/engine/day/usual_ball.hpp"
#include "planner/engine/field/personal_field.hpp"
#include "planner/engine/planned_shot.hpp"

namespace landwidth {

// On a par 5 or longer a shot at the green has the lay-up as its alternative; a lay-up always has the shot at
// the green where a club reaches it. `from` is where the usual tee shot comes to rest on `lie`, one stroke
// used. Ends on the green, in the short game, where the usual ball would be out of play, or after six shots.
std::vector<PlannedShot> next_shots(const PersonalField& field, const HoleDay& day, int par, Point from,
                                    Lie lie, const LieRaster& lies);

// Where a usual shot comes to rest: it runs on by the lie it lands on until a bunker or penalty area.
Point usual_rest(const UsualBall& ball, const LieRaster& lies, const EngineAssumptions& assumptions);

}  // namespace landwidth
