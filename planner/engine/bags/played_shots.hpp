// The full shots of a hole after the tee shot, gathered: with which club, from where, how often.
#pragma once

#include <vector>

#include "planner/engine/hole_study.hpp"

namespace landwidth {

// Shots with one option of the menu from near one another stand together at the cell most of them are played
// from.
struct PlayedShots {
    int cell;
    Stance stance;
    Action action;
    std::size_t club;  // number in the profile
    double swing;
    double mass;  // how many a round of the hole, on average
};

std::vector<PlayedShots> played_shots(HoleStudy& study, const ClubShots& tee_shots, double aim);

}  // namespace landwidth
