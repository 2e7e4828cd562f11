#include "golfer-profiles/head_change.hpp"

#include <algorithm>
#include <cmath>

#include "golfer-profiles/ball.hpp"

namespace landwidth {
namespace {

double share_given(double head_kg) {
    return head_kg / (head_kg + ball_mass_kg);
}

}  // namespace

HeadChange head_change(const ClubParts& parts, double more_kg, const HeadPractice& practice) {
    ClubParts other = parts;
    other.head_kg += more_kg;
    HeadChange change{
        .more_kg = more_kg,
        .points = weights_of(other).swing_weight.points() - weights_of(parts).swing_weight.points(),
        .inertia_kg_m2 = inertia_about_butt(other) - inertia_about_butt(parts),
        .ball_speed_share = share_given(other.head_kg) / share_given(parts.head_kg) - 1.0};
    if (std::abs(more_kg) <= practice.reach_kg) {
        const double a = practice.club_speed_per_kg.low * more_kg;
        const double b = practice.club_speed_per_kg.high * more_kg;
        change.club_speed_mps = Range{std::min(a, b), std::max(a, b)};
    }
    return change;
}

}  // namespace landwidth
