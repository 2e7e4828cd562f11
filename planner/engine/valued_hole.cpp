#include "planner/engine/valued_hole.hpp"

#include <algorithm>

#include "planner/engine/published_field.hpp"

namespace landwidth {

double club_length(const Golfer& golfer, const EngineAssumptions& assumptions) {
    double longest = 0.0;
    for (const Club& club : golfer.clubs)
        if (club.kind != ClubKind::putter) longest = std::max(longest, club.length_m.value_or(0.0));
    return longest > 0.0 ? longest : assumptions.club_length_m;
}

ValuedHole::ValuedHole(const Hole& hole, const Golfer& golfer, const GolferGame& game,
                       const PlanRequest& request, int strokes_received)
    : rules_{club_length(golfer, request.assumptions.engine), request.assumptions.engine.back_on_line_reach_m,
             request.local_rule_e5},
      aim_(request.aim_for, hole.par, strokes_received),
      lies_(hole.lies, request.assumptions.engine.lie_cell_m),
      field_(made_field(hole, game, request.field)) {}

std::unique_ptr<StrokesField> ValuedHole::made_field(const Hole& hole, const GolferGame& game,
                                                     FieldKind kind) {
    if (kind == FieldKind::published)
        return std::make_unique<PublishedField>(game.table(), hole.line, hole.lies.extent());
    auto field = std::make_unique<PersonalField>(game, hole, lies_, rules_, aim_);
    personal_ = field.get();
    return field;
}

}  // namespace landwidth
