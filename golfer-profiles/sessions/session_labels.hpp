// Which shots are of one session: those of one date and of what the log calls the session.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/logged_clubs.hpp"

namespace landwidth {

// Fills clubs.sessions and LandedShot::session; the label is the date as in ISO 8601, then what the log calls
// the session ("2026-05-02, bay 3"), or one of them alone. A date that cannot be read stays in the label as
// it is written, and is told in `said`.
void label_sessions(LoggedClubs& clubs, const std::vector<NamedLog>& logs, std::vector<std::string>& said);

}  // namespace landwidth
