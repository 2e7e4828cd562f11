#include "planner/engine/assumptions.hpp"

#include <array>

#include "geometry/units.hpp"
#include "planner/engine/named_constants.hpp"

namespace landwidth {

namespace {

constexpr ConstantUnit yd{"yd", metres_per_yard};
constexpr ConstantUnit m{"m", 1.0};
constexpr ConstantUnit in{"in", metres_per_inch};
constexpr ConstantUnit deg{"deg", radians_per_degree};
constexpr ConstantUnit share{"share", 1.0};
constexpr ConstantUnit strokes{"strokes", 1.0};
constexpr ConstantUnit strokes_per_100_yd{"strokes/100 yd", 1.0 / (100.0 * metres_per_yard)};
constexpr ConstantUnit handicap{"handicap", 1.0};
constexpr ConstantUnit factor{"factor", 1.0};
constexpr ConstantUnit count{"count", 1.0};
constexpr ConstantUnit days{"days", 1.0};

// What coarser cells are larger by.
constexpr double coarser_cells = 2.0;

using Constant = NamedConstant<Assumptions>;

constexpr std::string_view assumption = "assumption";
constexpr std::string_view handbook = "Rules of Handicapping, par by hole length, men (from memory)";
constexpr std::string_view rating =
    "USGA Course Rating System: yardage ratings L/220 + 40.9 (scratch men, from memory) and L/160 + 50.7 "
    "(bogey men, from "
    "memory); the difference by hole";

constexpr std::string_view lie_source =
    "assumption, set so that the tour preset comes near the gaps between the columns of M. Broadie, "
    "Interfaces "
    "42(2), 2012, table 9";

#define IN(group, name) [](Assumptions& a) -> double& { return a.group.name; }

// Beside the model, in golfer-profiles/evidence/golfer_prior.hpp.
constexpr GolferPrior known;

// The one readable list. Lengths in the unit named; name as typed after --assume.
const std::array constants{
    Constant{"stream_width", 2.0, m, 0.1, 100.0, IN(map, stream_width_m),
             "width of a stream drawn as a line without a width", assumption},
    Constant{"ditch_width", 1.5, m, 0.1, 100.0, IN(map, ditch_width_m),
             "width of a ditch or drain drawn as a line without a width", assumption},
    Constant{"river_width", 10.0, m, 0.1, 500.0, IN(map, river_width_m),
             "width of a river or canal drawn as a line without a width", assumption},
    Constant{"tree_radius", 4.0, m, 0.1, 30.0, IN(map, tree_radius_m),
             "ground under a single tree, and half the width of a row of trees", assumption},
    Constant{"tree_height", 12.0, m, 1.0, 60.0, IN(map, tree_height_m),
             "height of trees and woods without a height on the map", assumption},
    Constant{"scrub_height", 3.0, m, 0.5, 20.0, IN(map, scrub_height_m),
             "height of scrub without a height on the map", assumption},
    Constant{"building_height", 6.0, m, 2.0, 200.0, IN(map, building_height_m),
             "height of a building without a height or storeys on the map", assumption},
    Constant{"storey_height", 3.0, m, 2.0, 6.0, IN(map, storey_height_m),
             "height of one storey of a building", assumption},
    Constant{"out_of_bounds_depth", 150.0, yd, 1.0, 1000.0, IN(map, out_of_bounds_depth_m),
             "how far the ground beyond an out-of-bounds line is taken to be out", assumption},
    Constant{"hole_margin", 200.0, yd, 50.0, 1000.0, IN(map, hole_margin_m),
             "how far from the line of play the ground is read", assumption},
    Constant{"snap_distance", 40.0, m, 1.0, 200.0, IN(map, snap_m),
             "how far from the end of a hole's line its green, pin or tee may lie", assumption},
    Constant{"par4_from", 250.0, yd, 50.0, 1000.0, IN(map, par4_from_m),
             "shortest hole without a mapped par that is taken for a par 4", handbook},
    Constant{"par5_from", 470.0, yd, 50.0, 1000.0, IN(map, par5_from_m),
             "shortest hole without a mapped par that is taken for a par 5", handbook},
    Constant{"par6_from", 690.0, yd, 50.0, 2000.0, IN(map, par6_from_m),
             "shortest hole without a mapped par that is taken for a par 6", handbook},

    Constant{"run_share_rough", 0.5, share, 0.0, 1.5, IN(engine, run_share_rough),
             "run of a ball that lands in rough, of the club's run on fairway", assumption},
    Constant{"run_share_green", 0.6, share, 0.0, 1.5, IN(engine, run_share_green),
             "run of a ball that lands on the green, of the club's run on fairway", assumption},
    Constant{"run_share_trees", 0.3, share, 0.0, 1.5, IN(engine, run_share_trees),
             "run of a ball that lands among trees, of the club's run on fairway", assumption},
    Constant{"trees_lost_share", 0.05, share, 0.0, 1.0, IN(engine, trees_lost_share),
             "balls finishing among trees that are lost: stroke and distance (Rule 18.2)", assumption},
    Constant{"club_length", 45.0, in, 18.0, 48.0, IN(engine, club_length_m),
             "a club-length for measuring relief where the bag does not give the longest club's length",
             "Rules of Golf, definitions: the longest club other than the putter; 45 in common practice"},
    Constant{"back_on_line_reach", 200.0, yd, 0.0, 500.0, IN(engine, back_on_line_reach_m),
             "how far behind the crossing point relief back on the line is looked for", assumption},

    Constant{"tour_handicap", -5.0, handicap, -10.0, 5.0, IN(engine, tour_handicap),
             "the handicap index the published tour table stands for (minus: a plus handicap)", assumption},
    Constant{"bogey_handicap", 20.0, handicap, 5.0, 40.0, IN(engine, bogey_handicap),
             "the handicap index of the bogey golfer the length effect is taken from",
             "USGA Course Rating System: about 20 for men (from memory)"},
    Constant{"short_game_strokes", 0.544, strokes, 0.0, 3.0, IN(engine, short_game_strokes),
             "what a bogey golfer takes more than a scratch golfer on a hole, whatever its length", rating},
    Constant{"short_game_reach", 20.0, yd, 1.0, 200.0, IN(engine, short_game_reach_m),
             "distance over which that difference builds up around the green (1 - 1/e of it)", assumption},
    Constant{"long_game_strokes", 0.1705, strokes_per_100_yd, 0.0, 2.0, IN(engine, long_game_strokes_per_m),
             "what a bogey golfer takes more than a scratch golfer for every 100 yd of distance", rating},
    Constant{"putting_stretch_at_18", 1.6, factor, 1.0, 4.0, IN(engine, putting_stretch_at_18),
             "a putt of an 18 handicap is worth a tour putt so many times as long",
             "M. Broadie, Every Shot Counts, 2014: half the putts holed from 5 ft against 8 ft"},

    Constant{"tee_club_floor", 0.55, share, 0.0, 1.0, IN(engine, tee_club_floor_share),
             "clubs that go less than this share of the longest club's total, or of the hole if that is "
             "shorter, are not tried",
             assumption},
    Constant{"aim_reach", 20.0, deg, 1.0, 60.0, IN(engine, aim_reach_rad),
             "aims are tried so far outside the directions to the first bend and to the pin", assumption},
    Constant{"aim_corridor", 50.0, yd, 5.0, 500.0, IN(engine, aim_corridor_m),
             "landing places further than this from the line of play are not aimed at: that is another hole",
             assumption},
    Constant{"aim_coarse_step", 0.6, deg, 0.05, 5.0, IN(engine, aim_coarse_step_rad),
             "step of the first fan of aims; the best are refined to fan_angle_step", assumption},
    Constant{"lie_cell", 0.25, yd, 0.1, 5.0, IN(engine, lie_cell_m), "cell of the lie raster", assumption},
    Constant{"fan_ray_step", 0.5, yd, 0.1, 5.0, IN(engine, fan_ray_step_m),
             "cell of the tee fan along its rays", assumption},
    Constant{"fan_angle_step", 0.15, deg, 0.02, 2.0, IN(engine, fan_angle_step_rad),
             "angle between the rays of the tee fan, and the finest step of the aim", assumption},

    Constant{
        "field_step", 2.0, yd, 0.5, 10.0, IN(engine, field_step_m),
        "cell of the grid on which the golfer's own field is solved; tests/benchmarks measure what it costs",
        assumption},
    Constant{
        "field_reach", 70.0, yd, 40.0, 500.0, IN(engine, field_reach_m),
        "how far from the line of play places are valued; balls beyond count as on the nearest place inside",
        assumption},
    Constant{"short_game_zone", 30.0, yd, 5.0, 60.0, IN(engine, short_game_zone_m),
             "distance to the hole within which strokes are those of the short game's table", assumption},
    Constant{"field_residual", 0.001, strokes, 1e-6, 0.1, IN(engine, field_residual),
             "the field is solved when no place differs by more from what its own shot makes of it",
             assumption},

    Constant{"rough_carry_woods", 0.92, share, 0.3, 1.2, IN(engine, rough_carry_woods),
             "carry of woods and hybrids from rough, of the same from fairway", lie_source},
    Constant{"rough_carry_irons", 0.96, share, 0.3, 1.2, IN(engine, rough_carry_irons),
             "carry of irons and wedges from rough, of the same from fairway", lie_source},
    Constant{"rough_spread", 1.5, factor, 0.5, 5.0, IN(engine, rough_spread),
             "how much wider the pattern is from rough", lie_source},
    Constant{"rough_mishits", 0.02, share, 0.0005, 0.5, IN(engine, rough_mishits),
             "share of balls from rough that become mishits besides those from fairway", lie_source},
    Constant{"bunker_carry", 0.93, share, 0.3, 1.2, IN(engine, bunker_carry),
             "carry out of sand, of the same club from fairway", lie_source},
    Constant{"bunker_spread", 2.2, factor, 0.5, 5.0, IN(engine, bunker_spread),
             "how much wider the pattern is out of sand", lie_source},
    Constant{"bunker_mishits", 0.06, share, 0.0005, 0.5, IN(engine, bunker_mishits),
             "share of balls out of sand that become mishits besides those from fairway", lie_source},
    Constant{"partial_swing_spread", 0.5, factor, 0.0, 1.0, IN(engine, partial_swing_spread),
             "spreads of a part swing fall with this power of the swing", assumption},
    Constant{"recovery_run", 0.3, share, 0.0, 1.0, IN(engine, recovery_run),
             "run of a low punch out of trees, of its carry", assumption},
    Constant{"recovery_spread", 2.0, factor, 0.5, 5.0, IN(engine, recovery_spread),
             "how much wider a punch out of trees is than the club's pattern", lie_source},
    Constant{"recovery_stuck_share", 0.30, share, 0.0, 0.9, IN(engine, recovery_stuck_share),
             "share of punches out of trees that hit timber and stay", lie_source},
    Constant{"curve_share", 0.5, share, 0.0, 1.0, IN(engine, curve_share),
             "share of a ball's side offset that is curve and not direction", assumption},

    Constant{
        "range_ball_loss", 0.05, share, 0.0, 0.3, IN(engine, range_ball_loss),
        "share of its carry that a range ball loses against a course ball, where shots are said to be of "
        "range balls",
        assumption},
    Constant{"bay_widening", 1.0, factor, 1.0, 2.0, IN(engine, bay_widening),
             "how much wider than recorded the shots of a bay or a mat are taken to be on the course (1: as "
             "recorded; commonly said to be 1.2 to 1.33)",
             assumption},
    Constant{"session_half_life_days", 730.0, days, 30.0, 1e6, IN(engine, session_half_life_days),
             "a session so much older than the newest counts half", assumption},

    Constant{"golfer_carry_differs", known.carry.golfer, share, 0.0005, 0.5, IN(engine, prior.carry.golfer),
             "how far the carries of golfers of one level differ, all clubs alike (standard deviation)",
             assumption},
    Constant{"club_carry_differs", known.carry.club, share, 0.0005, 0.5, IN(engine, prior.carry.club),
             "how far a golfer's clubs differ in carry from what is typical between them", assumption},
    Constant{"build_carry_differs", known.carry.build, share, 0.0005, 0.5, IN(engine, prior.carry.build),
             "how far builds of one club differ in carry", assumption},
    Constant{"golfer_direction_differs", known.direction.golfer, share, 0.0005, 0.5,
             IN(engine, prior.direction.golfer),
             "how far the mean directions of golfers differ, all clubs alike (tangent)", assumption},
    Constant{"club_direction_differs", known.direction.club, share, 0.0005, 0.5,
             IN(engine, prior.direction.club), "how far a golfer's clubs differ in mean direction (tangent)",
             assumption},
    Constant{"build_direction_differs", known.direction.build, share, 0.0005, 0.5,
             IN(engine, prior.direction.build),
             "how far builds of one club differ in mean direction (tangent)", assumption},
    Constant{"golfer_spread_differs", known.log_spread.golfer, factor, 0.005, 2.0,
             IN(engine, prior.log_spread.golfer),
             "how far the spreads of golfers of one level differ, all clubs alike (of the logarithm)",
             assumption},
    Constant{"club_spread_differs", known.log_spread.club, factor, 0.005, 2.0,
             IN(engine, prior.log_spread.club),
             "how far a golfer's clubs differ in spread from what is typical between them (of the logarithm)",
             assumption},
    Constant{"build_spread_differs", known.log_spread.build, factor, 0.005, 2.0,
             IN(engine, prior.log_spread.build),
             "how far builds of one club differ in spread (of the logarithm)", assumption},
    Constant{"golfer_mishits_differ", known.logit_mishits.golfer, factor, 0.01, 5.0,
             IN(engine, prior.logit_mishits.golfer),
             "how far the mishits of golfers of one level differ, all clubs alike (of the log odds)",
             assumption},
    Constant{"club_mishits_differ", known.logit_mishits.club, factor, 0.01, 5.0,
             IN(engine, prior.logit_mishits.club),
             "how far a golfer's clubs differ in mishits (of the log odds)", assumption},
    Constant{"build_mishits_differ", known.logit_mishits.build, factor, 0.01, 5.0,
             IN(engine, prior.logit_mishits.build),
             "how far builds of one club differ in mishits (of the log odds)", assumption},
    Constant{"tail_differs", known.log_tail_differs, factor, 0.0, 3.0, IN(engine, prior.log_tail_differs),
             "how far the logarithms of the tails' degrees of freedom differ (standard deviation)",
             assumption},
    Constant{"wide_mishits", known.wide_mishits, share, 0.0, 1.0, IN(engine, prior.wide_mishits),
             "how often a golfer's mishits are wide and not short, before any shot is seen", assumption},
    Constant{"day_carry_differs", known.day_carry, share, 0.001, 0.2, IN(engine, prior.day_carry),
             "how far the carries of a day lie from the golfer's own", assumption},
    Constant{"day_direction_differs", known.day_direction, share, 0.001, 0.2, IN(engine, prior.day_direction),
             "how far the directions of a day lie from the golfer's own (tangent)", assumption},
    Constant{"unknown_level", known.unknown_level, factor, 1.0, 5.0, IN(engine, prior.unknown_level),
             "without a handicap, how many times more golfers differ", assumption},
    Constant{"lost_beyond", known.lost_beyond, share, 0.01, 0.5, IN(engine, prior.lost_beyond),
             "a ball that was not found lay at least so far off line (tangent)", assumption},
    Constant{"confidence_draws", 60.0, count, 0.0, 10000.0, IN(engine, confidence_draws),
             "draws of the patterns in which the verdict is taken again", assumption},
    Constant{"toss_up_below", 0.65, share, 0.0, 1.0, IN(engine, toss_up_below),
             "a verdict that holds in fewer of the draws is called a toss-up", assumption},
    Constant{"weigh_draws", 200.0, count, 20.0, 10000.0, IN(engine, weigh_draws),
             "draws of the patterns in which a change of the bag is weighed", assumption},
    Constant{"settled_at", 0.8, share, 0.5, 0.999, IN(engine, settled_at),
             "a change of the bag counts as settled when it helps, or does not, in so many of the draws",
             assumption},
    Constant{"most_more_shots", 300.0, count, 1.0, 100000.0, IN(engine, most_more_shots),
             "further shots of one club that are looked at, at most, to settle a change of the bag",
             assumption},
    Constant{"equal_within", 0.10, strokes, 0.0, 2.0, IN(engine, equal_within),
             "two bags are as good as each other when 90 % of what their difference may be lies within this, "
             "a round",
             assumption},
    Constant{"equal_within_tee", 0.02, strokes, 0.0, 1.0, IN(engine, equal_within_tee),
             "the same of two clubs from a tee (on other aims: points, or a share of holes)", assumption},
    Constant{"close_margin", 0.10, strokes, 0.0, 10.0, IN(engine, close_margin),
             "verdicts by less than this (on other aims: points, or a share of holes) and toss-ups come with "
             "their break-evens",
             assumption},

    Constant{"chart_fairway_from", 60.0, yd, 0.0, 150.0, IN(engine, chart_hole.fairway_from_m),
             "driver chart: where the fairway begins, from the tee of the longest hole", assumption},
    Constant{"chart_green_radius", 12.0, yd, 4.0, 30.0, IN(engine, chart_hole.green_radius_m),
             "driver chart: radius of the round green", assumption},
    Constant{"chart_trouble_from_edge", 15.0, yd, 0.0, 60.0, IN(engine, chart_hole.trouble_from_edge_m),
             "driver chart: from the edge of the fairway to the trouble", assumption},

    Constant{"gap_wide", 20.0, yd, 5.0, 100.0, IN(engine, gaps.wide_m),
             "a gap between the mean carries of two neighbouring clubs that is wider is called wide",
             assumption},
    Constant{"gap_overlap", 0.35, share, 0.05, 0.5, IN(engine, gaps.overlap_chance),
             "two clubs overlap when a usual shot of the longer one lands short of one of the shorter this "
             "often",
             assumption},
    Constant{"slot_edge", 0.25, share, 0.0, 0.45, IN(engine, gaps.slot_edge_share),
             "a club fills the slot behind the driver when it keeps this share of it from either end",
             assumption},
    Constant{"straight_narrow", 24.0, yd, 8.0, 100.0, IN(engine, straight_holes.narrow_m),
             "bags weighed without a course: landing width of one half of the straight holes", assumption},
    Constant{"straight_wide", 36.0, yd, 8.0, 100.0, IN(engine, straight_holes.wide_m),
             "bags weighed without a course: landing width of the other half", assumption},
    Constant{"straight_par4_shortest", 320.0, yd, 200.0, 700.0, IN(engine, straight_holes.shortest_par4_m),
             "bags weighed without a course: the shortest of five lengths of par 4", assumption},
    Constant{"straight_par4_longest", 440.0, yd, 200.0, 700.0, IN(engine, straight_holes.longest_par4_m),
             "bags weighed without a course: the longest of five lengths of par 4", assumption},
    Constant{"straight_par5_shortest", 490.0, yd, 200.0, 700.0, IN(engine, straight_holes.shortest_par5_m),
             "bags weighed without a course: the shorter of two lengths of par 5", assumption},
    Constant{"straight_par5_longest", 540.0, yd, 200.0, 700.0, IN(engine, straight_holes.longest_par5_m),
             "bags weighed without a course: the longer of two lengths of par 5", assumption},
    Constant{"straight_with_trees", 4.0, count, 0.0, 14.0, IN(engine, straight_holes.with_trees),
             "bags weighed without a course: holes of 14 with woods on both sides", assumption},
    Constant{"straight_with_water", 2.0, count, 0.0, 14.0, IN(engine, straight_holes.with_water),
             "bags weighed without a course: holes with a penalty area on one side, in turn left and right",
             assumption},
    Constant{"straight_with_out_of_bounds", 2.0, count, 0.0, 14.0,
             IN(engine, straight_holes.with_out_of_bounds),
             "bags weighed without a course: holes with out of bounds on one side, in turn left and right",
             assumption},
};
#undef IN

}  // namespace

Assumptions default_assumptions() {
    return defaults_of<Assumptions>(constants);
}

Assumptions with_coarser_fan(Assumptions assumptions) {
    assumptions.engine.fan_ray_step_m *= coarser_cells;
    assumptions.engine.fan_angle_step_rad *= coarser_cells;
    return assumptions;
}

Assumptions with_coarser_field(Assumptions assumptions) {
    assumptions.engine.field_step_m *= coarser_cells;
    return assumptions;
}

std::vector<AssumptionEntry> list_assumptions(const Assumptions& assumptions) {
    return entries_of<Assumptions>(constants, assumptions);
}

void override_assumption(Assumptions& assumptions, std::string_view text) {
    override_constant<Assumptions>(constants, assumptions, text, "plan --format json");
}

}  // namespace landwidth
