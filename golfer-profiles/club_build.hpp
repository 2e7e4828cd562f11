// A club as three parts in a row, and what a change of one of them does to its weight, its balance and how
// hard it is to swing: first and second moments about the butt, nothing more.
//
// Every distance is along the shaft's axis. Head and grip balance where they balance; the shaft is known
// by its mass, its length and where it balances. Ferrule, tape and glue count as part of what they sit on.
//
//   butt |==grip==|--------------- shaft ---------------|--| end of the club (its ruled length)
//
// Assumptions: the shaft runs from the butt; a shaft is trimmed or extended by pieces of its mean mass per
// length. For the moment of inertia the head is a point, the shaft a rod whose mass per length changes evenly
// so that it balances where it does, the grip an even rod from the butt to twice its balance point. A head's
// own inertia and its distance from the shaft's axis are left out: some 5 to 8 kg cm2 for a driver, the same
// before and after (assumption).
#pragma once

#include <optional>

#include "golfer-profiles/swing_weight.hpp"

namespace landwidth {

struct ClubParts {
    double length_m;  // butt to end; > swing_weight_fulcrum_m
    double head_kg;   // > 0
    // Towards the butt positive. A head balances above the sole, which is nearer to the butt than the club's
    // end, and towards the toe, which is farther: what is left of the two is short.
    double head_centre_from_end_m = 0.0;
    double shaft_kg;                   // >= 0
    double shaft_length_m;             // > 0, from the butt
    double shaft_balance_share = 0.5;  // balance point from the butt, of its length, in (0, 1)
    double grip_kg;                    // >= 0
    double grip_balance_m;             // from the butt
};

// What a scale and a balance edge (or a swing-weight scale) tell.
struct ClubWeights {
    double total_kg;
    double balance_m;  // from the butt
    SwingWeight swing_weight;
};

ClubWeights weights_of(const ClubParts& parts);

// The trade's unit of a club's moment of inertia.
inline constexpr double kg_m2_per_kg_cm2 = 1e-4;

// Of the club about an axis across its butt end, kg m2.
//
// Example: 198 g at 45.1 in, an even shaft of 62 g and 45.5 in, a grip of 50 g that balances at 4 in: 2598 +
// 276 + 7 = 2881 kg cm2.
double inertia_about_butt(const ClubParts& parts);

// Where a shaft is shortened: at the butt, as is usual and as every extension is made, or at the tip, with
// the head pulled and the grip left on.
enum class CutEnd { butt, tip };

// The club at another length, the same head and grip on it. `shorter_m` < 0 extends, at the butt only;
// shorter_m < shaft_length_m, else std::logic_error. Cutting twice is cutting once by the sum, and an
// extension undoes a cut.
ClubParts shortened_by(const ClubParts& parts, double shorter_m, CutEnd end = CutEnd::butt);

// The head mass, kg, that gives the club this swing weight with all else as it is; nothing when no head is
// light enough.
std::optional<double> head_for(const ClubParts& parts, SwingWeight target);
// The same for a moment of inertia about the butt, kg m2.
std::optional<double> head_for_inertia(const ClubParts& parts, double target_kg_m2);

// Where the head has to balance, as head_centre_from_end_m, for the club to have this swing weight: what a
// measured club says about the one distance that cannot be measured on it.
double head_centre_for(const ClubParts& parts, SwingWeight measured);

// What is wanted of a club; what is not named stays.
struct BuildWishes {
    std::optional<double> length_m = {};
    CutEnd cut_end = CutEnd::butt;
    std::optional<double> head_kg = {};
    std::optional<double> shaft_kg = {};  // of the new shaft at the new length
    std::optional<double> shaft_balance_share = {};
    std::optional<double> grip_kg = {};
    // To bring the club to by its head; without them, back to what it was.
    std::optional<SwingWeight> swing_weight = {};
    std::optional<double> inertia_kg_m2 = {};

    // Another length, head, shaft or grip; the head to be found is none of these.
    bool changes_parts() const;
    bool any() const;
    // Nothing of the parts, only another length or nothing at all.
    bool length_only() const;
};

struct BuildChange {
    ClubParts before;
    ClubParts after;  // before the head is adjusted
    double points;    // of swing weight, after less before
    SwingWeight target;
    double target_inertia_kg_m2;
    // `after` with the head that gives the target swing weight, and the one that gives the target moment of
    // inertia; absent when the wishes name the head, when they ask for the other target alone and change no
    // part, and when no head is light enough.
    std::optional<ClubParts> restored = {};
    std::optional<ClubParts> restored_inertia = {};
    // What the trade's rule of thumb makes of the change, in points; absent when shaft or grip change, of
    // which it says nothing, and when neither length nor head does.
    std::optional<double> thumb_points = {};
};

// The trade's rule of thumb: points of swing weight a metre of length and a kilogram on the head add.
struct SwingWeightThumb {
    double points_per_m;
    double points_per_kg;
};

BuildChange change_build(const ClubParts& before, const BuildWishes& wishes, const SwingWeightThumb& thumb);

}  // namespace landwidth
