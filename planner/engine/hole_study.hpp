// A hole with its field in hand: any club at any aim is evaluated from here in milliseconds.
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "planner/engine/aim_description.hpp"
#include "planner/engine/aim_search.hpp"
#include "planner/engine/bag_shots.hpp"
#include "planner/engine/field/personal_field.hpp"
#include "planner/engine/field/score_paths.hpp"
#include "planner/engine/round_plan.hpp"

namespace landwidth {

// The length of the golfer's longest club other than the putter, for measuring relief.
double club_length(const Golfer& golfer, const EngineAssumptions& assumptions);

class HoleStudy {
  public:
    // Solves the field. Keeps references. `strokes_received` on this hole, for Stableford. For one thread.
    HoleStudy(const Hole& hole, const Golfer& golfer, const GolferGame& game, const BagShots& bag,
              const PlanRequest& request, int strokes_received);

    // The same ground played from another tee: `hole` is that of `base`, which must outlive it, but for where
    // its line starts; the field is shared. For strokes: on other aims the par of `base` counts.
    HoleStudy(const HoleStudy& base, const Hole& hole, const GolferGame& game);

    // The same hole with another bag, solved from `base`, which must outlive it: `golfer`, `game` and `bag`
    // are of the same profile with other in_bag marks; `bag` may know clubs that are not in the bag. Aim for
    // strokes only.
    HoleStudy(HoleStudy& base, const Golfer& golfer, const GolferGame& game, const BagShots& bag);

    // The clubs worth trying from the tee at their best aims, and what playing again costs.
    struct Options {
        std::vector<Contender> contenders;
        AimSearch search;
    };
    Options options();
    // A few of those clubs, each within a range of aims; those that are no contenders are left out, all
    // contenders are taken where none is left. The bag may be that of another golfer of the same profile.
    struct Asked {
        std::size_t club;
        AimRange range;
    };
    Options options_of(const Golfer& golfer, std::span<const Asked> asked);
    Options options_of(std::span<const Asked> asked) { return options_of(golfer_, asked); }
    // Whether any of these clubs is worth trying from the tee.
    bool is_contender(std::span<const Asked> asked) const;

    // Everything about one club at one aim. `shots` may be of a club that is not in the bag; `club` is then
    // only carried through. aim: plane bearing, taken to the nearest ray of the fan.
    TeeChoice choice(const ClubShots& shots, const ShotPattern& pattern, double aim, double replay_cost);

    // How likely each score is after a tee shot; empty with the published field. Slower than choice(), which
    // has it on aims other than strokes alone.
    ScoreDistribution score(const ClubShots& shots, double aim);

    // Of the plan's usual ball after a tee shot; empty with the published field.
    std::vector<PlannedShot> next_shots_after(std::size_t club, const ShotPattern& pattern, double aim) const;

    // Where full shots are played after this tee shot; empty with the published field.
    std::vector<ScorePaths::Visit> visits_after(const ClubShots& shots, double aim);

    // The step of the coarse fan of aims.
    int coarse_rays() const;
    const Hole& hole() const { return hole_; }
    const EngineAssumptions& assumptions() const { return assumptions_; }
    const GolferAim& aim_for() const { return aim_; }
    ReplayCost replay_cost() const;
    TeeFan& fan() { return *fan_; }
    const StrokesField& field() const { return *field_; }
    const PersonalField* personal() const { return personal_; }
    const HoleDay& day() const { return day_; }
    const BagFlights& flights() const { return flights_; }

  private:
    std::unique_ptr<StrokesField> made_field(const GolferGame& game, const PlanRequest& request);
    std::vector<Caution> cautions(const ClubShots& shots, int ray);
    Tally mean_tally(const ClubShots& shots, int ray);
    std::shared_ptr<TeeFan> made_fan() const;
    Options searched(std::vector<Contender> contenders);

    const Hole& hole_;
    const Golfer& golfer_;
    const BagFlights& flights_;
    HoleDay day_;
    const BagShots& bag_;
    const EngineAssumptions assumptions_;
    ReliefRules rules_;
    GolferAim aim_;
    std::shared_ptr<const LieRaster> lies_;
    const PersonalField* personal_ = nullptr;  // field_, when it is one
    std::shared_ptr<const StrokesField> field_;
    std::shared_ptr<TeeFan> fan_;
    AimMarks marks_;
    std::unique_ptr<ScorePaths> paths_;
};

}  // namespace landwidth
