// A hole and what every place on it is worth to the golfer: all that does not depend on where the tee stands,
// so that several tees of one hole can share it.
#pragma once

#include <memory>

#include "planner/engine/field/personal_field.hpp"
#include "planner/engine/round_plan.hpp"

namespace landwidth {

// The length of the golfer's longest club other than the putter, for measuring relief.
double club_length(const Golfer& golfer, const EngineAssumptions& assumptions);

class ValuedHole {
  public:
    // Solves the field. Keeps references to the hole and the game. `strokes_received` on this hole, for
    // Stableford.
    ValuedHole(const Hole& hole, const Golfer& golfer, const GolferGame& game, const PlanRequest& request,
               int strokes_received);

    const ReliefRules& rules() const { return rules_; }
    const GolferAim& aim_for() const { return aim_; }
    const LieRaster& lies() const { return lies_; }
    const StrokesField& field() const { return *field_; }
    // The field, when it is the golfer's own.
    const PersonalField* personal() const { return personal_; }

  private:
    std::unique_ptr<StrokesField> made_field(const Hole& hole, const GolferGame& game, FieldKind kind);

    ReliefRules rules_;
    GolferAim aim_;
    LieRaster lies_;
    const PersonalField* personal_ = nullptr;
    std::unique_ptr<StrokesField> field_;
};

}  // namespace landwidth
