// What is known of a golfer's pattern before any of the golfer's shots is: how far golfers of one level
// differ from the typical numbers of that level. Values, units and sources stand with the planner's
// assumptions.
#pragma once

namespace landwidth {

struct PatternPrior {
    // The spread (covariance), the mishits and their share of a typical pattern are taken for so many
    // recorded shots; >= 4.
    double worth_shots;
    // One standard deviation between golfers of one level: of the mean carry, as a share of it, ...
    double carry_differs_share;
    // ... and of the mean direction.
    double direction_differs_rad;
    // ... and of the logarithm of the degrees of freedom of the tail.
    double log_tail_differs;
};

}  // namespace landwidth
