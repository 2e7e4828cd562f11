#include "golfer-profiles/club_build.hpp"

#include <stdexcept>

namespace landwidth {
namespace {

double head_arm_m(const ClubParts& parts) {
    return parts.length_m - parts.head_centre_from_end_m - swing_weight_fulcrum_m;
}

// Of shaft and grip about the fulcrum.
double moment_without_head(const ClubParts& parts) {
    const double shaft_arm_m = parts.shaft_balance_share * parts.shaft_length_m - swing_weight_fulcrum_m;
    const double grip_arm_m = parts.grip_balance_m - swing_weight_fulcrum_m;
    return parts.shaft_kg * shaft_arm_m + parts.grip_kg * grip_arm_m;
}

double head_from_butt_m(const ClubParts& parts) {
    return parts.length_m - parts.head_centre_from_end_m;
}

// Of shaft and grip about the butt.
double inertia_without_head(const ClubParts& parts) {
    // A rod of length l whose mass per length is a straight line and which balances at s l: (s - 1/6) m l^2.
    const double shaft = parts.shaft_kg * parts.shaft_length_m * parts.shaft_length_m *
                         (parts.shaft_balance_share - 1.0 / 6.0);
    // An even rod of length 2 b: m (2 b)^2 / 3.
    const double grip = parts.grip_kg * parts.grip_balance_m * parts.grip_balance_m * 4.0 / 3.0;
    return shaft + grip;
}

double thumb_of(const ClubParts& before, const ClubParts& after, const SwingWeightThumb& thumb) {
    return thumb.points_per_m * (after.length_m - before.length_m) +
           thumb.points_per_kg * (after.head_kg - before.head_kg);
}

std::optional<ClubParts> with_head(ClubParts parts, std::optional<double> head_kg) {
    if (!head_kg) return std::nullopt;
    parts.head_kg = *head_kg;
    return parts;
}

}  // namespace

ClubWeights weights_of(const ClubParts& parts) {
    const double total_kg = parts.head_kg + parts.shaft_kg + parts.grip_kg;
    const SwingWeight weight{parts.head_kg * head_arm_m(parts) + moment_without_head(parts)};
    return {total_kg, balance_of(weight, total_kg), weight};
}

double inertia_about_butt(const ClubParts& parts) {
    return parts.head_kg * head_from_butt_m(parts) * head_from_butt_m(parts) + inertia_without_head(parts);
}

ClubParts shortened_by(const ClubParts& parts, double shorter_m, CutEnd end) {
    if (!(shorter_m < parts.shaft_length_m)) throw std::logic_error("a cut leaves nothing of the shaft");
    if (end == CutEnd::tip && shorter_m < 0.0) throw std::logic_error("a shaft is not extended at its tip");
    const double piece_kg = parts.shaft_kg * shorter_m / parts.shaft_length_m;
    const double piece_centre_m =
        end == CutEnd::butt ? shorter_m / 2.0 : parts.shaft_length_m - shorter_m / 2.0;
    const double butt_moves_m = end == CutEnd::butt ? shorter_m : 0.0;

    ClubParts cut = parts;
    cut.length_m -= shorter_m;
    cut.shaft_length_m -= shorter_m;
    cut.shaft_kg -= piece_kg;
    if (parts.shaft_kg > 0.0) {
        const double shaft_moment =
            parts.shaft_kg * parts.shaft_balance_share * parts.shaft_length_m - piece_kg * piece_centre_m;
        cut.shaft_balance_share = (shaft_moment / cut.shaft_kg - butt_moves_m) / cut.shaft_length_m;
    }
    return cut;
}

std::optional<double> head_for(const ClubParts& parts, SwingWeight target) {
    const double head_kg = (target.moment_kg_m - moment_without_head(parts)) / head_arm_m(parts);
    if (!(head_kg > 0.0)) return std::nullopt;
    return head_kg;
}

std::optional<double> head_for_inertia(const ClubParts& parts, double target_kg_m2) {
    const double arm_m = head_from_butt_m(parts);
    const double head_kg = (target_kg_m2 - inertia_without_head(parts)) / (arm_m * arm_m);
    if (!(head_kg > 0.0)) return std::nullopt;
    return head_kg;
}

double head_centre_for(const ClubParts& parts, SwingWeight measured) {
    const double arm_m = (measured.moment_kg_m - moment_without_head(parts)) / parts.head_kg;
    return parts.length_m - swing_weight_fulcrum_m - arm_m;
}

bool BuildWishes::length_only() const {
    return !head_kg && !shaft_kg && !shaft_balance_share && !grip_kg && !swing_weight && !inertia_kg_m2;
}

bool BuildWishes::changes_parts() const {
    return length_m || head_kg || shaft_kg || shaft_balance_share || grip_kg;
}

bool BuildWishes::any() const {
    return changes_parts() || swing_weight || inertia_kg_m2;
}

BuildChange change_build(const ClubParts& before, const BuildWishes& wishes, const SwingWeightThumb& thumb) {
    ClubParts after = before;
    if (wishes.length_m) after = shortened_by(before, before.length_m - *wishes.length_m, wishes.cut_end);
    if (wishes.shaft_kg) after.shaft_kg = *wishes.shaft_kg;
    if (wishes.shaft_balance_share) after.shaft_balance_share = *wishes.shaft_balance_share;
    if (wishes.grip_kg) after.grip_kg = *wishes.grip_kg;
    if (wishes.head_kg) after.head_kg = *wishes.head_kg;

    const SwingWeight was = weights_of(before).swing_weight;
    BuildChange change{.before = before,
                       .after = after,
                       .points = weights_of(after).swing_weight.points() - was.points(),
                       .target = wishes.swing_weight.value_or(was),
                       .target_inertia_kg_m2 = wishes.inertia_kg_m2.value_or(inertia_about_butt(before))};
    const bool beyond_thumb = wishes.shaft_kg || wishes.shaft_balance_share || wishes.grip_kg;
    if ((wishes.length_m || wishes.head_kg) && !beyond_thumb)
        change.thumb_points = thumb_of(before, after, thumb);
    if (wishes.head_kg) return change;
    if (wishes.changes_parts() || wishes.swing_weight)
        change.restored = with_head(after, head_for(after, change.target));
    if (wishes.changes_parts() || wishes.inertia_kg_m2)
        change.restored_inertia = with_head(after, head_for_inertia(after, change.target_inertia_kg_m2));
    return change;
}

}  // namespace landwidth
