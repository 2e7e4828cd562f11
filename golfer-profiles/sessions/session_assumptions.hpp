// What is assumed about sessions. Values and sources stand with the planner's assumptions.
#pragma once

namespace landwidth {

struct SessionAssumptions {
    // Share of its carry that a range ball loses against a course ball; [0, 0.3].
    double range_ball_loss = 0.0;
    // How much wider the course is than a bay; 1: not applied.
    double bay_widening = 1.0;
    // A session so much older than the newest weighs half; > 0.
    double half_life_days = 730.0;
    // Of a ball's direction off the line; [0, 1].
    double curve_share = 0.5;
};

}  // namespace landwidth
