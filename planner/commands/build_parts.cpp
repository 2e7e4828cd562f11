#include "planner/commands/build_parts.hpp"

#include <fmt/format.h>

#include <string>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "planner/commands/build_limits.hpp"

namespace landwidth {
namespace {

// How far the head's balance point may turn out to lie short of the club's end, inches.
constexpr double least_head_centre_in = -1.0;
constexpr double most_head_centre_in = 2.5;

constexpr double shortest_shaft_share = 0.8;  // of the club

void check_complete(const TypedParts& typed) {
    std::string missing;
    const auto need = [&](bool there, std::string_view option) {
        if (!there) missing += (missing.empty() ? "" : ", ") + std::string(option);
    };
    need(typed.length_m.has_value(), "--length");
    need(typed.head_kg || typed.total_kg, "--head (or --total)");
    need(typed.shaft_kg.has_value(), "--shaft");
    need(typed.grip_kg.has_value(), "--grip");
    if (!missing.empty())
        throw UsageError(
            fmt::format("to reckon with a club's parts all of them are needed; missing: {}", missing));
    if (typed.head_kg && typed.total_kg)
        throw UsageError(
            "the total less shaft and grip is the head: leave out --head, or what gives the total");
}

double head_of(const TypedParts& typed) {
    if (typed.head_kg) return *typed.head_kg;
    const double head_g = (*typed.total_kg - *typed.shaft_kg - *typed.grip_kg) / head_limits.si;
    if (head_g < head_limits.low || head_g > head_limits.high) {
        throw UsageError(
            fmt::format("a total of {:.4g} g less shaft and grip leaves {:.4g} g for the head: from {:g} to "
                        "{:g} g is expected",
                        *typed.total_kg / total_limits.si, head_g, head_limits.low, head_limits.high));
    }
    return head_g * head_limits.si;
}

double shaft_length_of(const TypedParts& typed) {
    const double length_m = typed.shaft_length_m.value_or(*typed.length_m);
    if (length_m > *typed.length_m || length_m < shortest_shaft_share * *typed.length_m) {
        throw UsageError(
            fmt::format("--shaft-length {:.4g} in a club of {:.4g} in: from {:g} times its length up to its "
                        "whole length is expected",
                        length_m / metres_per_inch, *typed.length_m / metres_per_inch, shortest_shaft_share));
    }
    return length_m;
}

std::optional<SwingWeight> measured_weight(const TypedParts& typed, double total_kg) {
    if (typed.swing_weight) return typed.swing_weight;
    if (typed.balance_m) return swing_weight_of(total_kg, *typed.balance_m);
    return std::nullopt;
}

}  // namespace

SolvedParts solve_parts(const TypedParts& typed, const BuildAssumptions& assumptions) {
    check_complete(typed);
    ClubParts parts{
        .length_m = *typed.length_m,
        .head_kg = head_of(typed),
        .head_centre_from_end_m = assumptions.head_centre_from_end_m,
        .shaft_kg = *typed.shaft_kg,
        .shaft_length_m = shaft_length_of(typed),
        .shaft_balance_share = typed.shaft_balance_share.value_or(assumptions.shaft_balance_share),
        .grip_kg = *typed.grip_kg,
        .grip_balance_m = assumptions.grip_balance_m};
    const auto measured = measured_weight(typed, weights_of(parts).total_kg);
    if (!measured) return {parts, false};

    parts.head_centre_from_end_m = head_centre_for(parts, *measured);
    const double centre_in = parts.head_centre_from_end_m / metres_per_inch;
    if (centre_in < least_head_centre_in || centre_in > most_head_centre_in) {
        throw UsageError(fmt::format(
            "these parts and the measured balance or swing weight do not go together: the head would have "
            "to balance {:.1f} in short of the club's end, and {:g} to {:g} is expected",
            centre_in, least_head_centre_in, most_head_centre_in));
    }
    return {parts, true};
}

}  // namespace landwidth
