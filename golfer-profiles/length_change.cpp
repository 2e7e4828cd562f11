#include "golfer-profiles/length_change.hpp"

#include <algorithm>
#include <cmath>

namespace landwidth {
namespace {

// Lengths typed in inches are not exact in metres.
constexpr double same_length_m = 1e-6;

bool longer(double length_m, double limit_m) {
    return length_m > limit_m + same_length_m;
}

bool shorter(double length_m, double limit_m) {
    return length_m < limit_m - same_length_m;
}

Range smash_of(ClubKind kind, const LengthPractice& practice) {
    switch (kind) {
        case ClubKind::iron:
        case ClubKind::driving_iron:
            return practice.smash_iron;
        case ClubKind::wedge:
            return practice.smash_wedge;
        default:
            return practice.smash_wood;
    }
}

// `factor` may be negative.
Range scaled(Range range, double factor) {
    return factor < 0.0 ? Range{range.high * factor, range.low * factor}
                        : Range{range.low * factor, range.high * factor};
}

// Every change times every value of `each`, which is not negative.
Range product(Range change, Range each) {
    return {std::min(change.low * each.low, change.low * each.high),
            std::max(change.high * each.low, change.high * each.high)};
}

Range with_no_change(Range change) {
    return {std::min(change.low, 0.0), std::max(change.high, 0.0)};
}

std::optional<Range> after(const std::optional<double>& known, Range change) {
    if (!known) return std::nullopt;
    return Range{std::max(*known + change.low, 0.0), *known + change.high};
}

constexpr Range inches(double low, double high) {
    return {low * metres_per_inch, high * metres_per_inch};
}

}  // namespace

Range built_lengths(ClubKind kind) {
    switch (kind) {
        case ClubKind::driver:
            return inches(43.0, 48.0);
        case ClubKind::mini_driver:
            return inches(41.0, 45.0);
        case ClubKind::fairway_wood:
            return inches(39.0, 45.0);
        case ClubKind::hybrid:
            return inches(36.0, 42.5);
        case ClubKind::driving_iron:
            return inches(36.0, 42.0);
        case ClubKind::iron:
            return inches(33.0, 42.0);
        case ClubKind::wedge:
            return inches(32.0, 38.0);
        case ClubKind::putter:
            break;
    }
    return inches(18.0, 60.0);
}

std::optional<LengthSilence> length_silence(ClubKind kind, double from_m, double to_m,
                                            const LengthPractice& practice) {
    const Range built = built_lengths(kind);
    for (const double length_m : {from_m, to_m})
        if (shorter(length_m, built.low) || longer(length_m, built.high))
            return LengthSilence::no_such_length;
    if (longer(std::abs(to_m - from_m), practice.reach_m)) return LengthSilence::change_too_large;
    return std::nullopt;
}

std::optional<LengthChange> length_change(ClubKind kind, double from_m, double to_m, const KnownFlight& known,
                                          const LengthPractice& practice) {
    if (kind == ClubKind::putter || length_silence(kind, from_m, to_m, practice)) return std::nullopt;
    const bool own_smash = known.club_speed_mps && known.ball_speed_mps;
    const double own = own_smash ? *known.ball_speed_mps / *known.club_speed_mps : 0.0;
    const Range smash = own_smash ? Range{own, own} : smash_of(kind, practice);
    const Range club_speed = scaled(practice.club_speed_per_length, to_m - from_m);
    const Range ball_speed = product(club_speed, smash);
    const Range carry = with_no_change(product(ball_speed, practice.carry_per_ball_speed));
    return LengthChange{.from_m = from_m,
                        .to_m = to_m,
                        .smash = smash,
                        .own_smash = own_smash,
                        .club_speed_mps = club_speed,
                        .ball_speed_mps = ball_speed,
                        .carry_m = carry,
                        .club_speed_after_mps = after(known.club_speed_mps, club_speed),
                        .ball_speed_after_mps = after(known.ball_speed_mps, ball_speed),
                        .carry_after_m = after(known.carry_m, carry)};
}

std::vector<LengthVerdict> length_verdicts(ClubKind kind, double length_m) {
    std::vector<LengthVerdict> verdicts;
    const bool putter = kind == ClubKind::putter;
    if (shorter(length_m, shortest_club_m)) verdicts.push_back(LengthVerdict::shorter_than_rules);
    if (!putter && longer(length_m, longest_club_m)) {
        verdicts.push_back(LengthVerdict::longer_than_rules);
    } else if (!putter && longer(length_m, local_rule_longest_m)) {
        verdicts.push_back(LengthVerdict::longer_than_local_rule);
    }
    if (kind != ClubKind::driver) return verdicts;
    if (shorter(length_m, usual_driver_from_m)) {
        verdicts.push_back(LengthVerdict::seldom_still_a_driver);
    } else if (!longer(length_m, usual_driver_to_m)) {
        verdicts.push_back(LengthVerdict::usual_driver);
    } else if (shorter(length_m, extreme_driver_m)) {
        verdicts.push_back(LengthVerdict::longer_than_usual_driver);
    } else {
        verdicts.push_back(LengthVerdict::extreme_driver);
    }
    return verdicts;
}

}  // namespace landwidth
