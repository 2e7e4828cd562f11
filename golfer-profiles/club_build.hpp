// A club as three parts in a row, and what a change of one of them does to its weight and balance: moments
// about the butt, nothing more.
//
// Every distance is along the shaft's axis. Head and grip are points where they balance; the shaft is known
// by its mass, its length and where it balances. Ferrule, tape and glue count as part of what they sit on.
//
//   butt |==grip==|--------------- shaft ---------------|--| end of the club (its ruled length)
//
// Assumptions: the head balances at the club's end unless told otherwise; the shaft runs from the butt; a
// shaft is trimmed or extended by pieces of its mean mass per length.
#pragma once

#include <optional>

#include "golfer-profiles/swing_weight.hpp"

namespace landwidth {

struct ClubParts {
    double length_m;                      // butt to end; > swing_weight_fulcrum_m
    double head_kg;                       // > 0
    double head_centre_from_end_m = 0.0;  // towards the butt positive
    double shaft_kg;                      // >= 0
    double shaft_length_m;                // > 0, from the butt
    double shaft_balance_share = 0.5;     // balance point from the butt, of its length, in (0, 1)
    double grip_kg;                       // >= 0
    double grip_balance_m;                // from the butt
};

// What a scale and a balance edge (or a swing-weight scale) tell.
struct ClubWeights {
    double total_kg;
    double balance_m;  // from the butt
    SwingWeight swing_weight;
};

ClubWeights weights_of(const ClubParts& parts);

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
    std::optional<SwingWeight> swing_weight = {};  // to bring the club to; without it, back to what it was

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
    // `after` with the head that gives the target; absent when the wishes name the head, and when no head is
    // light enough.
    std::optional<ClubParts> restored = {};
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
