// A hole with its field in hand: any club at any aim is evaluated from here in milliseconds.
#pragma once

#include <memory>
#include <vector>

#include "planner/engine/aim_description.hpp"
#include "planner/engine/aim_search.hpp"
#include "planner/engine/bag_shots.hpp"
#include "planner/engine/field/personal_field.hpp"
#include "planner/engine/field/score_paths.hpp"
#include "planner/engine/round_plan.hpp"
#include "planner/engine/valued_hole.hpp"

namespace landwidth {

class HoleStudy {
  public:
    // Solves the field. Keeps references. `strokes_received` on this hole, for Stableford. For one thread.
    HoleStudy(const Hole& hole, const Golfer& golfer, const GolferGame& game, const BagShots& bag,
              const PlanRequest& request, int strokes_received);
    // The same ground played from another tee: `hole` is the hole that was valued but for where its line
    // starts, and what its par makes of it (aims other than strokes are those of the valued hole).
    HoleStudy(std::shared_ptr<const ValuedHole> valued, const Hole& hole, const Golfer& golfer,
              const GolferGame& game, const BagShots& bag, const PlanRequest& request);

    // The clubs worth trying from the tee at their best aims, and what playing again costs.
    struct Options {
        std::vector<Contender> contenders;
        AimSearch search;
        int coarse_rays;
    };
    Options options();

    // Everything about one club at one aim. `shots` may be of a club that is not in the bag; `club` is then
    // only carried through. aim: plane bearing, taken to the nearest ray of the fan.
    TeeChoice choice(const ClubShots& shots, const ShotPattern& pattern, double aim, double replay_cost);

    // How likely each score is after a tee shot; empty with the published field. Slower than choice(), which
    // has it on aims other than strokes alone.
    ScoreDistribution score(const ClubShots& shots, double aim);

    // Of the plan's usual ball after a tee shot; empty with the published field.
    std::vector<PlannedShot> next_shots_after(const ShotPattern& pattern, double aim) const;

    const GolferAim& aim_for() const { return valued_->aim_for(); }
    ReplayCost replay_cost() const;
    TeeFan& fan() { return fan_; }
    const StrokesField& field() const { return valued_->field(); }
    const PersonalField* personal() const { return valued_->personal(); }

  private:
    std::vector<Caution> cautions(const ClubShots& shots, int ray) const;
    Tally mean_tally(const ClubShots& shots, int ray);

    const Hole& hole_;
    const Golfer& golfer_;
    const BagShots& bag_;
    const EngineAssumptions assumptions_;
    std::shared_ptr<const ValuedHole> valued_;
    TeeFan fan_;
    AimMarks marks_;
    std::unique_ptr<ScorePaths> paths_;
};

}  // namespace landwidth
