// What a little more or less weight on the head does: to swing weight and moment of inertia by moments, to
// club speed as a range of what the trade reckons with, to ball speed at the same club speed by the balance
// of momentum.
//
// The range of club speed always holds no change: a heavier head is swung a little slower by some and not at
// all by others, and it hits a little harder, so that a few grams may change nothing that can be measured.
#pragma once

#include <optional>

#include "golfer-profiles/club_build.hpp"
#include "golfer-profiles/length_change.hpp"

namespace landwidth {

// What the caller brings with its sources.
struct HeadPractice {
    Range club_speed_per_kg;  // m/s a kilogram more on the head; low <= 0 <= high
    double reach_kg;          // the largest change of the head this is meant for; > 0
};

struct HeadChange {
    double more_kg;  // negative: less
    double points;   // of swing weight
    double inertia_kg_m2;
    // Absent beyond the reach of the practice.
    std::optional<Range> club_speed_mps = {};
    // Of the ball speed, at the same club speed and a strike in the middle: a head of mass M gives a ball of
    // mass m a speed in proportion to M / (M + m).
    double ball_speed_share = 0.0;
};

// parts.head_kg + more_kg > 0.
HeadChange head_change(const ClubParts& parts, double more_kg, const HeadPractice& practice);

}  // namespace landwidth
