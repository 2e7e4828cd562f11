// What is done to logged shots before anything is learnt from them: every landing is brought to the reference
// day, shots of a bay are widened where that is asked for, and each session gets its weight. In this one
// place, and once.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/logged_clubs.hpp"
#include "golfer-profiles/sessions/session_assumptions.hpp"

namespace landwidth {

// `clubs` are those of `logs`. In this order:
//   sessions   a date, with what the log calls the session, is one; clubs.sessions and LandedShot::session
//   are
//              filled and weighed (a shot that tells neither date nor session stays without)
//   balls      a range ball's carry and side grow to those of a course ball (assumption range_ball_loss)
//   air, wind  landings as of the reference day (to_reference.hpp); runs stay as they were
//   bay        shots from a bay move away from the middle of their club's (bay_widening.hpp)
// Returns what was done, one sentence each, in yards and mph; LoggedClub::session_note says it of a club.
// Throws std::logic_error for clubs that have been here before.
std::vector<std::string> prepare_sessions(LoggedClubs& clubs, const std::vector<NamedLog>& logs,
                                          const SessionAssumptions& assumptions);

}  // namespace landwidth
