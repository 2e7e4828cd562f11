#include "golfer-profiles/preset_clubs.hpp"

#include <fmt/format.h>

#include <cmath>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/run_by_kind.hpp"

namespace landwidth {
namespace {

// Rounded to what the number means: nobody knows a preset to less than a tenth of a yard.
double to_tenth(double value) {
    return std::round(value * 10.0) / 10.0;
}
double to_hundredth(double value) {
    return std::round(value * 100.0) / 100.0;
}
double metres(double yards) {
    return Yards{yards}.metres();
}

struct CarryAndRun {
    double carry_yd, run_yd;
};

CarryAndRun distances(const BagSlot& slot, const Reach& reach) {
    if (slot.kind == ClubKind::driver) {
        // Rounded so that the two add up to the drive that was asked for.
        const double carry = to_tenth(reach.driver_carry_yd);
        return {carry, to_tenth(reach.driver_total_yd() - carry)};
    }
    if (slot.kind == ClubKind::mini_driver) {
        const double carry = to_tenth((reach.driver_carry_yd + reach.second_carry_yd) / 2.0);
        return {carry, to_tenth(carry * run_share_of_carry(slot.kind))};
    }
    const double carry = to_tenth(reach.second_carry_yd * slot.carry_share);
    const bool is_second_club = slot.carry_share == 1.0;
    return {carry, to_tenth(is_second_club ? reach.second_run_yd : carry * run_share_of_carry(slot.kind))};
}

ShotPattern pattern_for(const BagSlot& slot, const ClubMaker& maker) {
    const auto [carry, run] = distances(slot, maker.reach);
    const Scatter& scatter = maker.scatter;
    const double share = to_hundredth(scatter.mishit_share);
    // The published sd is that of all shots; the usual ones are a little straighter, mishits wilder.
    const double ratio = mishit_direction_ratio;
    const double usual_share_of_sd = 1.0 / std::sqrt(1.0 - share + share * ratio * ratio);
    const double tangent = std::tan(scatter.direction_sd_deg * slot.direction_share * radians_per_degree);
    const double usual_side_sd = to_tenth(carry * tangent * usual_share_of_sd);
    const double mishit_carry = to_tenth(mishit_carry_share * carry);
    const double mishit_side_sd = to_tenth(mishit_carry * tangent * usual_share_of_sd * ratio);
    const double hand = maker.hand == Hand::right ? 1.0 : -1.0;
    ShotPattern pattern;
    pattern.usual = {{metres(carry), 0.0},
                     metres(to_tenth(carry * scatter.carry_sd_share)),
                     metres(usual_side_sd),
                     hand * to_hundredth(scatter.correlation)};
    pattern.tail_dof = to_tenth(scatter.tail_dof);
    pattern.run_m = metres(run);
    pattern.mishit = Mishit{share,
                            {{metres(mishit_carry), 0.0},
                             metres(to_tenth(mishit_carry_sd_share * carry)),
                             metres(mishit_side_sd),
                             0.0}};
    return pattern;
}

std::string note_for(const BagSlot& slot) {
    if (slot.kind == ClubKind::putter) return "no pattern: putts go by distance and level";
    if (slot.kind == ClubKind::driver) {
        return "carry and run: share of the drive as for the standard golfers of the USGA Course Rating "
               "System guide "
               "(tour and women's split: assumption); side: direction sd from Broadie 2014 (memory), a line "
               "in the "
               "handicap; carry sd, tail and mishits: assumptions";
    }
    if (slot.kind == ClubKind::mini_driver) {
        return "carry: halfway between driver and fairway wood, assumption; run as the driver's, assumption; "
               "spread: as the driver's, straighter by assumption";
    }
    if (slot.carry_share == 1.0) {
        return "carry and run: the second shot of the standard golfers of the USGA Course Rating System "
               "guide (tour "
               "and women's split: assumption); spread: as the driver's, straighter by assumption";
    }
    return "carry: equal gaps below the fairway wood, assumption; run by kind: assumption; spread: as the "
           "driver's, "
           "straighter by assumption";
}

void check_range(std::string_view what, double value, double low, double high) {
    if (value >= low && value <= high) return;  // false for NaN as well
    throw UsageError(fmt::format("{} {} is out of range; it lies between {} and {}", what, value, low, high));
}

}  // namespace

double drive_yd_of(const GolferRequest& request) {
    return request.drive_total_yd.value_or(mean_drive_yd(request.reference, request.handicap_index));
}

ClubMaker maker_for(const GolferRequest& request) {
    check_range("handicap index", request.handicap_index, lowest_index, highest_index);
    const double drive = drive_yd_of(request);
    check_range("a drive in yards of", drive, shortest_drive_yd, longest_drive_yd);
    return {reach_for_drive(request.reference, drive), scatter_for(request.handicap_index), request.reference,
            request.hand};
}

Club preset_club(const BagSlot& slot, const ClubMaker& maker) {
    Club club;
    club.name = slot.name;
    club.kind = slot.kind;
    const double shorter = maker.reference == Reference::women ? womens_length_step_in : 0.0;
    club.length_m = (slot.length_in - shorter) * metres_per_inch;
    club.loft_rad = slot.loft_deg * radians_per_degree;
    if (slot.kind != ClubKind::putter) club.pattern = pattern_for(slot, maker);
    club.note = note_for(slot);
    return club;
}

}  // namespace landwidth
