// The figures of recorded shots and of what is made of them, in cells and in a table, for every report that
// shows them.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/evidence/club_figures.hpp"
#include "planner/reports/document.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// "3R", "2L", "0".
std::string side_number(double side_m, DisplayUnits units);
// "12.3".
std::string spread_number(double sd_m, DisplayUnits units);
// Of recorded shots: "-" where a single one has no spread.
std::string spread_number(const RawShots& raw, const RawFigures& figures, DisplayUnits units);

// "231 to 244", "6L to 3R", "8.4 to 17.9".
std::string length_range(double low_m, double high_m, DisplayUnits units);
std::string side_range(double low_m, double high_m, DisplayUnits units);
std::string spread_range(const OpenFigure& figure, DisplayUnits units);

// Of the recorded shots at hand, those taken for mishits.
std::size_t mishits_among(const ClubEvidence& evidence);

struct ClubRow {
    std::string club;
    const ClubEvidence& evidence;
};
// Two rows a club: the shots by themselves, and the model with 90 % in brackets.
DocumentTable raw_beside_model(const std::vector<ClubRow>& clubs, DisplayUnits units);
// What its columns mean and why the rows differ.
std::string raw_beside_model_words();

}  // namespace landwidth
