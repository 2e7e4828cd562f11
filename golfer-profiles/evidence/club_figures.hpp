// What recorded shots say of a club by themselves, and what the model makes of them: side by side, so that
// nobody takes the one for the other.
#pragma once

#include <span>
#include <vector>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// Of the recorded numbers themselves, mishits among them.
struct RawFigures {
    double mean, sd, median;
    double low, high;  // between these lie the middle 90 %
};
struct RawShots {
    std::size_t shots;
    RawFigures carry, side;  // metres; sd 0 for a single shot
};
// At least one shot.
RawShots raw_figures(std::span<const ShotOffset> shots);

// A number of a pattern: its middle, and between what the evidence leaves it open (90 %).
struct OpenFigure {
    double middle, low, high;
};
struct OpenPattern {
    OpenFigure carry, side, carry_sd, side_sd;  // metres, of the usual shot
    OpenFigure mishit_share;
};
// Of a pattern and draws about it; at least one draw.
OpenPattern open_pattern(const ShotPattern& pattern, std::span<const ShotPattern> draws);

// Both side by side.
struct ClubEvidence {
    RawShots raw;                       // of all recorded shots at hand; all 0 where there are none
    RawShots raw_usual;                 // the same without those taken for mishits
    OpenPattern open;                   // what the model makes of them
    std::vector<double> mishit_chance;  // of each shot, see mishit_chances
};
// Of a pattern, the shots behind it (there may be none) and draws about it; at least one draw.
ClubEvidence club_evidence(const ShotPattern& pattern, std::span<const ShotOffset> shots,
                           std::span<const ShotPattern> draws);

}  // namespace landwidth
