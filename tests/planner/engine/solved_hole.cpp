#include "tests/planner/engine/solved_hole.hpp"

namespace landwidth::fixture {

Golfer uneven_golfer() {
    Golfer golfer = club_golfer();
    for (Club& club : golfer.clubs) {
        ShotPattern& pattern = *club.pattern;
        pattern.usual.correlation = -0.25;
        pattern.usual.centre.side_m = yd(2, 0).x;
        pattern.tail_dof = 7.0;
        pattern.mishit =
            Mishit{0.06, {{0.7 * pattern.usual.centre.carry_m, yd(5, 0).x}, yd(20, 0).x, yd(22, 0).x, 0.0}};
    }
    return golfer;
}

HoleParts eventful_par_5() {
    HoleParts parts;
    parts.par = 5;
    parts.line = {yd(0, 0), yd(0, 245), yd(95, 450)};
    parts.layers = {
        {Lie::teeing_area, Region::disc(yd(0, 0), yd(6, 0).x)},
        {Lie::fairway, Region::around({yd(0, 120), yd(0, 245), yd(90, 438)}, yd(18, 0).x)},
        {Lie::green, Region::disc(yd(95, 450), yd(13, 0).x)},
        {Lie::penalty_red, Region::box({yd(-75, 150), yd(-24, 300)})},
        {Lie::penalty_yellow, Region::around({yd(-60, 400), yd(140, 330)}, yd(5, 0).x)},
        {Lie::trees, Region::box({yd(26, 70), yd(75, 215)})},
        {Lie::trees, Region::box({yd(30, 425), yd(70, 480)})},
        {Lie::bunker, Region::disc(yd(22, 262), yd(8, 0).x)},
        {Lie::bunker, Region::disc(yd(112, 442), yd(6, 0).x)},
        {Lie::out_of_bounds, beyond(150)},
    };
    return parts;
}

HoleParts narrow_par_4() {
    HoleParts parts = straight_hole(395, 32);
    parts.layers.push_back({Lie::out_of_bounds, beyond(-44)});
    parts.layers.push_back({Lie::penalty_red, Region::disc(yd(24, 372), yd(16, 0).x)});
    parts.layers.push_back({Lie::trees, Region::box({yd(24, 60), yd(70, 330)})});
    parts.layers.push_back({Lie::trees, Region::box({yd(-44, 30), yd(-22, 210)})});
    parts.layers.push_back({Lie::bunker, Region::disc(yd(-20, 240), yd(8, 0).x)});
    parts.layers.push_back({Lie::bunker, Region::disc(yd(-14, 388), yd(6, 0).x)});
    return parts;
}

SolvedHole::SolvedHole(const HoleParts& parts, const Golfer& player, AimFor aim, bool local_rule_e5,
                       const EngineAssumptions& constants, const Conditions& conditions)
    : hole(invented_hole(parts)),
      golfer(player),
      day(conditions),
      assumptions(constants),
      game(golfer, std::make_shared<const BagFlights>(golfer, day, assumptions), assumptions),
      lies(hole.lies, assumptions.lie_cell_m),
      field(game, hole, lies, {assumptions.club_length_m, assumptions.back_on_line_reach_m, local_rule_e5},
            GolferAim(aim, parts.par, 0)) {}

bool SolvedHole::is_open(int cell) const {
    return grid().is_inside(cell) && field.strokes_layer().action[static_cast<std::size_t>(cell)].option >= 0;
}

double CounterRandom::uniform() {
    std::uint64_t z = ++counter_ * 0x9e3779b97f4a7c15ULL;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
    return static_cast<double>((z ^ (z >> 31U)) >> 11U) * 0x1.0p-53;
}

}  // namespace landwidth::fixture
