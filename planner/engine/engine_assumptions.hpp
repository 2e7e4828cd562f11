// The constants the engine computes with; values and sources in assumptions.cpp. Lengths in metres, angles in
// radians.
#pragma once

#include "golfer-profiles/evidence/golfer_prior.hpp"

namespace landwidth {

// The hole that a driver chart is made of: see driver_chart.hpp.
struct ChartHole {
    double fairway_from_m;  // from the tee of the longest hole to the start of the fairway
    double green_radius_m;
    double trouble_from_edge_m;  // from the edge of the fairway to the trouble
};

// What counts as a gap in the bag: see bags/bag_gaps.hpp.
struct GapLimits {
    double wide_m;           // a gap between two carries that is wider is wide
    double overlap_chance;   // two clubs overlap from this chance that the longer one's shot is the shorter
    double slot_edge_share;  // a club fills a slot when it keeps this share of it from either end
};

// The holes on which bags are weighed when no course is given: see bags/straight_holes.hpp.
struct StraightHoleMix {
    double narrow_m;  // the two landing widths
    double wide_m;
    double shortest_par4_m;
    double longest_par4_m;
    double shortest_par5_m;
    double longest_par5_m;
    // How many of the holes have woods on both sides, a penalty area on one, out of bounds on one; the others
    // have rough only.
    double with_trees;
    double with_water;
    double with_out_of_bounds;
};

struct EngineAssumptions {
    // Run-out as a share of the club's run on fairway, by the lie the ball lands on.
    double run_share_rough;
    double run_share_green;
    double run_share_trees;
    // Share of the balls finishing among trees that are lost (stroke and distance).
    double trees_lost_share;
    // Relief: the length of the longest club other than the putter where the bag does not say; two of it for
    // lateral relief.
    double club_length_m;
    // Relief back on the line is tried this far behind the point where the ball crossed.
    double back_on_line_reach_m;
    // Handicap adjustment of the published table: see handicap_adjustment.hpp.
    double tour_handicap;
    double bogey_handicap;
    double short_game_strokes;
    double short_game_reach_m;
    double long_game_strokes_per_m;
    double putting_stretch_at_18;
    // Tee clubs worth computing: the mean total at least this share of what the hole asks for (the shorter of
    // the longest club's total and the hole's length).
    double tee_club_floor_share;
    // Aims: so far to each side of the directions to the first bend and to the pin; step of the first fan.
    double aim_reach_rad;
    // Landing places further than this from the line of play are not aimed at.
    double aim_corridor_m;
    double aim_coarse_step_rad;
    // Rasters: the cells of the lie raster; the cells of the tee fan along and across the rays.
    double lie_cell_m;
    double fan_ray_step_m;
    double fan_angle_step_rad;
    // The golfer's own field: side of its cells, how far from the line of play places are valued, from where
    // on strokes are read from the short game's table, and the residual at which the solution is taken.
    double field_step_m;
    double field_reach_m;
    double short_game_zone_m;
    double field_residual;
    // What a lie does to a pattern measured from good lies: factors on carry and spread, and a share of balls
    // that become mishits. See field/lie_effects.hpp.
    double rough_carry_woods;
    double rough_carry_irons;
    double rough_spread;
    double rough_mishits;
    double bunker_carry;
    double bunker_spread;
    double bunker_mishits;
    // Spreads of a part swing are those of the full one times swing to this power.
    double partial_swing_spread;
    // Out of trees: run of a punch as a share of its carry, spread, and the share of balls that stay.
    double recovery_run;
    double recovery_spread;
    double recovery_stuck_share;
    // Share of a ball's side offset that is curve and not direction: it grows with a head wind.
    double curve_share;
    // What is known of a golfer's patterns before any shot is recorded.
    GolferPrior prior;
    // Sessions that shots were recorded in: see golfer-profiles/sessions/session_assumptions.hpp.
    double range_ball_loss;
    double bay_widening;
    double session_half_life_days;
    // Confidence: how many draws of the patterns are made, and below which share of draws a verdict is a
    // toss-up.
    double confidence_draws;
    double toss_up_below;
    // A change of the bag: draws in which it is weighed, the chance from which it counts as settled, and the
    // most further shots that are looked at to settle it.
    double weigh_draws;
    double settled_at;
    double most_more_shots;
    // Two choices are as good as each other when the middle 90 % of what their difference may be lies within
    // this, either way: of two bags, strokes a round; of two clubs from a tee, in the units of the golfer's
    // aim.
    double equal_within;
    double equal_within_tee;
    // Verdicts by less than this, in the units of the golfer's aim, and toss-ups come with their break-evens.
    double close_margin;
    ChartHole chart_hole;
    GapLimits gaps;
    StraightHoleMix straight_holes;
};

}  // namespace landwidth
